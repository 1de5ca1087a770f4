/** Why a run does not hold, or is not held to: a code, and what the words for it name. */
export type Why = { readonly code: WhyCode; readonly names: readonly string[] };

export type WhyCode =
  | 'digest'
  | 'noLevel'
  | 'otherLevel'
  | 'changedLevel'
  | 'byNobody'
  | 'byOther'
  | 'forNone'
  | 'forOther'
  | 'notAsked'
  | 'otherMode'
  | 'otherSite'
  | 'otherRules'
  | 'total'
  | 'part';

export const why = (code: WhyCode, ...names: readonly string[]): Why => ({ code, names });
