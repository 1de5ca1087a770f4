import { figure } from '../roof/figure';
import type { FiguredRoof } from '../roof/figured';
import type { Level } from './level';

/** The level's roof, figured once. */
export const roofOf = (level: Level): FiguredRoof => {
  const known = figured.get(level);
  if (known) return known;
  const roof = figure(level.plan);
  figured.set(level, roof);
  return roof;
};
const figured = new WeakMap<Level, FiguredRoof>();

/** Rafter centres along the ridge from end A, inches. */
export const stationsOf = (level: Level): readonly number[] => roofOf(level).layout.stations;

/** Number of the last station. */
export const lastStation = ({ level }: { readonly level: Level }): number => stationsOf(level).length;

/** Rafters on both sides. */
export const rafterCount = (level: Level): number => 2 * stationsOf(level).length;

/** Station numbers that carry a collar or strap: every so many pairs, and the last pair always. */
export const upperStations = (level: Level): readonly number[] => {
  const { collars } = level.plan;
  const last = stationsOf(level).length;
  if (!collars) return [];
  return Array.from({ length: last }, (_, i) => i + 1).filter(
    (n) => (n - 1) % collars.every === 0 || n === last,
  );
};
