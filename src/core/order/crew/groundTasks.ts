import { faults } from '../../faults/rows';
import { methodTopics } from '../../level/method';
import { sidesOf } from '../../level/layout';
import { waterStart } from '../../level/planted';
import { ends, type Side } from '../../roof/side';
import type { BoardId } from '../../site/ids';
import { wait, type Task } from './task';
import { hookProof, overStart, taped, tapeTo } from './proved';
import { stands, type PlannedAction, type View } from './view';

/** What is done before the ridge goes up: agree, brace, prove, look over, tie, lay out, make ready. */

/** A plate this far off level or a board this far off the pattern is put right, inches. Twice the finest division; ours. */
export const worthMending = 1 / 8;

const agree: Task = {
  code: 'agree',
  serves: [],
  closes: [],
  waits: () => [],
  anyOrder: true,
  acts: ({ seen, methods }) => {
    if (seen.ridgeOn) return [];
    const topics = methodTopics.filter(
      (topic) => seen.level.methods[topic].length > 1 && seen.site.agreed[topic] !== methods[topic],
    );
    const choices = topics.map((topic): PlannedAction => ({ type: 'agree', topic, value: methods[topic] }));
    const signals = methods.hang === 'machine' && seen.site.agreed.signals === undefined;
    return signals ? [...choices, { type: 'agree', topic: 'signals', value: 'standard' }] : choices;
  },
};

const braceWalls: Task = {
  code: 'braceWalls',
  serves: ['O1', 'T2'],
  closes: [],
  waits: () => [],
  anyOrder: true,
  acts: (view) =>
    [...sidesOf(view.seen.level), ...ends]
      .filter((wall) => !stands(view, `brace.wall.${wall}`))
      .map((from) => ({ type: 'brace', kind: 'wall', from, to: 'ground' })),
};

const plateSpots = ({ seen }: View): readonly string[] =>
  sidesOf(seen.level).flatMap((side) => ['A', 'mid', 'B'].map((spot) => `plate.${side}.${spot}`));

/** Hooked, and from the inch mark, which proves the hook; the rest as that has turned out. */
const wallReads = (view: View): readonly PlannedAction[] => [
  { type: 'read', tool: 'tape', at: 'width.A' },
  hookProof,
  ...['width.mid', 'width.B', 'diagonal.1', 'diagonal.2'].map((at) => tapeTo(view, at)),
  ...plateSpots(view).map((at) => ({ type: 'read', tool: 'waterLevel', at }) as const),
  ...sidesOf(view.seen.level).map(
    (side) => ({ type: 'read', tool: 'string', at: `plate.${side}.mid` }) as const,
  ),
];

const proveWalls: Task = {
  code: 'proveWalls',
  serves: ['C1'],
  closes: [],
  waits: () => [],
  anyOrder: true,
  acts: (view) => {
    if (view.seen.ridgeOn || !view.careful) return [];
    const reads = wallReads(view).filter(
      (act) => act.type === 'read' && !readSince(view, act, view.lastly('wallMended', act.at)),
    );
    const mends = plateSpots(view).flatMap((at) => mendOf(view, at));
    return [...reads, ...mends, ...sidesOf(view.seen.level).flatMap((side) => judgePlate(view, side))];
  },
};

const readSince = (
  view: View,
  { tool, at, from }: Extract<PlannedAction, { type: 'read' }>,
  since: number,
): boolean => (view.said(tool, at, from)?.step ?? -1) > since;

const mendOf = (view: View, at: string): readonly PlannedAction[] => {
  const high = overStart(view, at, view.lastly('wallMended', at));
  if (high === undefined || Math.abs(high) <= worthMending) return [];
  return [{ type: 'mendWall', wall: at, how: high < 0 ? 'shim' : 'plane', by: Math.abs(high) }];
};

/** A plate is judged once all three of its heights were read; what was low when found stays its fault. */
const judgePlate = (view: View, side: Side): readonly PlannedAction[] => {
  const subject = `plate.${side}`;
  if (view.seen.site.judged[subject]) return [];
  const ever = ['A', 'mid', 'B'].map((spot) => view.everSaid('waterLevel', `${subject}.${spot}`));
  const start = view.said('waterLevel', waterStart)?.value;
  if (ever.some((said) => said.length === 0) || typeof start !== 'number') return [];
  const off = ever.flat().some(({ value }) => typeof value === 'number' && value - start < -worthMending);
  return [
    off
      ? { type: 'judge', subject, call: 'mend', why: 'plateLow' }
      : { type: 'judge', subject, call: 'sound' },
  ];
};

const lookOver: Task = {
  code: 'lookOver',
  serves: [],
  closes: [],
  waits: () => [],
  acts: (view) => (view.careful ? view.seen.boards.all : []).flatMap((board) => overBoard(view, board)),
};

