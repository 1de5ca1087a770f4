import type { Hold, ToolId } from './tool';

/** What a tool can tell and how finely, what it gets wrong by itself, and how that is caught. Divisions and noise in inches. */
export type ToolRow = {
  readonly id: ToolId;
  /** Smallest division marked on it; the learner reads to this. */
  readonly division: number;
  /** How far one honest reading strays. Ours. */
  readonly noise: number;
  /** What it keeps getting wrong: the range of the level file that sets how much. */
  readonly bias?: 'levelBias' | 'tapeHook' | 'waterBias' | 'squareBias' | 'lineSlack';
  /** What shows that error: the tool held another way, or put to a place where the answer is known, or set anew. */
  readonly caught?: Hold | 'together' | 'stretchedAgain';
  /** How it is held wrong in life; what that does is simulated. */
  readonly misuse: readonly Misuse[];
  readonly source: string;
};

/**
 * `coarse`: asked for more than it can tell. `hooked`: trusted by its hook alone. `hopped`: from rafter to rafter, sixteenths
 * added up. `oneWay`: read one way round only. `apart`: its ends never held together first. `slack`: read on a new line;
 * `touching`: on a line that lies on the work. `swinging`: read before it is still. `short`: tells nothing of a bend longer
 * than it is, and little of a fall. `leaning`: held by eye, not plumb. `byTail`: laid to an end that nobody cut.
 */
export type Misuse =
  | 'coarse'
  | 'hooked'
  | 'hopped'
  | 'oneWay'
  | 'apart'
  | 'slack'
  | 'touching'
  | 'swinging'
  | 'short'
  | 'leaning'
  | 'byTail';

const ours = 'ours';

export const tools: Readonly<Record<ToolId, ToolRow>> = {
  eye: { id: 'eye', division: 0.25, noise: 0, misuse: ['coarse'], source: ours },
  tape: {
    id: 'tape',
    division: 1 / 16,
    noise: 1 / 64,
    bias: 'tapeHook',
    caught: 'inch',
    misuse: ['hooked', 'hopped'],
    source: ours,
  },
  rule: { id: 'rule', division: 1 / 16, noise: 0, misuse: [], source: ours },
  level: {
    id: 'level',
    division: 1 / 16,
    noise: 0,
    bias: 'levelBias',
    caught: 'B',
    misuse: ['oneWay', 'short'],
    source: '0.5 mm in 1 m is the usual rating (from memory); division ours',
  },
  waterLevel: {
    id: 'waterLevel',
    division: 1 / 16,
    noise: 1 / 64,
    bias: 'waterBias',
    caught: 'together',
    misuse: ['apart'],
    source: ours,
  },
  string: {
    id: 'string',
    division: 1 / 16,
    noise: 0,
    bias: 'lineSlack',
    caught: 'stretchedAgain',
    misuse: ['slack', 'touching'],
    source: ours,
  },
  pattern: { id: 'pattern', division: 1 / 16, noise: 0, misuse: ['byTail'], source: ours },
  square: {
    id: 'square',
    division: 1 / 16,
    noise: 0,
    bias: 'squareBias',
    caught: 'turned',
    misuse: ['oneWay'],
    source: ours,
  },
  bob: { id: 'bob', division: 1 / 8, noise: 1 / 64, caught: 'still', misuse: ['swinging'], source: ours },
  straightedge: { id: 'straightedge', division: 1 / 16, noise: 0, misuse: ['short'], source: ours },
  storyPole: {
    id: 'storyPole',
    division: 1 / 16,
    noise: 1 / 64,
    caught: 'plumb',
    misuse: ['leaning'],
    source: ours,
  },
};

/** Lengths of the two spirit levels, inches. What either is out of true goes with its length. */
export const levelLength = 48;
const shortLevel = 24;
/** Where each lies, as a reading names the place. */
export const levelAt: ReadonlyMap<string, number> = new Map([
  ['ridge', levelLength],
  ['ridge.short', shortLevel],
]);
/** Thickness of the gauge blocks that hold a string clear of the work, inches. */
export const gaugeBlock = 0.75;
/** How far a bob may stand off when it is read swinging, inches. Ours. */
export const bobSwing = 0.5;
/** How far a pole held by eye may lean, inches for each inch of its height. Ours. */
export const poleLean = 0.1;
/** How far a tail that nobody cut may run past where the pattern's ends, inches. Ours. */
export const tailStray = 0.5;
