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
  'rake.rafter.thickness': stick,
  'rake.rafter.depth': stick,
  'rake.lookouts.spacing': { min: 6, max: 96 },
  'rake.lookouts.thickness': stick,
  'rake.lookouts.width': stick,
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
  'gablet.back': { min: 1, max: 6000 },
  'gablet.header.thickness': stick,
  'gablet.header.depth': stick,
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
  'dormers.*.at': { min: 0, max: 2_000_000 },
  'dormers.*.width': { min: 12, max: 12_000 },
  'dormers.*.front': { min: 0, max: 12_000 },
  'dormers.*.wall': { min: 0, max: 12_000 },
  'dormers.*.overhang': reach,
  'dormers.*.seat': stick,
  'dormers.*.header.thickness': stick,
  'dormers.*.header.depth': stick,
  'dormers.*.studs.spacing': { min: 6, max: 96 },
  'dormers.*.studs.thickness': stick,
  'wings.*.over.sheathing': small,
  'wings.*.over.sleeper.thickness': small,
  'wings.*.over.sleeper.depth': stick,
  breakIn: { min: 1, max: 6_000 },
  'purlin.thickness': stick,
  'purlin.depth': stick,
  'purlin.seat': stick,
  'gussets.thickness': { min: 0.25, max: 3 },
  'gussets.reach': { min: 1, max: 240 },
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
  'rake.lookouts.spacing': 24,
  'rake.lookouts.thickness': 1.5,
  'rake.lookouts.width': 3.5,
  lookoutsBack: 1,
  sheathing: 1 / 2,
  blockAllowance: 1 / 16,
  'wings.*.over.sheathing': 1 / 2,
  'wings.*.over.sleeper.thickness': 1.5,
  'wings.*.over.sleeper.depth': 9.25,
  'gableStuds.spacing': 16,
  'gableStuds.thickness': 1.5,
  'joists.height': 0,
  joistsEvery: 1,
  'gussets.thickness': 1 / 2,
  'gussets.reach': 12,
  collarsEvery: 2,
  breakTiesEvery: 1,
} as const;
