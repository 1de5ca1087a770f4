import { describe, expect, it } from 'vitest';
import { holesHeld, ventOf, webBetweenHoles } from '../../src/core/roof/vents';
import { inch } from '../../src/core/units/inch';
import { roofOf } from './roofs';

const notch = { shape: 'notch', depth: inch(1.25), leave: inch(3) } as const;
const holes = { shape: 'holes', count: 4, diameter: inch(2) } as const;

describe('vents', () => {
  it('of a notch are as long as what is not left standing', () => {
    expect(ventOf(notch, 22).vent).toEqual({ area: 20, shape: 'notch' });
    expect(ventOf(notch, 6)).toEqual({});
  });

  it('of holes are as many as asked for, or as many as fit with wood between', () => {
    expect(webBetweenHoles).toBe(1);
    expect([22, 13, 12.99, 10, 4, 3.99, 0.5].map((length) => holesHeld(holes, length))).toEqual([
      4, 4, 3, 3, 1, 0, 0,
    ]);
    expect(ventOf(holes, 13).vent?.area).toBeCloseTo(12.566, 3);
    expect(ventOf(holes, 3)).toEqual({});
  });

  it('are in every block that is long enough, and only where the plan asks for them', () => {
    const changes = { length: 100, vents: { shape: 'holes', count: 4, diameter: 2 } };
    expect(roofOf(changes).blocks.map(({ vent }) => vent?.shape)).toEqual(['holes', 'holes', undefined]);
    expect(roofOf({ length: 100 }).blocks.map(({ vent }) => vent)).toEqual([undefined, undefined, undefined]);
  });
});
