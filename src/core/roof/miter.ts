import type { Turn } from './figuredSlants';

/** The slopes of two rafters that meet, and how deep both are. */
export type Bend = { readonly steep: number; readonly flat: number; readonly depth: number };

/** The joint of two rafters as deep as each other, cut along the line that halves their angle. */
export type Miter = {
  /** Off square, of either cut: half of how much the slope turns. */
  readonly half: Turn;
  /** Of the cut. Inches. */
  readonly length: number;
  /** Level, from its upper end in to its lower end. Inches. */
  readonly inside: number;
};

/**
 * By their unit directions d and e the cut stands square to d + e. With c = d · e, the cosine of the turn, half of it has
 * the sine √((1 − c) / 2) and the cosine √((1 + c) / 2).
 */
export const miterOf = ({ steep, flat, depth }: Bend): Miter => {
  const [g, h] = [Math.sqrt(1 + steep * steep), Math.sqrt(1 + flat * flat)];
  const c = (1 + steep * flat) / (g * h);
  return {
    half: { rise: (steep - flat) / (g * h), run: 1 + c },
    length: depth * Math.sqrt(2 / (1 + c)),
    inside: (depth * (steep / g + flat / h)) / (1 + c),
  };
};
