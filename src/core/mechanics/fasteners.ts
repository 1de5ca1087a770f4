/**
 * What nails, faces, posts, braces and slings give and hold, pounds, inches and radians. All of these rows are ours: round
 * figures of the size that design tables of nailed joints give, not taken from any one of them, and not bent to any result.
 */
export type NailRow = {
  /** lb/in sideways and in pulling out, a nail. */
  readonly shear: number;
  readonly pull: number;
  /** in-lb/rad, a nail: about the ridge's direction, and about the two across it. */
  readonly turnAlong: number;
  readonly turnAcross: number;
  /** Pounds at which it gives, a nail. */
  readonly cap: number;
};

/** Home: a third of a joint with three. */
export const nail: NailRow = {
  shear: 15_000 / 3,
  pull: 3_000 / 3,
  turnAlong: 2_000 / 3,
  turnAcross: 8_000 / 3,
  cap: 120,
};

/** Not driven home: half of a joint with two. */
export const tack: NailRow = {
  shear: 8_000 / 2,
  pull: 1_000 / 2,
  turnAlong: 250 / 2,
  turnAcross: 800 / 2,
  cap: 60,
};

/** Wood on wood that nothing fastens: what rubbing gives sideways, lb/in. */
export const rubbing = 50;

/** Wood pressed on wood, lb/in at each edge of a face. */
export const faceStiffness = { seat: 30_000, heelCut: 30_000, plumbCut: 40_000 } as const;

/** A seat that has slid this close to its plate's edge is off it, inches. */
export const leastBearing = 1.5;

/** Both ends of a tie or collar, each with three nails: lb/in along it, and the pounds at which an end gives. */
export const tieEnd = { stiffness: 15_000, cap: 360 } as const;

/** What of a nail still counts in a stick that is split where it goes in. Ours: half its wood is still whole. */
export const splitShare = 1 / 2;

/** Ends of a block that share the nails of its lower edge in the plate. */
export const blockEnds = 2;

/**
 * A light strap over the ridge, inches and psi: ours but for the stiffness of steel, which any handbook has. `free` is what
 * lies between the nearest nails on the two sides; each side has half of its nails.
 */
export const strapSteel = { width: 1.25, thick: 0.036, free: 12, stiffness: 29e6 } as const;

/** A 2×4 brace with three nails an end: lb/in level, and the pounds at which it gives. */
export const braceEnd = { stiffness: 2_300, cap: 300 } as const;

/** Under its head, lb/in, pushing only. */
export const postHead = 20_000;

/** Two people steadying an end of the ridge until its pair is tacked, lb/in level; what they carry up. */
export const steadyHands = { level: 2_300, up: 20_000 } as const;

/** Slings hold up like this, lb/in, and are this long, inches: sideways they only swing. */
export const sling = { up: 20_000, length: 120 } as const;

/**
 * What holds a plate level, lb/in: a brace across the wall, the corner with a braced gable wall and with one that only its
 * nails hold, the studs of one station.
 */
export const wall = { brace: 2_500, corner: 5_000, looseCorner: 500, studs: 3 } as const;

/** A braced eave wall has a brace across it this often, inches. Common practice, no source. */
export const wallBraceSpacing = 96;

/** A double 2×6 lying flat, inches: a plate bends level as a beam. */
export const plateSection = { thickness: 3, depth: 5.5 } as const;

/** As-found lean: the level push, as a part of the weight at each place along the ridge. */
export const leanShare = 0.02;
