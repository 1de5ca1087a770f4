import { checkRules, common, orderRules, type SafetyRuleId, type StateRuleId } from './rules';

/** Rules about the end state and about safety: ids with their source, for RULES.md and the catalogues. */
export const otherRules: readonly {
  readonly id: StateRuleId | SafetyRuleId;
  readonly type: 'state' | 'safety';
  /** In words, for RULES.md. */
  readonly asks: string;
  readonly source: string;
  readonly introducedBy: string;
}[] = [
  {
    id: 'T1',
    type: 'state',
    asks: 'nothing on tacks when it is handed over; 1 crew-minute a joint',
    source: common,
    introducedBy: 'seed-store',
  },
  {
    id: 'T2',
    type: 'state',
    asks: 'braces in, every required joint at its least count, nothing split; 4 crew-minutes each',
    source: 'IBC 2018 table 2304.10.1 (read)',
    introducedBy: 'wood-store',
  },
  {
    id: 'S1',
    type: 'safety',
    asks: 'nobody under a hung load or in its path, no hitch that lets it tip',
    source: '29 CFR 1910.178(m)(2) (read)',
    introducedBy: 'sail-loft',
  },
  {
    id: 'S2',
    type: 'safety',
    asks: 'the machine lets go, and a post that carries comes out, only with everybody clear',
    source: common,
    introducedBy: 'sail-loft',
  },
  {
    id: 'S3',
    type: 'safety',
    asks: 'nobody on the top plate, nobody tied to what is not built',
    source: 'OSHA interpretation of 29 CFR 1926.501(b)(13) (read)',
    introducedBy: 'garden-hut',
  },
  {
    id: 'S4',
    type: 'safety',
    asks: 'no nail toward a hand, sequential trigger before any nail',
    source: 'NIOSH 2011-202 (read)',
    introducedBy: 'pump-house',
  },
];

export const ruleIds: readonly string[] = [...orderRules, ...checkRules, ...otherRules].map(({ id }) => id);
