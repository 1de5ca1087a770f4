import type { ToolId } from '../instruments/tool';
import type { DriftId, FaultId } from './fault';

/** One thing that can be wrong: where, how it shows, what finds it, which calls answer it, and what mends it. */
export type FaultRow<Id extends FaultId | DriftId = FaultId | DriftId> = {
  readonly id: Id;
  readonly where: 'board' | 'plate' | 'ridge' | 'row' | 'tool';
  /** The word an eye puts to it, or undefined when no eye sees it. */
  readonly looks: string | undefined;
  /** Where it shows in the work if nobody finds it: places a tool or an eye is put to. */
  readonly shows: readonly Sign[];
  readonly finds: readonly ToolId[];
  /** Right calls; none for what is not judged but read and put right. */
  readonly calls: readonly ('turn' | 'swap' | 'mend')[];
  /** Acts that put it right. */
  readonly mends: readonly string[];
  /** Nails hold half in it, and whoever walks round sees it. */
  readonly weak?: true;
  /** Common practice, no source, unless a source is named. */
  readonly source: string;
};

/** How a fault shows in the work. */
export type Sign =
  | 'plane'
  | 'plumbBottom'
  | 'plumbTop'
  | 'seat'
  | 'heelCut'
  | 'punch'
  | 'straight'
  | 'layout'
  | 'level'
  | 'width'
  | 'diagonals'
  | 'block'
  | 'entering'
  | 'twoReadings';

const common = 'common practice, no source';

const board = { where: 'board', source: common } as const;

/** What a level may plant. */
export const faults: readonly FaultRow<FaultId>[] = [
  {
    ...board,
    id: 'crownDown',
    looks: 'crownDown',
    shows: ['plane'],
    finds: ['eye'],
    calls: ['swap', 'turn'],
    mends: ['swap'],
  },
  {
    ...board,
    id: 'splitAtNotch',
    looks: 'split',
    shows: ['punch'],
    finds: ['eye'],
    calls: ['swap'],
    mends: ['swap'],
    weak: true,
  },
  {
    ...board,
    id: 'knotAtNotch',
    looks: 'knot',
    shows: ['punch'],
    finds: ['eye'],
    calls: ['swap'],
    mends: ['swap'],
    weak: true,
  },
  {
    ...board,
    id: 'lowGrade',
    looks: 'lowGrade',
    shows: [],
    finds: ['eye'],
    calls: ['swap'],
    mends: ['swap'],
  },
  {
    ...board,
    id: 'twisted',
    looks: 'twist',
    shows: ['layout'],
    finds: ['eye'],
    calls: ['swap'],
    mends: ['swap'],
  },
  {
    ...board,
    id: 'driedOut',
    looks: 'otherBatch',
    shows: ['plumbBottom', 'plane', 'seat'],
    finds: ['eye', 'square', 'tape', 'string'],
    calls: ['swap', 'mend'],
    mends: ['swap', 'trim'],
  },
  {
    ...board,
    id: 'plumbCutLong',
    looks: undefined,
    shows: ['heelCut', 'plane'],
    finds: ['pattern'],
    calls: ['mend', 'swap'],
    mends: ['trim', 'swap'],
  },
  {
    ...board,
    id: 'plumbCutShort',
    looks: undefined,
    shows: ['plumbBottom', 'plumbTop'],
    finds: ['pattern'],
    calls: ['swap'],
    mends: ['swap'],
  },
  {
    ...board,
    id: 'plumbCutSteep',
    looks: undefined,
    shows: ['plumbBottom'],
    finds: ['square', 'rule'],
    calls: ['mend', 'swap'],
    mends: ['trim', 'swap'],
  },
  {
    id: 'plateLow',
    where: 'plate',
    looks: undefined,
    shows: ['seat', 'plane'],
    finds: ['waterLevel'],
    calls: ['mend'],
    mends: ['mendWall'],
    source: common,
  },
  {
    id: 'ridgeLong',
    where: 'ridge',
    looks: undefined,
    shows: ['entering'],
    finds: ['tape'],
    calls: ['mend'],
    mends: ['trim'],
    source: common,
  },
];

const unjudged = { looks: undefined, calls: [], source: common } as const;
const tool = { ...unjudged, where: 'tool', shows: ['twoReadings'] } as const;

/** What strays by itself. */
export const drifts: readonly FaultRow<DriftId>[] = [
  {
    ...unjudged,
    id: 'plateOff',
    where: 'plate',
    shows: ['level', 'seat'],
    finds: ['waterLevel'],
    mends: ['mendWall'],
  },
  {
    ...unjudged,
    id: 'plateOutOfLine',
    where: 'plate',
    shows: ['width', 'straight'],
    finds: ['tape', 'string', 'eye'],
    mends: ['mendWall'],
  },
  {
    ...unjudged,
    id: 'wallsRacked',
    where: 'plate',
    shows: ['diagonals'],
    finds: ['tape'],
    mends: ['mendWall'],
  },
  {
    ...unjudged,
    id: 'ridgeBowed',
    where: 'ridge',
    shows: ['straight'],
    finds: ['string', 'eye'],
    mends: ['shift', 'nailOff'],
  },
  {
    ...unjudged,
    id: 'pileDried',
    where: 'board',
    shows: ['plumbBottom', 'plane', 'seat'],
    finds: ['square', 'tape', 'rule'],
    mends: ['trim'],
  },
  { ...unjudged, id: 'baysGrow', where: 'row', shows: ['layout'], finds: ['tape'], mends: ['shift', 'trim'] },
  {
    ...unjudged,
    id: 'blockOff',
    where: 'row',
    shows: ['block', 'layout'],
    finds: ['rule', 'tape'],
    mends: ['trim'],
  },
  { ...tool, id: 'levelOut', finds: ['level'], mends: ['read'] },
  { ...tool, id: 'hookBent', finds: ['tape', 'storyPole'], mends: ['read'] },
  { ...tool, id: 'airInHose', finds: ['waterLevel'], mends: ['read'] },
  { ...tool, id: 'squareOut', finds: ['square'], mends: ['read'] },
  { ...tool, id: 'lineSlack', finds: ['string', 'straightedge'], mends: ['line'] },
];

export const faultRow = (id: FaultId): FaultRow<FaultId> | undefined => faults.find((row) => row.id === id);
