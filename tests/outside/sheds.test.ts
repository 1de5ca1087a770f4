import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import { sample } from '../roof/roofs';

/** What others have published about shed roofs. */

const { ridge: _ridge, ...bare } = sample;
const runOf = (span: number, width: number): number | undefined => {
  const read = readRoof({ ...bare, kind: 'shed', span, highPlate: { width } });
  return read.ok ? figure(read.value).commonRafters[0]?.run : undefined;
};

describe('a shed roof on two walls', () => {
  // NAVEDTRA 14044, Builder 3 & 2, vol. 2, ch. 2, p. 2-34 with fig. 2-57 (read): the run is the span less the width of the
  // top plate on the higher wall. It is so because the upper heel cut stands at that plate's inner face.
  it.each([
    [144, 3.5, 140.5],
    [144, 5.5, 138.5],
    [120, 3.5, 116.5],
  ])('W35: over %f in with a plate of %f in, rafters run %f in', (span, width, run) => {
    expect(runOf(span, width)).toBe(run);
  });
});
