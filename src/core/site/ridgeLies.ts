import { ridgeTruth } from '../level/asFound';
import { postX, ridgeCarries } from '../level/layout';
import type { Level } from '../level/level';
import { stiffnessOf } from '../mechanics/section';
import { ends, type End } from '../roof/side';
import { poundsAnInch } from '../stock/lumber';
import { woodOf } from '../stock/wood';
import type { Standing } from './standing';

/** How the ridge lies by itself between its ends, under a hand at its middle, and over its two props. */

/** Above (+) and to the yard (+) of the straight line of its ends, at this share of its length from A; inches. */
export const ownLie = (standing: Standing, share: number): { readonly up: number; readonly over: number } => {
  const { bow, crown } = ridgeTruth(standing);
  const own = 4 * share * (1 - share);
  const pushed = standing.site.ridge?.pushed ?? bow;
  return { up: crown * own, over: bow * own + (pushed - bow) * bent(Math.min(share, 1 - share)) };
};

/** Shape of a beam on two supports with a load at its middle, 1 there: 3s − 4s³ up to the middle. */
const bent = (share: number): number => 3 * share - 4 * share * share * share;

const flat: Readonly<Record<End, number>> = { A: 0, B: 0 };

/** A ridge that tips up less than this is set by its props, inches: what a tape tells apart. Ours; no roof of the course tips more. */
const leastTip = 1 / 16;

/**
 * How far a ridge board's ends stand over the line of its two props because its middle sags between them, inches. Whoever
 * posts it gets its ends to their height, so the props' heads stand that much lower.
 */
export const tipped = (job: Level): Readonly<Record<End, number>> => {
  const known = tips.get(job) ?? tipsOf(job);
  tips.set(job, known);
  return known;
};
const tips = new WeakMap<Level, Readonly<Record<End, number>>>();

const tipsOf = (job: Level): Readonly<Record<End, number>> => {
  if (ridgeCarries(job)) return flat;
  const { ridge, length } = job.plan;
  const wood = woodOf(ridge);
  const beam = { weight: poundsAnInch(ridge, wood), upright: stiffnessOf(ridge, wood).upright };
  const over = { A: postX(job, 1), B: length - postX(job, 2) };
  const span = length - over.A - over.B;
  const tip = {
    A: tipOf(beam, { span, over: over.A, beyond: over.B }),
    B: tipOf(beam, { span, over: over.B, beyond: over.A }),
  };
  return ends.every((end) => tip[end] < leastTip) ? flat : tip;
};

type Beam = { readonly weight: number; readonly upright: number };
type Spans = { readonly span: number; readonly over: number; readonly beyond: number };

/** A beam with both ends over: the slope at its support times the end's length, less what the end itself hangs. Handbook sums. */
const tipOf = ({ weight, upright }: Beam, { span, over, beyond }: Spans): number => {
  const sagged = (weight * span * span * span) / 24;
  const backed = (weight * (2 * over * over + beyond * beyond) * span) / 12;
  const hung = (weight * over * over * over) / 8;
  return ((sagged - backed - hung) * over) / upright;
};
