import type { FaultId } from '../faults/fault';
import { sides, type End, type Side } from '../roof/side';
import { spread, uniform } from './draw';
import type { Level, Planted } from './level';
import { rafterCount } from './layout';

/** What nature and the lumber yard left on this site. The learner never sees it; instruments do. Inches. */
export type BoardTruth = {
  /** Body length over (+) or under what was figured, along the slope. */
  readonly long: number;
  /** How far the plumb cut would stand open at the bottom (+) or at the top (−) against a plumb face. */
  readonly open: number;
  /** Middle of the top edge above (+) or below the line of its ends. */
  readonly crown: number;
  readonly fault: FaultId | undefined;
};

export type PlateSpot = End | 'mid';
export const plateSpots: readonly PlateSpot[] = ['A', 'mid', 'B'];

type Drawn = { readonly level: Level; readonly seed: number };

/** The cut rafters on the pile: one for each place and the spares. */
export const boardIds = (level: Level): readonly `board.${number}`[] =>
  Array.from({ length: rafterCount(level) + level.asFound.spareBoards }, (_, i) => `board.${i + 1}` as const);

/** A cut rafter as it lies on the pile. */
export const boardTruth = ({ level, seed }: Drawn, board: string): BoardTruth => {
  const { ranges } = level.asFound;
  const planted = plantedAt({ level, seed }, board);
  const sound: BoardTruth = {
    long: spread({ seed, place: board, purpose: 'long' }, ranges.bodyLength),
    open: spread({ seed, place: board, purpose: 'open' }, ranges.cutOpen),
    crown: uniform(seed, board, 'crown') * ranges.crown,
    fault: planted?.fault,
  };
  return planted ? spoiled(sound, planted) : sound;
};

const spoiled = (board: BoardTruth, { fault, by }: Planted): BoardTruth => {
  if (fault === 'plumbCutLong') return { ...board, long: by };
  if (fault === 'plumbCutShort') return { ...board, long: -by };
  if (fault === 'plumbCutSteep') return { ...board, open: by };
  if (fault === 'crownDown') return { ...board, crown: -by };
  return board;
};

/** The ridge board as delivered: longer than it must be, by this much. */
export const ridgeOverlength = ({ level, seed }: Drawn): number => {
  const planted = level.asFound.planted.find((row) => row.fault === 'ridgeLong');
  return planted ? planted.by + Math.round(uniform(seed, 'board.ridge', 'long') * 16) / 16 : 0;
};

/** How the ridge board lies when nothing forces it: middle off to the yard (+) and up (+) of the line of its ends. */
export const ridgeTruth = ({ level, seed }: Drawn): { readonly bow: number; readonly crown: number } => {
  const { ridgeBow, ridgeCrown } = level.asFound.ranges;
  return {
    bow: spread({ seed, place: 'board.ridge', purpose: 'bow' }, ridgeBow),
    crown: spread({ seed, place: 'board.ridge', purpose: 'crown' }, ridgeCrown),
  };
};

/** Height of a plate's top against a dead level line, before anybody mends it. Street A is where the level starts: 0. */
export const plateHeight = ({ level, seed }: Drawn, { side, at }: { side: Side; at: PlateSpot }): number => {
  const place = `plate.${side}.${at}`;
  const planted = plantedAt({ level, seed }, place);
  if (planted) return -planted.by;
  return place === 'plate.street.A'
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

/** What the four-foot level shows at its far end when it lies dead level. */
export const levelBias = ({ level, seed }: Drawn): number => {
  const { levelBias: range } = level.asFound.ranges;
  return (
    (uniform(seed, 'level', 'sign') < 0.5 ? -1 : 1) * range * (0.5 + 0.5 * uniform(seed, 'level', 'bias'))
  );
};

/** Which planted fault is at a place. `board.any` and `plate.any` fall where the seed says, never two in one place. */
export const plantedAt = (drawn: Drawn, place: string): Planted | undefined => placesOf(drawn).get(place);

const placesOf = ({ level, seed }: Drawn): ReadonlyMap<string, Planted> => {
  const bySeed = cache.get(level) ?? new Map<number, ReadonlyMap<string, Planted>>();
  cache.set(level, bySeed);
  const known = bySeed.get(seed);
  if (known) return known;
  const places = settle({ level, seed });
  bySeed.set(seed, places);
  return places;
};
const cache = new WeakMap<Level, Map<number, ReadonlyMap<string, Planted>>>();

const settle = ({ level, seed }: Drawn): ReadonlyMap<string, Planted> => {
  const taken = new Map<string, Planted>();
  level.asFound.planted.forEach((row, i) => {
    const open = openPlaces(level, row.at).filter((place) => !taken.has(place));
    const place = open[Math.floor(uniform(seed, `planted.${i}`, 'place') * open.length)];
    if (place) taken.set(place, row);
  });
  return taken;
};

const openPlaces = (level: Level, at: string): readonly string[] => {
  if (at === 'board.any') return boardIds(level);
  if (at === 'plate.any')
    return sides
      .flatMap((side) => plateSpots.map((spot) => `plate.${side}.${spot}`))
      .filter((p) => p !== 'plate.street.A');
  return [at];
};
