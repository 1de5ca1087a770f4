import { figure } from '../roof/figure';
import type { FiguredRoof } from '../roof/figured';
import { sides, type Side } from '../roof/side';
import type { Level } from './level';

/** The level's roof, figured once. */
export const roofOf = (level: Level): FiguredRoof => {
  const known = figured.get(level);
  if (known) return known;
  const roof = level.shed ? ledgerAsRidge(figure(level.shed)) : figure(level.plan);
  figured.set(level, roof);
  return roof;
};
const figured = new WeakMap<Level, FiguredRoof>();

/** What rafters lean on has one name on the site, whether it is a ridge or a ledger. */
const ledgerAsRidge = (roof: FiguredRoof): FiguredRoof => ({
  ...roof,
  ridges: (roof.ledgers ?? []).map((ledger) => ({ ...ledger, side: 'both', lineLength: ledger.length })),
});

/** Whether its rafters lean on a ledger at a wall that stands. */
export const againstWall = ({ shed }: Pick<Level, 'shed'>): boolean => shed !== undefined;

const streetOnly: readonly Side[] = ['street'];

/** The sides that are built. */
export const sidesOf = (level: Pick<Level, 'shed'>): readonly Side[] =>
  againstWall(level) ? streetOnly : sides;

/** Between the outsides of the plates, or from the outside of the plate to the wall. Inches. */
export const widthOf = ({ plan, shed }: Pick<Level, 'plan' | 'shed'>): number => (shed ?? plan).span;

/** Rafter centres along the ridge from end A, inches. */
export const stationsOf = (level: Level): readonly number[] => roofOf(level).layout.stations;

/** Number of the last station. */
export const lastStation = ({ level }: { readonly level: Level }): number => stationsOf(level).length;

/** Numbers of the stations in the middle third of the ridge, where a pair locks it. A ledger needs no pair. */
export const middleStations = (level: Level): readonly number[] => {
  if (againstWall(level)) return [];
  const third = level.plan.length / 3;
  return stationsOf(level).flatMap((x, i) => (x >= third && x <= 2 * third ? [i + 1] : []));
};

/** Number of the station nearest the ridge's middle. */
export const middleOf = (level: Level): number => {
  const half = level.plan.length / 2;
  const stations = stationsOf(level);
  return stations.reduce(
    (best, x, i) => (Math.abs(x - half) < Math.abs((stations[best - 1] ?? 0) - half) ? i + 1 : best),
    1,
  );
};

/** A ridge no longer than this is straight enough by itself, inches: 16 ft. Ours. */
export const stiffRidge = 16 * 12;

/** Whether the plan's ridge carries as a beam, on posts of its own that stay. Any other is a board. */
export const ridgeCarries = ({ plan }: Pick<Level, 'plan'>): boolean => plan.posts !== undefined;

/** Where posts stand under the ridge, number 1 nearest end A: the plan's own, or else the two that come out again. */
export const postPlaces = (level: Level): readonly number[] =>
  level.plan.posts ? [...level.plan.posts.at].sort((a, b) => a - b) : [propX(level, 1), propX(level, 2)];

/** Where a post stands; one that there is none of, in the middle. */
export const postX = (level: Level, n: number): number => postPlaces(level)[n - 1] ?? level.plan.length / 2;

/** Props 1 and 2 stand in the middle of the second bay from either end. */
const propX = (level: Level, n: 1 | 2): number => {
  const stations = stationsOf(level);
  const last = stations.length - 1;
  const bay = n === 1 ? Math.min(2, last) : Math.max(1, last - 1);
  return ((stations[bay - 1] ?? 0) + (stations[bay] ?? 0)) / 2;
};

/** Rafters on all sides. */
export const rafterCount = (level: Level): number => sidesOf(level).length * stationsOf(level).length;

/** Station numbers that carry a collar or strap: every so many pairs, and the last pair always. */
export const upperStations = (level: Level): readonly number[] => {
  const { collars } = level.plan;
  const last = stationsOf(level).length;
  if (!collars) return [];
  return Array.from({ length: last }, (_, i) => i + 1).filter(
    (n) => (n - 1) % collars.every === 0 || n === last,
  );
};
