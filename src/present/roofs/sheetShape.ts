import type { FiguredLists } from '../../core/roof/figuredLists';
import type { FiguredRoof } from '../../core/roof/figured';
import type { RoofPlan } from '../../core/roof/plan';
import type { Figure, Told } from './figures';

/**
 * The figured roof as people read it, in the order the work needs it: marks before the ridge, the ridge before rafters, what
 * stands between them after. Every kind of roof has the same parts; those it has nothing for are left out.
 */
export type RoofSheet = {
  readonly title: string;
  /** What was asked for: span, slope, boards. */
  readonly facts: readonly string[];
  readonly parts: readonly SheetPart[];
};

export type PartKey = keyof Told['words']['roofs']['part'];

export type SheetPart = {
  readonly key: PartKey;
  readonly title: string;
  readonly rows: readonly SheetRow[];
  /** What holds for the whole part. */
  readonly notes: readonly string[];
};

/** One member, or one line to buy, lift or nail. */
export type SheetRow = {
  readonly id: string;
  readonly name: string;
  readonly count?: number;
  readonly figures: readonly Figure[];
  readonly notes: readonly string[];
};

export type SheetAsked = Told & {
  readonly plan: RoofPlan;
  readonly roof: FiguredRoof;
  readonly lists: FiguredLists;
};
