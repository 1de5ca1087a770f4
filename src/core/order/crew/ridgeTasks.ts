import { againstWall, ridgeCarries, sidesOf, stationsOf } from '../../level/layout';
import { ends } from '../../roof/side';
import { ledgerJoint, rafterId } from '../../site/ids';
import { postIds } from '../../site/planPosts';
import { atHeight, byEye, centred, farByEye, levelled, sitting } from './endProofs';
import { endRafters, middleStation, nailUp, pinned, setUp } from './pairs';
import { provePlane } from './proofs';
import { straightened } from './straight';
import { wait, type Task } from './task';
import { held, home, stands, type PlannedAction, type View } from './view';

/** Setting the ridge: post it, land it, prove it with the end pairs, nail those, brace it, lock its middle, let go. */

const setPosts: Task = {
  code: 'setPosts',
  serves: ['O12'],
  closes: [],
  applies: ({ hang }, level) => hang !== 'hand' || ridgeCarries(level),
  waits: ({ methods, seen }) => [
    wait('makeReady', 'physics'),
    ...(methods.hang === 'machine' && !ridgeCarries(seen.level) ? [wait('landRidge', 'physics')] : []),
  ],
  acts: (view) => {
    const { level } = view.seen;
    if (!ridgeCarries(level) && propsDone(view)) return [];
    const under = ridgeCarries(level) ? view.seen.ridgeOn !== undefined : view.methods.hang === 'machine';
    const height = under ? 0 : (view.roof.ridges[0]?.topHeight ?? 0) - level.plan.ridge.depth;
    return postIds(level).flatMap((id, i): readonly PlannedAction[] =>
      stands(view, id) ? [] : [{ type: 'setPost', at: i + 1, height, fixed: 'both' }],
    );
  },
};

/** The posts have done their work once one was taken out again. */
const propsDone = (view: View): boolean =>
  ['post.1', 'post.2'].some((post) => view.lastly('takenOut', post) >= 0);

const landRidge: Task = {
  code: 'landRidge',
  serves: [],
  closes: ['O1', 'O4', 'C1'],
  waits: ({ methods, seen }) => [
    wait('agree', methods.hang === 'machine' ? 'physics' : 'way'),
    wait('braceWalls', 'O1'),
    wait('proveWalls', 'C1'),
    wait('settleRidge', 'O4'),
    wait('makeReady', 'physics'),
    ...(methods.hang === 'posts' ? [wait('setPosts', 'physics')] : []),
    ...(methods.hang === 'machine' && ridgeCarries(seen.level) ? [wait('setPosts', 'O12')] : []),
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

const proveEnds: Task = {
  code: 'proveEnds',
  serves: ['O5', 'C2', 'C3'],
  closes: ['O12'],
  waits: ({ methods, seen }) => [
    wait('landRidge', 'physics'),
    wait('lookOver', 'way'),
    ...(ridgeCarries(seen.level) ? [wait('setPosts', 'O12')] : []),
    ...(methods.hang === 'machine' && !ridgeCarries(seen.level) ? [wait('setPosts', 'S1')] : []),
  ],
  acts: (view) => {
    const up = setUp(view, endRafters(view));
    if (pinned(view)) return up;
    const steps = view.careful
      ? [atHeight, centred, onWall, () => up, sitting, levelled]
      : [farByEye, onWall, () => up, byEye];
    for (const step of steps) {
      const acts = step(view);
      if (acts.length > 0) return acts;
    }
    return [];
  },
};

/** A ledger is tacked to the wall at both ends before rafters lean on it. */
const onWall = (view: View): readonly PlannedAction[] =>
  againstWall(view.seen.level)
    ? [1, view.last]
        .map(ledgerJoint)
        .filter((joint) => !held(view, joint))
        .map((joint) => ({ type: 'tack', joint, nails: 2 }))
    : [];

/** Every stud, once the end rafters have proved its height. */
const fixLedger: Task = {
  code: 'fixLedger',
  serves: ['O13', 'T2'],
  closes: ['O5'],
  applies: (_methods, level) => againstWall(level),
  waits: () => [wait('landRidge', 'physics'), wait('nailEnds', 'way'), wait('makeReady', 'S4')],
  anyOrder: true,
  acts: (view) =>
    stationsOf(view.seen.level)
      .map((_, i) => ledgerJoint(i + 1))
      .filter((joint) => !home(view, joint))
      .map((joint) => ({ type: 'nailOff', joint })),
};

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
  applies: (_methods, level) => !againstWall(level),
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

const lockMiddle: Task = {
  code: 'lockMiddle',
  serves: ['C4', 'O6', 'S2'],
  closes: ['C4'],
  applies: (_methods, level) => !againstWall(level),
  waits: () => [
    wait('landRidge', 'physics'),
    wait('layOut', 'O3'),
    wait('nailEnds', 'way'),
    wait('makeReady', 'S4'),
  ],
  acts: (view) => {
    const middle = middleStation(view);
    const sides = sidesOf(view.seen.level);
    const ids = sides.map((side) => rafterId(side, middle));
    const proofs = ids.every((id) => stands(view, id))
      ? sides.flatMap((side) => provePlane(view, side, middle))
      : [];
    const held = ids.some((id) => stands(view, id));
    if (!held && straightened(view).length > 0) return straightened(view);
    const up = setUp(view, ids);
    return [
      ...up,
      ...(up.length > 0 ? [] : straightened(view)),
      ...proofs,
      ...ids.flatMap((id) => nailUp(view, id, ['ridge', 'heel'])),
    ];
  },
};

const letGo: Task = {
  code: 'letGo',
  serves: [],
  closes: ['S2', 'O2'],
  applies: ({ hang }) => hang === 'machine',
  waits: ({ seen }) => [
    ...(['nailEnds', 'braceRidge', 'lockMiddle', 'setPosts'] as const).map((on) => wait(on, 'S2')),
    ...(ridgeCarries(seen.level) ? [] : [wait('tieWalls', 'O2')]),
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
  fixLedger,
  braceRidge,
  lockMiddle,
  letGo,
];