/** Seen, held to the pattern, judged; trimmed when only its cut is long, and held to the pattern again. */
const overBoard = (view: View, board: BoardId): readonly PlannedAction[] => {
  if (!view.seen.boards.free.includes(board)) return [];
  const eye = view.said('eye', board);
  const pattern = view.said('pattern', board);
  const reads: PlannedAction[] = [];
  if (!eye) reads.push({ type: 'read', tool: 'eye', at: board });
  if (!pattern || pattern.step < view.lastly('trimmed', board))
    reads.push({ type: 'read', tool: 'pattern', at: board });
  const call = view.seen.site.judged[board]?.call;
  if (!eye || !pattern) return reads;
  if (call === undefined)
    return [...reads, judgeBoard(board, { looks: eye.value, long: Number(pattern.value) })];
  const long = Number(pattern.value);
  if (call === 'mend' && long >= worthMending && view.lastly('trimmed', board) < pattern.step)
    return [{ type: 'trim', member: board, cut: 'plumb', by: long }];
  return reads;
};

const judgeBoard = (
  subject: BoardId,
  { looks, long }: { readonly looks: number | string; readonly long: number },
): PlannedAction => {
  const fault = faults.find((row) => row.looks === looks);
  if (fault) return { type: 'judge', subject, call: 'swap', why: fault.id };
  if (long >= worthMending) return { type: 'judge', subject, call: 'mend', why: 'plumbCutLong' };
  if (long <= -worthMending) return { type: 'judge', subject, call: 'swap', why: 'plumbCutShort' };
  return { type: 'judge', subject, call: 'sound' };
};

const settleRidge: Task = {
  code: 'settleRidge',
  serves: ['O4'],
  closes: [],
  applies: ({ ridgeLength }) => ridgeLength === 'cut',
  waits: () => [],
  acts: (view) => {
    if (view.seen.ridgeOn) return [];
    const length = taped(view, 'board.ridge', view.lastly('trimmed', 'board.ridge'));
    if (length === undefined) return [tapeTo(view, 'board.ridge')];
    const over = length - (view.roof.ridges[0]?.length ?? 0);
    const judged = !view.careful || view.seen.site.judged['board.ridge'] !== undefined;
    const judge: readonly PlannedAction[] = judged
      ? []
      : [
          over > worthMending
            ? { type: 'judge', subject: 'board.ridge', call: 'mend', why: 'ridgeLong' }
            : { type: 'judge', subject: 'board.ridge', call: 'sound' },
        ];
    return over > worthMending
      ? [...judge, { type: 'trim', member: 'board.ridge', cut: 'end', by: over }]
      : judge;
  },
};

const tieWalls: Task = {
  code: 'tieWalls',
  serves: ['O2'],
  closes: [],
  applies: (_methods, { plan }) => plan.joists !== false,
  waits: ({ methods }) => (methods.ties === 'byPair' ? [wait('proveEnds', 'way')] : []),
  acts: (view) => {
    const pairs = view.methods.ties === 'byPair';
    const open = view.stations
      .map((_, i) => i + 1)
      .filter(
        (n) =>
          !stands(view, `joist.${n}`) &&
          (!pairs || sidesOf(view.seen.level).every((side) => stands(view, `rafter.${side}.${n}`))),
      );
    return open.map((station) => ({ type: 'setTie', kind: 'joist', station }));
  },
};

const layOut: Task = {
  code: 'layOut',
  serves: ['O3'],
  closes: [],
  waits: () => [],
  anyOrder: true,
  acts: ({ seen }) =>
    ([...sidesOf(seen.level).map((side) => `plate.${side}` as const), 'ridge'] as const)
      .filter((on) => !seen.marked.includes(on))
      .map((on) => ({ type: 'mark', on, datum: 'endA', spacing: seen.level.plan.spacing, faces: 2 })),
};

const makeReady: Task = {
  code: 'makeReady',
  serves: ['S3', 'S4'],
  closes: [],
  waits: () => [],
  anyOrder: true,
  acts: (view) => {
    const plain = (['platform', 'ladder', 'openings', 'gear'] as const)
      .filter((what) => view.seen.site.ready[what] === undefined)
      .map((what): PlannedAction => ({ type: 'makeReady', what, at: 'site' }));
    // An anchor goes to something complete: joists once they lie there, else the wall.
    const to = stands(view, 'joist.1') ? 'joists' : 'wall';
    return view.seen.site.ready.anchor === undefined
      ? [...plain, { type: 'makeReady', what: 'anchor', at: to }]
      : plain;
  },
};

export const groundTasks: readonly Task[] = [
  agree,
  braceWalls,
  proveWalls,
  lookOver,
  settleRidge,
  tieWalls,
  layOut,
  makeReady,
];
