import { dryAtMost, engineered, sawn } from '../stock/wood';
import type { Weights } from './figuredLists';
import type { Stick } from './sticks';

/** Cubic inches in a cubic foot. */
const cubicFoot = 1728;

/**
 * What each stick of a roof weighs, for lifting: an estimate from outside sizes, so on the heavy side of what is cut, and
 * from dry wood, so on the light side of what comes wet.
 */
export const weightsOf = (sticks: readonly Stick[]): Weights => {
  const rows = sticks.map(({ member, kind, count, volume, wood }) => {
    const each = (volume * wood.weight) / cubicFoot;
    return { member, kind, count, each, total: each * count };
  });
  const heaviest = rows.reduce<Weights['heaviest']>(
    (most, { member, each }) => (each > most.each ? { member, each } : most),
    { member: '', each: 0 },
  );
  return {
    estimate: true,
    density: { sawn: sawn.weight, engineered: engineered.weight },
    moisture: dryAtMost,
    sticks: rows,
    total: rows.reduce((sum, { total }) => sum + total, 0),
    heaviest,
  };
};
