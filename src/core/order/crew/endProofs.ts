import { againstWall, sidesOf } from '../../level/layout';
import { ends, type End } from '../../roof/side';
import { levelLength } from '../../instruments/rows';
import { rafterId, type JointId } from '../../site/ids';
import { gradient } from '../../units/slope';
import { endRafters } from './pairs';
import { taped, tapeTo, tapings } from './proved';
import { freshNumber, held, stands, type PlannedAction, type View } from './view';

/** How the end pairs find the ridge its place: by tape, by the light at the birdsmouths, by the level, or by eye alone. */

/** A ridge that reads nearer than this to its figure is left, inches: three quarters of a division. Ours. */
const nearEnough = 3 / 64;
/** How far the tape may differ once the birdsmouths sit, inches. Ours. */
const onceSitting = 1 / 8;
/** A ridge that settles back as far as it was moved is left within the tolerance after so many tapings of an end. Ours. */
const enoughTapings = 6;
const snap = (value: number): number => Math.round(value * 64) / 64;

/** When the last end joint at the ridge was fastened: readings before it were of a ridge that carried nothing. */
const tackedAt = (view: View): number => {
  const joints = endRafters(view).map((id): JointId => `ridge:${id}`);
  if (!joints.every((joint) => held(view, joint))) return -1;
  return Math.max(...joints.map((joint) => view.lastly('tacked', joint)));
};

export const atHeight = (view: View): readonly PlannedAction[] => {
  const figure = view.roof.ridges[0]?.topHeight ?? 0;
  return ridgeReads(view, { word: 'height', moved: 'raised', figure: () => figure });
};

/** A ledger has no centre line to keep: its wall says where it goes. */
export const centred = (view: View): readonly PlannedAction[] =>
  againstWall(view.seen.level)
    ? []
    : ridgeReads(view, { word: 'centre', moved: 'shifted', figure: (end) => middle(view, end) });

/** Half of what the walls read apart at that end, less half the ridge; the plan's span where nobody taped it. */
const middle = (view: View, end: End): number => {
  const { span, ridge } = view.seen.level.plan;
  return (taped(view, `width.${end}`) ?? span) / 2 - ridge.thickness / 2;
};

type Wanted = {
  readonly word: 'height' | 'centre';
  readonly moved: 'raised' | 'shifted';
  readonly figure: (end: End) => number;
};

/** Reads both ends, then moves what is off, then reads again what was moved. */
const ridgeReads = (view: View, { word, moved, figure }: Wanted): readonly PlannedAction[] => {
  const told = ends.map((end) => {
    const since = Math.max(view.lastly('ridgeLanded'), view.lastly(moved, end), tackedAt(view));
    const value = taped(view, `ridge.${end}.${word}`, since);
    return { end, off: value === undefined ? undefined : value - figure(end) };
  });
  const moves = told.flatMap(({ end, off }): readonly PlannedAction[] => {
    const near =
      trusted(view, end, moved) || tapings(view, `ridge.${end}.${word}`) > enoughTapings
        ? onceSitting
        : nearEnough;
    if (off === undefined || Math.abs(off) <= near) return [];
    return [
      moved === 'raised'
        ? { type: 'raise', end, by: -snap(off) }
        : { type: 'shift', member: 'ridge', at: end, by: -snap(off) },
    ];
  });
  const reads = told
    .filter(({ off }) => off === undefined)
    .map(({ end }) => tapeTo(view, `ridge.${end}.${word}`));
  return [...reads, ...moves];
};

/** Light of this much at a birdsmouth is acted on: the usual tolerance of 1/8 in less what a rule leaves open. Ours. */
const light = 3 / 32;

/** Rounds of reading and moving after which a crew leaves it: what is left is cut or built wrong. */
const enoughRounds = 3;

/** Light at seat and heel cut of each end pair, by the rule; what shows is shared between the two, or taken by the height. */
export const sitting = (view: View): readonly PlannedAction[] => {
  const unread = ends.flatMap((end) =>
    facesAt(view, end).filter((at) => lightAt(view, end, at) === undefined),
  );
  if (unread.length > 0) return unread.map((at) => ({ type: 'read', tool: 'rule', at }));
  return ends.flatMap((end) => seated(view, end));
};

