import type { ToolId } from '../../instruments/tool';
import type { CheckRuleId } from '../../order/rules';
import type { Standing } from '../../site/standing';

/** A tool held to a place. */
export type Look = { readonly tool: ToolId; readonly at: string; readonly from?: string };

/** One way of making a check: what is read, from when it can tell something, and the point of no return. */
export type Way = {
  readonly looks: readonly Look[];
  readonly opens: (standing: Standing) => boolean;
  readonly closes: (standing: Standing) => boolean;
};

/** One thing a check wants known. Any of its ways will do; `right` says whether what it shows was put right by then. */
export type Want = {
  readonly rule: CheckRuleId;
  readonly part: string;
  readonly weight: number;
  readonly ways: readonly Way[];
  readonly right: (standing: Standing) => boolean;
};
