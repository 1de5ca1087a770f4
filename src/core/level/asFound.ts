import type { Side } from '../roof/side';
import { spread, uniform } from './draw';
import { drawnOnce } from './drawnOnce';
import { againstWall } from './layout';
import { plantedAt, waterStart, type Drawn, type PlateSpot } from './planted';

/** What nature and earlier trades left on this site. The learner never sees it; instruments do. Inches. */

/** The ridge board as delivered: longer than it must be, by this much. */
export const ridgeOverlength = ({ level, seed }: Drawn): number => {
  const planted = level.asFound.planted.find((row) => row.fault === 'ridgeLong');
  return planted ? planted.by + Math.round(uniform(seed, 'board.ridge', 'long') * 16) / 16 : 0;
};

/** How the ridge board lies when nothing forces it: middle off to the yard (+) and up (+) of the line of its ends. A ledger lies to its wall and the line snapped there. */
export const ridgeTruth = (drawn: Drawn): RidgeTruth => ridgeLie(drawn, 'board.ridge');

type RidgeTruth = { readonly bow: number; readonly crown: number };

const ridgeLie = drawnOnce(({ level, seed }, place): RidgeTruth => {
  if (againstWall(level)) return { bow: 0, crown: 0 };
  const { ridgeBow, ridgeCrown } = level.asFound.ranges;
  return {
    bow: spread({ seed, place, purpose: 'bow' }, ridgeBow),
    crown: spread({ seed, place, purpose: 'crown' }, ridgeCrown),
  };
});

/** Height of a plate's top against a dead level line, before anybody mends it. Street A is where the level starts: 0. */
export const plateHeight = ({ level, seed }: Drawn, { side, at }: { side: Side; at: PlateSpot }): number => {
  const place = `plate.${side}.${at}`;
  const planted = plantedAt({ level, seed }, place);
  if (planted) return -planted.by;
  return place === waterStart
    ? 0
    : spread({ seed, place, purpose: 'height' }, level.asFound.ranges.plateHeight);
};

/** How far a plate's outer face stands outward (+) of where the plan has it. */
export const plateLine = ({ level, seed }: Drawn, { side, at }: { side: Side; at: PlateSpot }): number =>
  spread({ seed, place: `plate.${side}.${at}`, purpose: 'line' }, level.asFound.ranges.plateLine);

/** How far the yard wall stands along the ridge toward B of the street wall: what the two diagonals tell apart. */
export const racked = ({ level, seed }: Drawn): number =>
  spread({ seed, place: 'walls', purpose: 'racked' }, level.asFound.ranges.plateLine);

/** How much thicker than figured a rafter with its nail heads stands in the row: why bays grow. */
export const growth = ({ level, seed }: Drawn): number =>
  level.asFound.ranges.growth * (0.5 + 0.5 * uniform(seed, 'bays', 'growth'));

/** A block longer (+) or shorter than it was figured. */
export const blockError = ({ level, seed }: Drawn, block: string): number =>
  spread({ seed, place: block, purpose: 'length' }, level.asFound.ranges.blockLength);
