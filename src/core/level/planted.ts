import { uniform } from './draw';
import { rafterCount, sidesOf } from './layout';
import type { Level, Planted } from './level';

/** Faults that a level plants: which is where, for a seed. */

export type Drawn = { readonly level: Level; readonly seed: number };

export type PlateSpot = 'A' | 'mid' | 'B';
export const plateSpots: readonly PlateSpot[] = ['A', 'mid', 'B'];

/** Where the water level starts: every plate's height is told from here, and both its ends are held together here. */
export const waterStart = 'plate.street.A';

/** The cut rafters on the pile: one for each place and the spares. */
export const boardIds = (level: Level): readonly `board.${number}`[] =>
  Array.from({ length: rafterCount(level) + level.asFound.spareBoards }, (_, i) => `board.${i + 1}` as const);

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
    return sidesOf(level)
      .flatMap((side) => plateSpots.map((spot) => `plate.${side}.${spot}`))
      .filter((p) => p !== waterStart);
  return [at];
};
