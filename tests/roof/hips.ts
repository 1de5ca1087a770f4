import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';
import type { FiguredHip, FiguredJacks } from '../../src/core/roof/figuredSlants';
import type { HipPlan } from '../../src/core/roof/plan';
import { sample, type Changes } from './roofs';

/** A 24 by 40 ft hip roof at 6 in 12, as a file holds it; rafters, ridge and hips all 1 1/2 in thick. */
export const hipSample = { ...sample, kind: 'hip', length: 480 } as const;

export const hipPlan = (changes: Changes = {}): HipPlan => {
  const read = readRoof({ ...hipSample, ...changes });
  if (!read.ok) throw new Error(read.complaints.map((c) => JSON.stringify(c)).join('\n'));
  if (read.value.kind !== 'hip') throw new Error('not a hip roof');
  return read.value;
};

export const hipRoof = (changes: Changes = {}): FiguredRoof => figure(hipPlan(changes));

export const onlyHip = (changes: Changes = {}): FiguredHip => {
  const [hip, ...more] = hipRoof(changes).hips ?? [];
  if (!hip || more.length > 0) throw new Error('not one kind of hip');
  return hip;
};

export const jacksOn = (side: FiguredJacks['side'], changes: Changes = {}): FiguredJacks => {
  const found = hipRoof(changes).jacks?.find((jacks) => jacks.side === side);
  if (!found) throw new Error(`no jacks on ${side}`);
  return found;
};
