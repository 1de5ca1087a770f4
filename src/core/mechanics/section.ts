/** Actual size across a stick, inches: thickness level, depth upright. */
export type Size = { readonly thickness: number; readonly depth: number };

/** What a stick is made of. Stiffness in pounds a square inch, weight in pounds a cubic foot. */
export type Wood = { readonly stiffness: number; readonly weight: number };

/** Sawn framing lumber of a middling grade: 1.4 million psi is from memory of design tables; 35 lb/ft³ as in stock tables. */
export const sawn: Wood = { stiffness: 1.4e6, weight: 35 };

/** Engineered lumber for ridges and beams: 2.0 million psi and 42 lb/ft³, both from memory of makers' tables. */
export const engineered: Wood = { stiffness: 2.0e6, weight: 42 };

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
export const stiffnessOf = ({ thickness, depth }: Size, { stiffness }: Wood): Stiffness => {
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

/** Weight of an inch of a stick, pounds. */
export const poundsAnInch = ({ thickness, depth }: Size, { weight }: Wood): number =>
  (thickness * depth * weight) / 1728;
