import type { FaultId } from '../faults/fault';
import type { GablePlan, ShedPlan } from '../roof/plan';
import type { AcceptedMethods } from './method';
import { modes, type Mode } from './mode';
import type { StageRange } from './stages';

/** A playable level, parsed and trusted. Words are plain text in both languages. */
export type Level = {
  readonly id: string;
  readonly version: number;
  readonly title: Words;
  readonly summary: Words;
  readonly briefing: readonly Words[];
  readonly plan: GablePlan;
  /** A roof of one side against a wall: `plan` is the gable whose street half it is, with the ledger for its ridge. */
  readonly shed?: ShedPlan | undefined;
  readonly methods: AcceptedMethods;
  /** Ways to play it; all that suit it where left out. */
  readonly modes?: readonly Mode[] | undefined;
  /** The whole job where it is left out. */
  readonly stages?: StageRange | undefined;
  readonly machine: Machine | undefined;
  readonly asFound: AsFound;
  readonly tolerances: Tolerances;
  readonly introduces: readonly string[];
  readonly cautions: readonly string[];
  /** Crew-minutes of a clean run, by way of hanging the ridge. */
  readonly par: Readonly<Partial<Record<'machine' | 'posts' | 'hand', number>>>;
};

export type Words = { readonly en: string; readonly es: string };

export type Machine = { readonly reach: number; readonly chart: number; readonly steady: number };

/** Planted outright by place; everything else drawn from the seed within these ranges, inches unless said. */
export type AsFound = {
  readonly planted: readonly Planted[];
  readonly spareBoards: number;
  /** Share of its depth that the whole pile lost to drying since it was cut. */
  readonly dried: number;
  readonly ranges: {
    readonly plateHeight: number;
    readonly plateLine: number;
    readonly bodyLength: number;
    readonly cutOpen: number;
    readonly crown: number;
    readonly markWander: number;
    readonly blockLength: number;
    readonly growth: number;
    readonly levelBias: number;
    readonly landing: number;
    /** Middle of the ridge board off to a side, and up or down, of the line of its ends. */
    readonly ridgeBow: number;
    readonly ridgeCrown: number;
    /** Boards: upper end turned against the heel; depth off its size. */
    readonly twist: number;
    readonly boardDepth: number;
    /** Tools: a tape's hook, air in a water level, a square over its twelve inches; share of its pull a new line loses. */
    readonly tapeHook: number;
    readonly waterBias: number;
    readonly squareBias: number;
    readonly lineSlack: number;
  };
};

export type Planted = { readonly fault: FaultId; readonly at: string; readonly by: number };

export type Tolerances = {
  readonly ridgeLevelIn10ft: number;
  readonly ridgeHeight: number;
  readonly ridgeCentre: number;
  readonly ridgeStraight: number;
  readonly plane: number;
  readonly plumbCut: number;
  readonly seat: number;
  readonly layout: number;
  readonly block: number;
  readonly tie: number;
};

/** The ways a level offers. Part of a job is for practice only: there is too little of it to judge anybody by. */
export const modesOf = (level: Level): readonly Mode[] =>
  level.modes ?? (level.stages ? modes.filter((mode) => mode !== 'check-off') : modes);
