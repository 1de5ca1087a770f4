import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readRoofText } from '../../src/content/readRoof';
import { roofKinds } from '../../src/content/roofSchemaParts';
import { figure } from '../../src/core/roof/figure';

/** The roofs that show how a file is written. */

const folder = 'levels/examples/';
const files = readdirSync(folder);
const planIn = (file: string) => {
  const read = readRoofText(readFileSync(folder + file, 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.complaints));
  return read.value;
};

const numbersIn = (value: unknown): readonly number[] => {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
};

describe('example roofs', () => {
  it('there is one of every kind', () => {
    expect(new Set(files.map((file) => planIn(file).kind))).toEqual(new Set(roofKinds));
  });

  it.each(files)('%s is figured, every number of it finite, no count or length below nothing', (file) => {
    const { commonRafters, ...rest } = figure(planIn(file));
    expect(commonRafters.length).toBeGreaterThan(0);
    for (const number of numbersIn({ commonRafters, rest })) expect(Number.isFinite(number)).toBe(true);
    for (const { bodyLength, count } of commonRafters) expect(Math.min(bodyLength, count)).toBeGreaterThan(0);
  });
});