const facesAt = (view: View, end: End): readonly string[] =>
  sidesOf(view.seen.level).flatMap((side) => {
    const id = rafterId(side, end === 'A' ? 1 : view.last);
    return [`heel:${id}`, `heelCut:${id}`];
  });

const lightAt = (view: View, end: End, at: string): number | undefined => {
  const since = Math.max(
    view.lastly('raised', end),
    view.lastly('shifted', end),
    view.lastly('placed', at.split(':')[1]),
  );
  return freshNumber(view, { tool: 'rule', at }, since);
};

const seated = (view: View, end: End): readonly PlannedAction[] => {
  const [streetSeat = 0, streetCut = 0, yardSeat = 0, yardCut = 0] = facesAt(view, end).map((at) =>
    lightAt(view, end, at),
  );
  const rounds = view.everSaid('rule', facesAt(view, end)[0] ?? '').length;
  if (rounds > enoughRounds) return [];
  const m = gradient(view.seen.level.plan.slope);
  const over = againstWall(view.seen.level) ? 0 : snap((streetCut - yardCut) / 2);
  if (Math.max(streetCut, yardCut) > light)
    return over === 0
      ? [{ type: 'raise', end, by: snap(streetCut / m) }]
      : [{ type: 'shift', member: 'ridge', at: end, by: over }];
  const high = Math.max(streetSeat, yardSeat);
  return high > light ? [{ type: 'raise', end, by: -snap(high / 2) }] : [];
};

/** Once the birdsmouths have had their say, they are trusted over the tape within the tolerance. */
const trusted = (view: View, end: End, moved: 'raised' | 'shifted'): boolean =>
  facesAt(view, end).some((at) =>
    view.everSaid('rule', at).some(({ step }) => step < view.lastly(moved, end)),
  );

/** Nothing read: light at a heel or a plumb cut is closed by as much as an eye makes it. */
export const byEye = (view: View): readonly PlannedAction[] => closed(view, 0.25);

/** The same for what is so far off that no tack would hold. */
export const farByEye = (view: View): readonly PlannedAction[] => closed(view, 0.5);

const closed = (view: View, least: number): readonly PlannedAction[] =>
  endRafters(view)
    .filter((id) => stands(view, id))
    .flatMap((id): readonly PlannedAction[] => {
      const end: End = id.endsWith('.1') ? 'A' : 'B';
      const seat = view.seen.seenApart(`heel:${id}`);
      if (seat >= least) return [{ type: 'raise', end, by: -seat }];
      if (againstWall(view.seen.level)) return [];
      const cut = view.seen.seenApart(`ridge:${id}`);
      const over = id.includes('yard') ? cut : -cut;
      return cut >= least ? [{ type: 'shift', member: 'ridge', at: end, by: over }] : [];
    });

/** The level from both ends: its bias shows with the other sign, so the mean is true. */
export const levelled = (view: View): readonly PlannedAction[] => {
  const since = Math.max(tackedAt(view), view.lastly('raised', 'A'), view.lastly('raised', 'B'));
  const told = ends.map((from) => freshNumber(view, { tool: 'level', at: 'ridge', from }, since));
  const unread = ends.filter((_, i) => told[i] === undefined);
  if (unread.length > 0) return unread.map((from) => ({ type: 'read', tool: 'level', at: 'ridge', from }));
  const { length } = view.seen.level.plan;
  const rise = (((told[0] ?? 0) + (told[1] ?? 0)) / 2) * (length / levelLength);
  const allowed = (view.seen.level.tolerances.ridgeLevelIn10ft * length) / 120;
  if (Math.abs(rise) <= allowed) return [];
  return view.everSaid('level', 'ridge', 'A').length > 1
    ? tapedAgain(view)
    : [{ type: 'raise', end: 'B', by: -snap(rise) }];
};

/** A fall that comes back is no fault of the end that was moved: the other has sunk since it was taped, and both are taped anew. */
const tapedAgain = (view: View): readonly PlannedAction[] => {
  const levelledAt = Math.max(...ends.map((from) => view.said('level', 'ridge', from)?.step ?? -1));
  return ends
    .map((end) => `ridge.${end}.height`)
    .filter((at) => taped(view, at, levelledAt) === undefined)
    .map((at) => tapeTo(view, at));
};
