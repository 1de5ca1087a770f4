import type { Given } from './assembly';
import { forceIn } from './contacts';
import type { Frame, Grip, Link } from './frame';

/** Joints this close to the worst give along with it, so that a mirrored roof gives on both sides. */
const alike = 1e-6;
/** A joint right at its cap, by rounding a hair over, holds. */
const grace = 1e-9;

/** The joint with the most force for its nails, and those just like it; none when every joint holds. */
export const worstOf = (
  frame: Frame,
  given: Given,
  u: Float64Array,
): readonly { readonly grip: Grip; readonly forces: readonly number[] }[] => {
  const strained = frame.grips
    .filter((grip) => !given.has(grip))
    .map((grip) => {
      const forces = grip.links.map((i) => felt(frame.links[i] as Link, u));
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
