import { againstWall } from '../../level/layout';
import { gaugeBlock } from '../../instruments/rows';
import { across, sides, type Side } from '../../roof/side';
import { blockId, rafterId, type BlockId, type JointId } from '../../site/ids';
import { middleStation, nailUp, setUp } from './pairs';
import { needsString } from './straight';
import { provePlane } from './proofs';
import { wait, type Task, type Wait } from './task';
import { held, home, stands, type PlannedAction, type View } from './view';

/** One side after the other, or pair by pair: the string, the rafters and blocks on tacks, the heels. */

const stringTask = (side: Side): Task => ({
  code: 'string',
  side,
  serves: ['O8'],
  closes: [],
  waits: () => [wait('nailEnds', 'way')],
  acts: (view) => {
    const line = `string.${side}` as const;
    // A new line gives: a careful crew pulls it twice.
    const pulls = view.seen.site.lines[line]?.pulls ?? 0;
    const wanted = view.careful ? 2 : 1;
    return pulls >= wanted || heelsHome(view, side)
      ? []
      : [
          {
            type: 'line',
            kind: 'string',
            from: rafterId(side, 1),
            to: rafterId(side, view.last),
            off: gaugeBlock,
          },
        ];
  },
});

const inner = ({ stations, last }: View): readonly number[] =>
  stations.map((_, i) => i + 1).filter((n) => n > 1 && n < last);
const heelsHome = (view: View, side: Side): boolean =>
  inner(view).every((n) => home(view, `heel:${rafterId(side, n)}`));

const stackTask = (side: Side): Task => ({
  code: 'stack',
  side,
  serves: ['C5', 'C6'],
  closes: ['O3', 'O6', 'O7', 'O13'],
  waits: (view) => [
    wait('nailEnds', 'way'),
    wait('layOut', 'O3'),
    wait('braceRidge', 'O7'),
    wait('fixLedger', 'O13'),
    wait('string', 'C5', side),
    ...(view.seen.level.plan.length > longRidge || view.methods.hang === 'machine'
      ? [wait('lockMiddle', 'O6')]
      : needsString(view)
        ? [wait('lockMiddle', 'C4')]
        : []),
    ...otherSide(view, side),
  ],
  acts: (view) => {
    const next = inner(view).find((n) => !upAndTacked(view, side, n));
    const tacked = inner(view).filter((n) => n !== next && stands(view, rafterId(side, n)));
    const proofs = tacked.flatMap((n) => provePlane(view, side, n));
    const blocks = bays(view).flatMap((bay) => setBlock(view, blockId(side, bay)));
    const up = next === undefined ? [] : setUp(view, [rafterId(side, next)]);
    return [...proofs, ...blocks, ...up];
  },
});

/** From about here on a ridge bows when one side leans on it alone, inches: 24 ft, from the beam arithmetic. */
const longRidge = 24 * 12;

/** One side at a time: a side waits while the other is half stacked. Alternating: it waits while it is a rafter ahead. */
const otherSide = (view: View, side: Side): readonly Wait[] => {
  if (againstWall(view.seen.level)) return [];
  const other = across(side);
  const count = (which: Side): number => inner(view).filter((n) => upAndTacked(view, which, n)).length;
  const all = inner(view).length;
  if (view.methods.stack === 'alternate')
    return count(side) > count(other) ? [wait('stack', 'way', other)] : [];
  const middle = middleStation(view);
  const begun = inner(view).some((n) => n !== middle && stands(view, rafterId(other, n)));
  return begun && count(other) < all ? [wait('stack', 'way', other)] : [];
};

const upAndTacked = (view: View, side: Side, n: number): boolean => {
  const id = rafterId(side, n);
  return stands(view, id) && held(view, `ridge:${id}`) && held(view, `heel:${id}`);
};

const bays = ({ last }: View): readonly number[] => Array.from({ length: last - 1 }, (_, i) => i + 1);

/** Dropped in when it fits; a fat one is trimmed, never driven. */
const setBlock = (view: View, id: BlockId): readonly PlannedAction[] => {
  const [, side, bay] = id.split('.') as [string, Side, string];
  const pair = [Number(bay), Number(bay) + 1].map((n) => rafterId(side, n));
  if (stands(view, id) || !pair.every((rafter) => stands(view, rafter) && held(view, `heel:${rafter}`)))
    return [];
  const drop: PlannedAction = { type: 'place', member: id, at: 'drop' };
  const fits = view.seen.would(drop).ok;
  return fits ? [drop] : [{ type: 'trim', member: id, cut: 'end', by: 1 / 16 }, drop];
};

const heelsTask = (side: Side): Task => ({
  code: 'heels',
  side,
  serves: ['O10', 'T1', 'T2'],
  closes: ['O8', 'C5', 'C6'],
  waits: (view) => [
    wait('string', 'O8', side),
    wait('stack', 'C5', side),
    wait('makeReady', 'S4'),
    wait('tieWalls', view.methods.ties === 'byPair' ? 'way' : 'physics'),
  ],
  anyOrder: true,
  acts: (view) => [
    ...view.stations.flatMap((_, i) => nailUp(view, rafterId(side, i + 1), ['ridge', 'heel', 'heelTie'])),
    ...bays(view).flatMap((bay) => nailBlock(view, blockId(side, bay))),
  ],
});

const nailBlock = (view: View, id: BlockId): readonly PlannedAction[] =>
  ([`blockEnd:${id}.near`, `blockEnd:${id}.far`, `blockPlate:${id}`] as readonly JointId[])
    .filter((joint) => !home(view, joint))
    .map((joint) => ({ type: 'nailOff', joint }));

export const stackTasks: readonly Task[] = [
  ...sides.map(stringTask),
  ...sides.map(stackTask),
  ...sides.map(heelsTask),
];
