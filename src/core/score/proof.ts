import type { Norm } from './weakest';

/** One line of a proof of the score on simulated hands: what was found, what it should be, from how many, and whether it is. */
export type ProofLine = {
  readonly target: string;
  /** A level, or the levels a target is reckoned over. */
  readonly level: string;
  readonly value: number;
  readonly wanted: string;
  readonly n: number;
  readonly reached: boolean;
};

/** The last proof: its lines, and what each level came to under which rules. */
export type Proof = {
  readonly rules: number;
  /** Runs of each hand on the reference levels. */
  readonly runs: number;
  readonly levels: readonly {
    readonly level: string;
    /** Standard error of one run, points; null where too few people played. */
    readonly errorOfOneRun: number | null;
    readonly competent: Norm;
  }[];
  readonly lines: readonly ProofLine[];
};
