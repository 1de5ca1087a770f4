import type { Level } from '../../level/level';
import type { Stage } from '../../level/stages';
import type { Side } from '../../roof/side';
import type { Methods } from '../../level/method';
import type { RuleId } from '../rules';
import type { PlannedAction, View } from './view';

/** One line of the crew list: what it is for, what it waits for and why, what is still to do. */
export type Task = {
  readonly code: TaskCode;
  /** Set where a job is done once on each side. */
  readonly side?: Side;
  /** Absent: always part of the job. */
  readonly applies?: (methods: Methods, level: Level) => boolean;
  readonly waits: (view: View) => readonly Wait[];
  /** What is left, first things first; nothing left means done. */
  readonly acts: (view: View) => readonly PlannedAction[];
  /** Rules it makes true, or whose check it is. */
  readonly serves: readonly RuleId[];
  /** Rules it is the later step of: once it is begun, what they ask for comes too late. */
  readonly closes: readonly RuleId[];
  /** Its acts may be done in any order. */
  readonly anyOrder?: true;
};

export type TaskCode =
  | 'agree'
  | 'braceWalls'
  | 'proveWalls'
  | 'lookOver'
  | 'settleRidge'
  | 'tieWalls'
  | 'layOut'
  | 'makeReady'
  | 'setPosts'
  | 'landRidge'
  | 'proveEnds'
  | 'nailEnds'
  | 'fixLedger'
  | 'braceRidge'
  | 'lockMiddle'
  | 'letGo'
  | 'string'
  | 'stack'
  | 'heels'
  | 'chalk'
  | 'upper'
  | 'tails'
  | 'propsOut'
  | 'handOver';

/** What must come first, and why: a rule, or `physics` where it cannot be done otherwise, or `way` where the crew chose so. */
export type Wait = { readonly on: TaskCode; readonly side?: Side; readonly why: RuleId | 'physics' | 'way' };

export const wait = (on: TaskCode, why: Wait['why'], side?: Side): Wait => ({
  on,
  why,
  ...(side === undefined ? {} : { side }),
});

export type WorkCode = Exclude<TaskCode, 'handOver'>;

/** The stage of the job each task belongs to. Handing over ends any of them. */
export const stageOf: Readonly<Record<WorkCode, Stage>> = {
  agree: 'ground',
  braceWalls: 'ground',
  proveWalls: 'ground',
  lookOver: 'ground',
  settleRidge: 'ground',
  tieWalls: 'ground',
  layOut: 'ground',
  makeReady: 'ground',
  setPosts: 'ridge',
  landRidge: 'ridge',
  proveEnds: 'ridge',
  nailEnds: 'ridge',
  fixLedger: 'hold',
  braceRidge: 'hold',
  lockMiddle: 'hold',
  letGo: 'hold',
  string: 'stack',
  stack: 'stack',
  heels: 'stack',
  chalk: 'close',
  upper: 'close',
  tails: 'close',
  propsOut: 'close',
};
