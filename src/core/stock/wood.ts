/** What a stick is made of. Stiffness in pounds a square inch, weight in pounds a cubic foot. */
export type Wood = { readonly stiffness: number; readonly weight: number };

/**
 * Sawn framing lumber of a middling grade: 1.4 million psi is from memory of design tables; 35 lb/ft³ as lumber tables
 * reckon it (read: it gives 2.64 lb/ft for a 2×8).
 */
export const sawn: Wood = { stiffness: 1.4e6, weight: 35 };

/** Sawn lumber a grade too low: 1.2 million psi, from memory of the same tables. */
export const lowGrade: Wood = { stiffness: 1.2e6, weight: 35 };

/** What the grader's stamp says on the one and the other: the number alone, which is the trade's own. */
export const gradeStamps = { asOrdered: 'No. 2', tooLow: 'No. 3' } as const;

/** Engineered lumber for ridges and beams: 2.0 million psi and 42 lb/ft³, both from memory of makers' tables. */
export const engineered: Wood = { stiffness: 2.0e6, weight: 42 };

/** Dressed dry lumber is at most so wet, percent: PS 20, from a published reprint of its table (read). Weights are of such. */
export const dryAtMost = 19;

/** Thickest sawn lumber of a roof's sticks, inches: what is thicker was made of veneers. Common practice, no source. */
const thickestSawn = 1.5;

/** What a stick of this thickness is made of. */
export const woodOf = ({ thickness }: { readonly thickness: number }): Wood =>
  thickness > thickestSawn ? engineered : sawn;
