/** Least and most of a length in a roof file, inches. */
export type Limit = { readonly min: number; readonly max: number };

/** From what a saw can still cut to a beam no yard sells; ours. */
const stick: Limit = { min: 0.25, max: 96 };
/** From nothing to 20 ft; ours. */
const reach: Limit = { min: 0, max: 240 };
/** Trimmings and gaps; ours. */
const small: Limit = { min: 0, max: 12 };

/** Every length a roof file may hold, by its path; `*` for each of several. They keep every figure finite and every loop short. */
export const roofLimits = {
  span: { min: 12, max: 12_000 },
  length: { min: 12, max: 2_000_000 },
  overhang: reach,
  rakeOverhang: reach,
  spacing: { min: 6, max: 96 },
  'rafter.thickness': stick,
  'rafter.depth': stick,
  'ridge.thickness': stick,
  'ridge.depth': stick,
  'ledger.thickness': stick,
  'ledger.depth': stick,
  'highPlate.width': stick,
  'highPlate.seat': stick,
  'highPlate.overhang': reach,
  'between.clearance': small,
  'standing.heightAbovePlate': stick,
  'standing.ridgeTop': { min: 0, max: 20_000 },
  'standing.ridgeThickness': stick,
  'standing.lastRafter': { min: 0, max: 96 },
  'standing.rafterDepth': stick,
  'hip.thickness': stick,
  'hip.depth': stick,
  'plate.width': stick,
  seat: stick,
  'yard.plateHeight': { min: -240, max: 240 },
  'yard.overhang': reach,
  'yard.seat': stick,
  'gableStuds.spacing': { min: 6, max: 96 },
  'gableStuds.thickness': stick,
  'posts.below': { min: 0, max: 480 },
  'wings.*.at': { min: 0, max: 2_000_000 },
  'wings.*.span': { min: 12, max: 12_000 },
  'wings.*.length': { min: 12, max: 12_000 },
  'wings.*.overhang': reach,
  'wings.*.rakeOverhang': reach,
  'wings.*.ridge.thickness': stick,
  'wings.*.ridge.depth': stick,
  'wings.*.valley.thickness': stick,
  'wings.*.valley.depth': stick,
  sheathing: small,
  blockAllowance: small,
  'joists.height': reach,
  'vents.depth': small,
  'vents.leave': reach,
  'vents.diameter': small,
} as const satisfies Record<string, Limit>;

export type RoofLength = keyof typeof roofLimits;

/** Rise over run, both in the same measure: 1 to 36 in 12 can be framed. */
export const slopeLimits: Limit = { min: 1 / 12, max: 36 / 12 };

/** What is put in where a length is left out. Inches. */
export const roofDefaults = {
  rakeOverhang: 0,
  sheathing: 1 / 2,
  blockAllowance: 1 / 16,
  'gableStuds.spacing': 16,
  'gableStuds.thickness': 1.5,
  'joists.height': 0,
  joistsEvery: 1,
  collarsEvery: 2,
} as const;
