import type { GablePlan, Section, ShedPlan } from '../roof/plan';
import { inch } from '../units/inch';

/**
 * A shed against a wall as half of a gable: the ledger is where its ridge would be, so that the same lengths, cuts and heights
 * come out on the street side. The yard side is not built.
 */
export const halfGable = ({ ledger, ...shed }: ShedPlan & { readonly ledger: Section }): GablePlan => {
  const { highPlate: _high, between: _between, ...rest } = shed;
  return {
    ...rest,
    kind: 'gable',
    span: inch(2 * shed.span - ledger.thickness),
    ridge: ledger,
    joists: false,
    collars: false,
  };
};
