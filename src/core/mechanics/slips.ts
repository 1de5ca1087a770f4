import { forceIn } from './contacts';
import type { Frame, Grip, Link } from './frame';
import { forcesIn, type Given } from './given';

/** Joints this close to the worst give along with it, so that a mirrored roof gives on both sides. */
const alike = 1e-6;
/** A joint this little over its cap holds: what is left when one that gave is asked again, which way it slips. */
const grace = 1e-6;

/**
 * The joint with the most force for its nails, and those just like it, each with its forces brought down to the cap; none
 * when every joint holds. A joint that gave is among them as long as it is not seen to slip along its force.
 */
export const worstOf = (
  frame: Frame,
  given: Given,
  u: Float64Array,
): readonly { readonly grip: Grip; readonly forces: readonly number[] }[] => {
  const strained = frame.grips.map((grip) => {
    const caps = given.get(grip);
    const forces = caps
      ? forcesIn(frame, grip, { caps, u })
      : grip.links.map((i) => felt(frame.links[i] as Link, u));
    return { grip, forces, ratio: sizeOf(forces) / grip.cap };
  });
  const worst = strained.reduce((most, { ratio }) => Math.max(most, ratio), 0);
  if (worst <= 1 + grace) return [];
  return strained
    .filter(({ ratio }) => ratio > 1 + grace && ratio >= worst * (1 - alike))
    .map(({ grip, forces, ratio }) => ({ grip, forces: forces.map((f) => f / ratio) }));
};

/** What only acts one way feels nothing the other way. */
const felt = (link: Link, u: Float64Array): number =>
  link.acts === 'push' ? Math.min(0, forceIn(link, u)) : forceIn(link, u);

const sizeOf = (forces: readonly number[]): number => Math.sqrt(forces.reduce((sum, f) => sum + f * f, 0));
