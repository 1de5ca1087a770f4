import type { Frame, Grip } from './frame';
import { slipOf, strainOf, type Given, type Slip } from './given';

/** Joints this close to the worst give along with it, so that a mirrored roof gives on both sides. */
const alike = 1e-6;
/** A joint this little over its cap holds, and one that gave has come to rest when its forces change by no more of it. */
const grace = 1e-6;

/**
 * The joints that give for these moves: those that gave before and still would, each slipped to where it is now, and of the
 * others the one with the most force for its nails and those just like it. Undefined when nothing changes by it.
 */
export const givingOn = (frame: Frame, given: Given, u: Float64Array): Given | undefined => {
  const next = new Map<Grip, Slip>();
  let still = true;
  for (const [grip, before] of given) {
    const slip = slipOf(frame, grip, u);
    if (slip) next.set(grip, slip);
    still &&= slip !== undefined && isAlike(before, slip, grip.cap);
  }
  const strained: { grip: Grip; slip: Slip; ratio: number }[] = [];
  for (const grip of frame.grips) {
    const slip = given.has(grip) ? undefined : slipOf(frame, grip, u);
    if (slip) strained.push({ grip, slip, ratio: strainOf(frame, grip, u) });
  }
  const worst = strained.reduce((most, { ratio }) => Math.max(most, ratio), 1 + grace);
  const giving = strained.filter(({ ratio }) => ratio > 1 + grace && ratio >= worst * (1 - alike));
  for (const { grip, slip } of giving) next.set(grip, slip);
  return still && giving.length === 0 ? undefined : next;
};

const isAlike = (one: Slip, other: Slip, cap: number): boolean =>
  one.forces.every((f, i) => Math.abs(f - (other.forces[i] as number)) <= grace * cap);
