import { ends, sides, type End } from '../../roof/side';
import { levelLength } from '../../instruments/rows';
import { rafterId, type JointId, type RafterId } from '../../site/ids';
import { boardFor } from './boards';
import { provePlane } from './proofs';
import { wait, type Task } from './task';
import { freshNumber, held, home, stands, type PlannedAction, type View } from './view';

/** Setting the ridge: post it, land it, prove it with the end pairs, nail those, brace it, lock its middle, let go. */

const setPosts: Task = {
  code: 'setPosts',
  serves: [],
  closes: [],
  applies: ({ hang }) => hang !== 'hand',
  waits: ({ methods }) => [
    wait('makeReady', 'physics'),
    ...(methods.hang === 'machine' ? [wait('landRidge', 'physics')] : []),
  ],
  acts: (view) => {
    if (propsDone(view)) return [];
    const height =
      view.methods.hang === 'machine'
        ? 0
        : (view.roof.ridges[0]?.topHeight ?? 0) - view.seen.level.plan.ridge.depth;
    return ([1, 2] as const)
      .filter((n) => !stands(view, `post.${n}`))
      .map((at) => ({ type: 'setPost', at, height, fixed: 'both' }));
  },
};

/** The posts have done their work once one was taken out again. */
const propsDone = (view: View): boolean =>
  ['post.1', 'post.2'].some((post) => view.lastly('takenOut', post) >= 0);

const landRidge: Task = {
  code: 'landRidge',
  serves: [],
  closes: ['O1', 'O4', 'C1'],
  waits: ({ methods }) => [
    wait('agree', methods.hang === 'machine' ? 'physics' : 'way'),
    wait('braceWalls', 'O1'),
    wait('proveWalls', 'C1'),
    wait('settleRidge', 'O4'),
    wait('makeReady', 'physics'),
    ...(methods.hang === 'posts' ? [wait('setPosts', 'physics')] : []),
  ],
  acts: ({ seen, methods }) => {
    if (seen.ridgeOn) return [];
    if (methods.hang !== 'machine')
      return [
        {
          type: 'place',
          member: 'ridge',
          at: methods.hang === 'posts' ? 'posts' : 'hands',
          board: 'board.ridge',
        },
      ];
    const hook: readonly PlannedAction[] = seen.site.sling
      ? []
      : [{ type: 'hookOn', hitch: 'twoPoint', tagLine: true }];
    return [...hook, { type: 'place', member: 'ridge', at: 'machine', board: 'board.ridge' }];
  },
};

const endRafters = ({ last }: View): readonly RafterId[] =>
  [1, last].flatMap((n) => sides.map((side) => rafterId(side, n)));

/** Once one end rafter is nailed home at both its ends the ridge does not move any more. */
const pinned = (view: View): boolean =>
  endRafters(view).some((id) => home(view, `ridge:${id}`) && home(view, `heel:${id}`));

const proveEnds: Task = {
  code: 'proveEnds',
  serves: ['O5', 'C2', 'C3'],
  closes: [],
  waits: ({ methods }) => [
    wait('landRidge', 'physics'),
    wait('lookOver', 'way'),
    ...(methods.hang === 'machine' ? [wait('setPosts', 'S1')] : []),
  ],
  acts: (view) => {
    const up = setUp(view, endRafters(view));
    if (pinned(view)) return up;
    const steps = view.careful ? [atHeight, centred, () => up, sitting, levelled] : [() => up, byEye];
    for (const step of steps) {
      const acts = step(view);
      if (acts.length > 0) return acts;
    }
    return [];
  },
};

/** Rafters to put up, each to its mark and tacked at ridge and heel before the next. */
export const setUp = (view: View, ids: readonly RafterId[]): readonly PlannedAction[] =>
  ids.flatMap((id): readonly PlannedAction[] => {
    const tacks = (['ridge', 'heel'] as const)
      .map((kind): JointId => `${kind}:${id}`)
      .filter((joint) => !held(view, joint))
      .map((joint): PlannedAction => ({ type: 'tack', joint, nails: 2 }));
    if (stands(view, id)) return tacks;
    const board = boardFor(view);
    return board ? [{ type: 'place', member: id, at: 'mark', board }, ...tacks] : [];
  });

