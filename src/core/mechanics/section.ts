import type { Wood } from '../stock/wood';

/** Actual size across a stick, inches: thickness level, depth upright. */
export type Size = { readonly thickness: number; readonly depth: number };

/** Shear stiffness of wood along the grain as a part of its stiffness in bending: one sixteenth, from memory of wood handbooks. */
const shearShare = 1 / 16;

/** A stick's stiffnesses: EA in pounds, EI and GJ in lb·in². `flat` bends across its thickness, `upright` across its depth. */
export type Stiffness = {
  readonly axial: number;
  readonly upright: number;
  readonly flat: number;
  readonly turning: number;
};

/** Of a solid rectangle; torsion by the usual series cut after its first term, good to 1 part in 200. */
export const stiffnessOf = (size: Size, wood: Wood): Stiffness => {
  const woods = sticks.get(size) ?? new WeakMap<Wood, Stiffness>();
  const stick = woods.get(wood) ?? figured(size, wood);
  sticks.set(size, woods.set(wood, stick));
  return stick;
};
/** Figured once, so that beams of one stick know each other. */
const sticks = new WeakMap<Size, WeakMap<Wood, Stiffness>>();

const figured = ({ thickness, depth }: Size, { stiffness }: Wood): Stiffness => {
  const b = Math.min(thickness, depth);
  const d = Math.max(thickness, depth);
  const slender = (b * b * b * b) / (12 * d * d * d * d);
  const torsion = b * b * b * d * (1 / 3 - 0.21 * (b / d) * (1 - slender));
  return {
    axial: stiffness * thickness * depth,
    upright: (stiffness * thickness * depth * depth * depth) / 12,
    flat: (stiffness * depth * thickness * thickness * thickness) / 12,
    turning: stiffness * shearShare * torsion,
  };
};
