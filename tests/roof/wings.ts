import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRidge, FiguredRoof } from '../../src/core/roof/figured';
import type { FiguredHip, FiguredJacks } from '../../src/core/roof/figuredSlants';
import { sample, type Changes } from './roofs';

/** A 24 by 40 ft gable with a wing 16 ft wide and 10 ft long in its yard side, all at 6 in 12 and 1 1/2 in thick. */
export const wingSample = (wing: Changes = {}, changes: Changes = {}): object => ({
  ...sample,
  length: 480,
  ...changes,
  wings: [{ side: 'yard', at: 216, span: 192, length: 120, ...wing }],
});

export const wingRoof = (wing: Changes = {}, changes: Changes = {}): FiguredRoof => {
  const read = readRoof(wingSample(wing, changes));
  if (!read.ok) throw new Error(read.complaints.map((c) => JSON.stringify(c)).join('\n'));
  return figure(read.value);
};

/** Longest first. */
export const valleysOf = ({ valleys = [] }: FiguredRoof): readonly FiguredHip[] =>
  [...valleys].sort((a, b) => b.run - a.run);

export const wingRidge = ({ ridges }: FiguredRoof): FiguredRidge => {
  const found = ridges.find(({ id }) => id === 'ridge.wing');
  if (!found) throw new Error('no ridge of a wing');
  return found;
};

export const jacksOfKind = (
  { jacks = [] }: FiguredRoof,
  kind: FiguredJacks['kind'],
): readonly FiguredJacks[] => jacks.filter((one) => one.kind === kind);
