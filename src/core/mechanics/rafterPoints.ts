import type { Vec3 } from '../geometry/vector';
import { signOf } from '../roof/side';
import type { Gable, GableRafter } from './gable';

/** A rafter's ends on its middle line: plumb over the middle of its seat, and at the ridge's face. */
export const rafterPoints = (
  { shape, stations }: Pick<Gable, 'shape' | 'stations'>,
  { side, station }: Pick<GableRafter, 'side' | 'station'>,
): { readonly heel: Vec3; readonly top: Vec3 } => {
  const { run, m, seat, rafter, ridge, topHeight } = shape;
  const x = stations[station] as number;
  const sign = signOf(side);
  const half = (rafter.depth * Math.sqrt(1 + m * m)) / 2;
  const top = topHeight - half;
  const level = run - seat / 2 - ridge.thickness / 2;
  return {
    heel: [x, sign * (run - seat / 2), top - level * m],
    top: [x, (sign * ridge.thickness) / 2, top],
  };
};
