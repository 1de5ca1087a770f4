import type { NailName } from './nails';
import type { Source, Sure } from './source';

/** What published tables ask for at a roof's joints, as data. For telling only: nothing that judges a run reads this. */

export type Joint =
  | 'blockToPlate'
  | 'blockToRafter'
  | 'joistToPlate'
  | 'joistLap'
  | 'joistToRafter'
  | 'collarToRafter'
  | 'rafterToPlate'
  | 'rafterToRidge'
  | 'oppositeRafterToRidge'
  | 'hipToPlate'
  | 'jackToHip'
  | 'valley';

/** One way to do it. `nails` undefined: the table gives the nail and no count. */
export type FasteningWay = {
  readonly nails: number | undefined;
  readonly nail: NailName;
  readonly how: 'toenail' | 'end nail' | 'face nail';
  readonly sure: Sure;
};

export type Fastening = {
  readonly joint: Joint;
  readonly each: string;
  readonly source: Source;
  /** Any one of these. */
  readonly ways: readonly FasteningWay[];
};

type Counted = readonly [nails: number | undefined, nail: NailName];

const ways = (how: FasteningWay['how'], sure: Sure, counted: readonly Counted[]): readonly FasteningWay[] =>
  counted.map(([nails, nail]) => ({ nails, nail, how, sure }));

const ibc = (item: string): Source => ({
  document: 'IBC 2018',
  section: `table 2304.10.1 item ${item}`,
  sure: 'read',
});

const builder: Source = { document: 'NAVEDTRA 14044', section: 'p. 2-38', sure: 'read' };

const threes: readonly Counted[] = [
  [3, '8d common'],
  [3, '10d box'],
  [3, '3 in × 0.131'],
  [3, '3 in staple'],
];

const collarWays: readonly Counted[] = [
  [3, '10d common'],
  [4, '10d box'],
  [4, '3 in × 0.131'],
  [4, '3 in staple'],
];

const plateWays: readonly Counted[] = [
  [3, '10d common'],
  [3, '16d box'],
  [4, '10d box'],
  [4, '3 in × 0.131'],
];

export const fastenings: readonly Fastening[] = [
  {
    joint: 'blockToPlate',
    each: 'each end',
    source: ibc('1'),
    // The last way is of IRC table R602.3(1) item 1.
    ways: [...ways('toenail', 'read', threes), ...ways('toenail', 'memory', [[4, '8d box']])],
  },
  {
    joint: 'blockToRafter',
    each: 'each end',
    source: ibc('1, not at the plate'),
    ways: [
      ...ways('toenail', 'read', [
        [2, '8d common'],
        [2, '3 in × 0.131'],
        [2, '3 in staple'],
      ]),
      ...ways('end nail', 'read', [
        [2, '16d common'],
        [3, '3 in × 0.131'],
        [3, '3 in staple'],
      ]),
    ],
  },
  {
    joint: 'joistToPlate',
    each: 'each joist',
    source: ibc('2'),
    ways: ways('toenail', 'read', threes),
  },
  {
    joint: 'joistLap',
    each: 'each lap that holds no thrust',
    source: ibc('3'),
    ways: ways('face nail', 'read', [
      [3, '16d common'],
      [4, '10d box'],
      [4, '3 in × 0.131'],
      [4, '3 in staple'],
    ]),
  },
  // Item 4 sends to the heel-joint table, IRC R802.5.2. Its counts are not read: the plans have them, this list does not.
  { joint: 'joistToRafter', each: 'each heel', source: ibc('4'), ways: [] },
  {
    joint: 'collarToRafter',
    each: 'each rafter',
    source: ibc('5'),
    ways: ways('face nail', 'read', collarWays),
  },
  {
    joint: 'collarToRafter',
    each: 'each end',
    source: builder,
    ways: ways('face nail', 'read', [[3, '8d']]),
  },
  {
    joint: 'rafterToPlate',
    each: 'each rafter, two on one side and one on the other',
    source: ibc('6'),
    ways: ways('toenail', 'read', [...plateWays, [4, '3 in staple']]),
  },
  {
    joint: 'rafterToRidge',
    each: 'each rafter, at ridge, valley or hip',
    source: ibc('7'),
    ways: [
      ...ways('end nail', 'read', [
        [2, '16d common'],
        [3, '10d box'],
        [3, '3 in × 0.131'],
        [3, '3 in staple'],
      ]),
      ...ways('toenail', 'memory', plateWays),
    ],
  },
  {
    joint: 'oppositeRafterToRidge',
    each: 'each rafter, one on each side',
    source: builder,
    ways: ways('toenail', 'read', [[2, '10d']]),
  },
  {
    joint: 'hipToPlate',
    each: 'each hip, at the corner',
    source: builder,
    ways: ways('toenail', 'read', [[undefined, '10d']]),
  },
  {
    joint: 'jackToHip',
    each: 'each jack',
    source: builder,
    ways: ways('toenail', 'read', [[undefined, '10d']]),
  },
  {
    joint: 'valley',
    each: 'each valley',
    source: builder,
    ways: ways('toenail', 'read', [[undefined, '10d']]),
  },
];

/** `3 × 16d box, toenail (from memory, not checked: ask the plans)`; what is read goes without a word. */
export const wayText = ({ nails, nail, how, sure }: FasteningWay): string =>
  `${nails === undefined ? '' : `${nails} × `}${nail}, ${how}${sure === 'memory' ? ' (from memory, not checked: ask the plans)' : ''}`;