/** A ridge that reads nearer than this to its figure is left, inches: three quarters of a division. Ours. */
const nearEnough = 3 / 64;
const snap = (value: number): number => Math.round(value * 64) / 64;

/** When the last end joint at the ridge was fastened: readings before it were of a ridge that carried nothing. */
const tackedAt = (view: View): number => {
  const joints = endRafters(view).map((id): JointId => `ridge:${id}`);
  if (!joints.every((joint) => held(view, joint))) return -1;
  return Math.max(...joints.map((joint) => view.lastly('tacked', joint)));
};

const atHeight = (view: View): readonly PlannedAction[] => {
  const figure = view.roof.ridges[0]?.topHeight ?? 0;
  return ridgeReads(view, { word: 'height', moved: 'raised', figure: () => figure });
};

const centred = (view: View): readonly PlannedAction[] =>
  ridgeReads(view, { word: 'centre', moved: 'shifted', figure: (end) => middle(view, end) });

/** Half of what the walls read apart at that end, less half the ridge; the plan's span where nobody taped it. */
const middle = (view: View, end: End): number => {
  const width = view.said('tape', `width.${end}`)?.value;
  return (
    (typeof width === 'number' ? width : view.seen.level.plan.span) / 2 -
    view.seen.level.plan.ridge.thickness / 2
  );
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
    const value = freshNumber(view, { tool: 'tape', at: `ridge.${end}.${word}` }, since);
    return { end, off: value === undefined ? undefined : value - figure(end) };
  });
  const moves = told.flatMap(({ end, off }): readonly PlannedAction[] => {
    if (off === undefined || Math.abs(off) <= nearEnough) return [];
    return [
      moved === 'raised'
        ? { type: 'raise', end, by: -snap(off) }
        : { type: 'shift', member: 'ridge', at: end, by: -snap(off) },
    ];
  });
  const reads = told
    .filter(({ off }) => off === undefined)
    .map(({ end }): PlannedAction => ({ type: 'read', tool: 'tape', at: `ridge.${end}.${word}` }));
  return [...reads, ...moves];
};

/** A light at each end heel, by the rule; one read a heel since its end was last moved. */
const sitting = (view: View): readonly PlannedAction[] =>
  endRafters(view).flatMap((id): readonly PlannedAction[] => {
    const end: End = id.endsWith('.1') ? 'A' : 'B';
    const since = Math.max(
      view.lastly('raised', end),
      view.lastly('shifted', end),
      view.lastly('placed', id),
    );
    return freshNumber(view, { tool: 'rule', at: `heel:${id}` }, since) === undefined
      ? [{ type: 'read', tool: 'rule', at: `heel:${id}` }]
      : [];
  });

/** Nothing read: light at a heel or a plumb cut is closed by as much as an eye makes it. */
const byEye = (view: View): readonly PlannedAction[] =>
  endRafters(view).flatMap((id): readonly PlannedAction[] => {
    const end: End = id.endsWith('.1') ? 'A' : 'B';
    const seat = view.seen.seenApart(`heel:${id}`);
    if (seat > 0) return [{ type: 'raise', end, by: -seat }];
    const cut = view.seen.seenApart(`ridge:${id}`);
    return cut > 0 ? [{ type: 'shift', member: 'ridge', at: end, by: id.includes('yard') ? cut : -cut }] : [];
  });

/** The level from both ends: its bias shows with the other sign, so the mean is true. */
const levelled = (view: View): readonly PlannedAction[] => {
  const since = Math.max(tackedAt(view), view.lastly('raised', 'A'), view.lastly('raised', 'B'));
  const told = ends.map((from) => freshNumber(view, { tool: 'level', at: 'ridge', from }, since));
  const unread = ends.filter((_, i) => told[i] === undefined);
  if (unread.length > 0) return unread.map((from) => ({ type: 'read', tool: 'level', at: 'ridge', from }));
  const { length } = view.seen.level.plan;
  const rise = (((told[0] ?? 0) + (told[1] ?? 0)) / 2) * (length / levelLength);
  const allowed = (view.seen.level.tolerances.ridgeLevelIn10ft * length) / 120;
  return Math.abs(rise) > allowed ? [{ type: 'raise', end: 'B', by: -snap(rise) }] : [];
};

