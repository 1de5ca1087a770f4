import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { CommonRafter, FiguredRoof } from '../../src/core/roof/figured';
import type { GablePlan } from '../../src/core/roof/plan';

/** A 24 by 26 ft gable at 6 in 12 of 2×8 on a 2×10 ridge, as a file holds it. */
export const sample = {
  format: 'tack-and-true/roof@1',
  kind: 'gable',
  slope: { rise: 6, run: 12 },
  span: 288,
  length: 312,
  overhang: 14,
  spacing: 24,
  rafter: { thickness: 1.5, depth: 7.25 },
  ridge: { thickness: 1.5, depth: 9.25 },
  plate: { width: 5.5 },
  seat: 3.5,
} as const;

export type Changes = Readonly<Record<string, unknown>>;

/** The sample with some keys changed, read as the product reads it. */
export const planOf = (changes: Changes = {}): GablePlan => {
  const read = readRoof({ ...sample, ...changes });
  if (!read.ok) throw new Error(read.complaints.map((c) => JSON.stringify(c)).join('\n'));
  if (read.value.kind !== 'gable') throw new Error('not a gable');
  return read.value;
};

export const roofOf = (changes: Changes = {}): FiguredRoof => figure(planOf(changes));

export const rafterOf = (changes: Changes = {}): CommonRafter => {
  const [rafter] = roofOf(changes).commonRafters;
  if (!rafter) throw new Error('no rafter');
  return rafter;
};

export const codesOf = (changes: Changes = {}): readonly string[] =>
  roofOf(changes).cautions.map(({ code }) => code);

/** A file's roof in millimeters, slopes as they are; lengths left out of it would stay as usual in inches. */
export const inMm = (file: object): object => ({ ...(metric(file) as object), units: 'mm' });

const metric = (value: unknown, key = ''): unknown => {
  if (typeof value === 'number') return value * 25.4;
  if (Array.isArray(value)) return value.map((one) => metric(one));
  if (typeof value !== 'object' || value === null || key === 'slope') return value;
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, metric(one, name)]));
};
