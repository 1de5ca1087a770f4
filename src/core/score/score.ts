/** What a run came to. Codes, places and numbers only; words are found in the catalogues by code. */
export type Score = {
  readonly total: number;
  readonly pass: boolean;
  /** 0 to 1 each; a part with nothing to measure is absent. */
  readonly parts: Partial<Record<Part, number>>;
  /** Share of the required work done, 0 to 1. */
  readonly done: number;
  readonly sound: boolean;
  /** 49 or 69 when a danger or a fall caps the total. */
  readonly cap: number | undefined;
  readonly minutes: { readonly used: number; readonly par: number };
  readonly findings: readonly Finding[];
};

export type Part = 'order' | 'checks' | 'fit' | 'eye' | 'economy';

export type Finding = {
  /** A rule id such as O5, C2, S1, or a fault or fit code. */
  readonly code: string;
  readonly kind: 'order' | 'check' | 'state' | 'safety' | 'fit' | 'eye' | 'good';
  readonly at?: string;
  /** Index of the step it is about: the place to go back to. */
  readonly step?: number;
  readonly minutes: number;
  /** What the words need: deviations in inches, counts. */
  readonly numbers: Readonly<Record<string, number>>;
  /** The consequence is not simulated yet, only its cost. */
  readonly costOnly?: boolean;
};