/** What nails a rafter home, as far as there is something to nail into. */
export const nailUp = (
  view: View,
  id: RafterId,
  kinds: readonly ('ridge' | 'heel' | 'heelTie')[],
): readonly PlannedAction[] =>
  kinds
    .map((kind): JointId => `${kind}:${id}`)
    .filter(
      (joint) =>
        !home(view, joint) &&
        (!joint.startsWith('heelTie') || stands(view, `joist.${Number(id.split('.')[2])}`)),
    )
    .map((joint) => ({ type: 'nailOff', joint }));

const nailEnds: Task = {
  code: 'nailEnds',
  serves: [],
  closes: ['O5', 'C2', 'C3'],
  waits: () => [wait('proveEnds', 'O5'), wait('makeReady', 'S4')],
  anyOrder: true,
  acts: (view) => endRafters(view).flatMap((id) => nailUp(view, id, ['ridge', 'heel'])),
};

const braceRidge: Task = {
  code: 'braceRidge',
  serves: ['O7', 'S2', 'T2'],
  closes: [],
  waits: () => [wait('landRidge', 'physics'), wait('nailEnds', 'way')],
  anyOrder: true,
  acts: (view) => [
    ...(stands(view, 'brace.along.1')
      ? []
      : [{ type: 'brace', kind: 'along', from: 'ridge', to: 'floor' } as const]),
    ...ends
      .filter((end) => !stands(view, `brace.across.${end}`))
      .map((from) => ({ type: 'brace', kind: 'across', from, to: 'floor' }) as const),
  ],
};

/** The station nearest the ridge's middle. */
export const middleStation = ({ stations, seen }: View): number => {
  const half = seen.level.plan.length / 2;
  return stations.reduce(
    (best, x, i) => (Math.abs(x - half) < Math.abs((stations[best - 1] ?? 0) - half) ? i + 1 : best),
    1,
  );
};

const lockMiddle: Task = {
  code: 'lockMiddle',
  serves: ['O6', 'S2'],
  closes: [],
  waits: () => [
    wait('landRidge', 'physics'),
    wait('layOut', 'O3'),
    wait('nailEnds', 'way'),
    wait('makeReady', 'S4'),
  ],
  acts: (view) => {
    const middle = middleStation(view);
    const ids = sides.map((side) => rafterId(side, middle));
    const proofs = ids.every((id) => stands(view, id))
      ? sides.flatMap((side) => provePlane(view, side, middle))
      : [];
    return [...setUp(view, ids), ...proofs, ...ids.flatMap((id) => nailUp(view, id, ['ridge', 'heel']))];
  },
};

const letGo: Task = {
  code: 'letGo',
  serves: [],
  closes: ['S2', 'O2'],
  applies: ({ hang }) => hang === 'machine',
  waits: () => [
    ...(['nailEnds', 'braceRidge', 'lockMiddle', 'setPosts'] as const).map((on) => wait(on, 'S2')),
    wait('tieWalls', 'O2'),
  ],
  acts: (view) =>
    view.seen.site.unhooked || (view.seen.ridgeOn && !view.seen.site.sling)
      ? []
      : [...allClear(view), { type: 'letGo' }],
};

/** Everybody out from under. */
export const allClear = ({ seen }: View): readonly PlannedAction[] =>
  (['lead', 'helper'] as const)
    .filter((who) => seen.site.people[who] !== 'clear')
    .map((who) => ({ type: 'stand', who, where: 'clear' }));

export const ridgeTasks: readonly Task[] = [
  setPosts,
  landRidge,
  proveEnds,
  nailEnds,
  braceRidge,
  lockMiddle,
  letGo,
];
