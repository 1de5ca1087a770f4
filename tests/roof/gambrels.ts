import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { CommonRafter, FiguredRoof } from '../../src/core/roof/figured';
import type { GambrelPlan } from '../../src/core/roof/plan';
import type { Changes } from './roofs';

/** A 22 by 26 ft gambrel, 16 in 12 below and 5 in 12 above, of rafters 6 in deep on purlins 3 1/2 in thick, as a file holds it. */
export const gambrelSample = {
  format: 'tack-and-true/roof@1',
  kind: 'gambrel',
  slope: { rise: 16, run: 12 },
  upperSlope: { rise: 5, run: 12 },
  breakIn: 60,
  span: 264,
  length: 312,
  overhang: 9,
  spacing: 24,
  rafter: { thickness: 1.5, depth: 6 },
  ridge: { thickness: 1.5, depth: 9.25 },
  purlin: { thickness: 3.5, depth: 9.25, seat: 2.4 },
  plate: { width: 5.5 },
  seat: 2,
} as const;

/** The same with its rafters mitered, and gussets over the joints. */
export const mitered: Changes = { breakOn: 'gussets', purlin: undefined };

/** What is undefined is left out, as in a file. */
export const gambrelFile = (changes: Changes = {}): unknown =>
  JSON.parse(JSON.stringify({ ...gambrelSample, ...changes }));

export const gambrelPlan = (changes: Changes = {}): GambrelPlan => {
  const read = readRoof(gambrelFile(changes));
  if (!read.ok) throw new Error(read.complaints.map((c) => JSON.stringify(c)).join('\n'));
  if (read.value.kind !== 'gambrel') throw new Error('not a gambrel');
  return read.value;
};

export const gambrelRoof = (changes: Changes = {}): FiguredRoof => figure(gambrelPlan(changes));

export const rafterIn = (roof: FiguredRoof, id: 'common.lower' | 'common.upper'): CommonRafter => {
  const found = roof.commonRafters.find((one) => one.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};
