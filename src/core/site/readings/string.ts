import { plateLine } from '../../level/asFound';
import { lastStation, roofOf, sidesOf } from '../../level/layout';
import { lineSag, linePull } from '../../level/toolTruth';
import type { Side } from '../../roof/side';
import { pose, ridgeNow } from '../posed';
import type { Standing } from '../standing';
import { plateAt, platePose } from '../truePlate';
import { firstOf, plain } from './reach';

/** Strings, and what lies in a plane under them. */

/** Top edge of a rafter over the straight line between the end rafters of its side, at the heels. */
export const offPlane = (standing: Standing, which: Side, station: number): number | undefined => {
  const rafters = pose(standing).rafters;
  const here = rafters[`rafter.${which}.${station}`];
  const last = roofOf(standing.level).layout.stations.length;
  const a = rafters[`rafter.${which}.1`];
  const b = rafters[`rafter.${which}.${last}`];
  if (!here || !a || !b) return undefined;
  return here.heel.z - (a.heel.z + (b.heel.z - a.heel.z) * shareOf(standing, which, station));
};

/** How far along its side's string a rafter stands, 0 to 1. */
const shareOf = (standing: Standing, which: Side, station: number): number => {
  const { rafters } = pose(standing);
  const x = (n: number): number => rafters[`rafter.${which}.${n}`]?.x.heel ?? 0;
  const [from, to] = [x(1), x(lastStation(standing))];
  return (x(station) - from) / (to - from);
};

/** A place where the string is held up: how far along, and how high over the straight line of the end rafters. */
type Held = { readonly t: number; readonly z: number };

/**
 * How high the string hangs over that line: from block to block, sagging between; a rafter that reaches it lifts it, and
 * spoils every reading near it.
 */
const stringAt = (standing: Standing, which: Side, t: number): number => {
  const line = standing.site.lines[`string.${which}`] ?? { off: 0, pulls: 1 };
  const sag = lineSag(standing.level.plan.length, linePull(standing, `string.${which}`, line.pulls));
  const work = rowOf(standing, which);
  let held: readonly Held[] = [
    { t: 0, z: line.off },
    { t: 1, z: line.off },
  ];
  for (;;) {
    const over = work
      .map((rafter) => ({ rafter, by: rafter.z - hanging(held, sag, rafter.t) }))
      .reduce((most, one) => (one.by > most.by ? one : most), { rafter: held[0] as Held, by: 0 });
    if (over.by <= touches) return hanging(held, sag, t);
    held = [...held, over.rafter].sort((a, b) => a.t - b.t);
  }
};

/** Nearer than this the string lies on the work, inches. */
const touches = 1e-9;

const rowOf = (standing: Standing, which: Side): readonly Held[] =>
  Array.from({ length: lastStation(standing) - 2 }, (_, i) => i + 2).flatMap((n): readonly Held[] => {
    const z = offPlane(standing, which, n);
    return z === undefined ? [] : [{ t: shareOf(standing, which, n), z }];
  });

/** Straight between the nearest two places that hold it, less the sag of so much of its length. */
const hanging = (held: readonly Held[], sag: number, t: number): number => {
  const next = Math.max(
    1,
    held.findIndex((one) => t <= one.t),
  );
  const [a, b] = [held[next - 1] as Held, held[next] as Held];
  return a.z + ((b.z - a.z) * (t - a.t)) / (b.t - a.t) - 4 * sag * (t - a.t) * (b.t - t);
};

/** The space between the string and a rafter's top edge. */
const strung = (standing: Standing, which: Side, station: number): number | undefined => {
  if (!standing.site.lines[`string.${which}`]) return undefined;
  const off = offPlane(standing, which, station);
  return off === undefined ? undefined : stringAt(standing, which, shareOf(standing, which, station)) - off;
};

/** How far a rafter's top edge lies over (+) or under the straight line between its two neighbours. */
const edged = (standing: Standing, which: Side, station: number): number | undefined => {
  const [before, here, after] = [station - 1, station, station + 1].map((n) => offPlane(standing, which, n));
  return before === undefined || here === undefined || after === undefined
    ? undefined
    : here - (before + after) / 2;
};

/** How far the middle of a plate stands out (+) of the straight line of its ends, in plan. */
export const plateBowed = (standing: Standing, which: Side): number => {
  const plate = platePose(standing, which);
  const ends =
    (plateLine(standing, { side: which, at: 'A' }) + plateLine(standing, { side: which, at: 'B' })) / 2;
  return plateAt(plate, plate.mid.x).out - standing.level.plan.span / 2 - ends;
};

/** How far the middle of the ridge stands to the yard (+) of the straight line from end to end of it. */
export const ridgeBowed = (standing: Standing): number | undefined => {
  const ridge = ridgeNow(standing);
  return ridge && ridge.mid.y - (ridge.A.y + ridge.B.y) / 2;
};

const along = /^plane\.(street|yard)\.(\d+)$/;

export const stringShows = firstOf([
  plain(/^plate\.(street|yard)\.mid$/, (s, [which]) =>
    sidesOf(s.level).includes(which as Side) ? plateBowed(s, which as Side) : undefined,
  ),
  plain(/^ridge\.straight$/, (s) => ridgeBowed(s)),
  plain(along, (s, [which, n]) => strung(s, which as Side, Number(n))),
]);

export const straightedgeShows = firstOf([
  plain(along, (s, [which, n]) => edged(s, which as Side, Number(n))),
]);
