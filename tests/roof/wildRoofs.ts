import fc from 'fast-check';
import { readRoof } from '../../src/content/readRoof';
import { roofKinds } from '../../src/content/roofSchema';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';

/** Roof files as no sane person writes them: numbers from tiny to absurd, texts, holes, keys of other kinds. */

const odd = fc.constantFrom<unknown>(
  NaN,
  Infinity,
  -1,
  0,
  1e308,
  -0,
  '',
  "24'",
  '5 1/2"',
  '305 mm',
  'x',
  null,
  true,
  [],
  {},
);
const number = fc.oneof(
  fc.double({ min: 0.3, max: 40, noNaN: true }),
  fc.double({ min: 12, max: 900, noNaN: true }),
  fc.integer({ min: 1, max: 400 }),
);
/** Mostly what could be, now and then what could not. */
const mostly = (usual: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc.oneof({ weight: 40, arbitrary: usual }, { weight: 1, arbitrary: odd }, { weight: 1, arbitrary: number });
const between = (min: number, max: number) => mostly(fc.double({ min, max, noNaN: true }));
const maybe = (usual: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc.oneof({ weight: 3, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: usual });

const section = fc.record({ thickness: between(0.7, 6), depth: between(3, 16) });
const slope = fc.record({ rise: between(1, 30), run: mostly(fc.constant(12)) });

const wing = fc.record({
  side: mostly(fc.constantFrom('street', 'yard')),
  at: between(40, 600),
  span: between(30, 300),
  length: between(12, 200),
  slope: maybe(slope),
  overhang: maybe(between(0, 24)),
  ridge: maybe(section),
  valley: maybe(section),
  framing: maybe(fc.constantFrom('longValley', 'suspendedRidge')),
  longFrom: maybe(fc.constantFrom('A', 'B')),
});

const standing = fc.record({
  end: mostly(fc.constantFrom('A', 'B')),
  heightAbovePlate: between(3, 12),
  ridgeTop: maybe(between(20, 300)),
  ridgeThickness: maybe(between(0.7, 4)),
  lastRafter: between(0.5, 30),
  rafterDepth: maybe(between(3, 16)),
});

const byKind: Readonly<Record<string, object>> = {
  gable: {
    ridge: section,
    rakeOverhang: maybe(between(0, 24)),
    datum: maybe(fc.constantFrom('endA', 'endB', 'centre')),
    yard: maybe(
      fc.record({ slope: maybe(slope), plateHeight: maybe(between(-60, 60)), seat: maybe(between(1, 5)) }),
    ),
    posts: maybe(fc.record({ at: fc.array(between(0, 400), { maxLength: 4 }), below: between(0, 120) })),
    gableStuds: maybe(fc.record({ spacing: maybe(between(8, 30)) })),
    standing: maybe(standing),
    wings: fc.oneof(fc.constant(undefined), fc.array(wing, { minLength: 1, maxLength: 2 })),
  },
  hip: {
    ridge: section,
    endSlope: maybe(slope),
    hip: maybe(section),
    hipTop: maybe(fc.constantFrom('betweenCommons', 'againstRidge')),
    hipFit: maybe(fc.constantFrom('backed', 'dropped')),
  },
  shed: {
    ledger: fc.oneof({ weight: 2, arbitrary: section }, { weight: 1, arbitrary: fc.constant(undefined) }),
    highPlate: maybe(
      fc.record({
        width: maybe(between(3, 12)),
        seat: maybe(between(0.5, 6)),
        overhang: maybe(between(0, 24)),
      }),
    ),
    between: maybe(fc.record({ clearance: maybe(between(0, 12)) })),
    rakeOverhang: maybe(between(0, 24)),
    gableStuds: maybe(fc.record({})),
  },
};

const shared = {
  format: fc.constant('tack-and-true/roof@1'),
  units: maybe(fc.constantFrom('in', 'mm')),
  slope,
  span: between(60, 500),
  length: between(60, 900),
  overhang: between(0, 24),
  spacing: between(8, 48),
  rafter: section,
  plate: fc.record({ width: between(3, 12) }),
  seat: between(0.5, 6),
  reference: maybe(fc.constantFrom('plate', 'sheathing')),
  blockStands: maybe(fc.constantFrom('plumb', 'square')),
};

const anyKeys: fc.Arbitrary<Readonly<Record<string, unknown>>> = fc.constantFrom(...roofKinds).chain((kind) =>
  fc.record({
    ...shared,
    kind: mostly(fc.constant(kind)),
    ...(byKind[kind] as Record<string, fc.Arbitrary<unknown>>),
  }),
);

/** Keys that stand in for others, which the reader asks to leave out beside them. */
const insteadOf: Readonly<Record<string, readonly string[]>> = {
  standing: ['seat', 'yard', 'datum'],
  highPlate: ['ledger'],
  between: ['rakeOverhang', 'gableStuds'],
};

/** A standing roof of about the new one's own slope and seat: heights drawn freely hardly ever fit. */
const measured = (file: Readonly<Record<string, unknown>>): unknown => {
  const { slope, rafter, plate, span, standing } = file as Readonly<Record<string, Record<string, number>>>;
  const m = Number(slope?.['rise']) / 12;
  const over = Number(rafter?.['depth']) * Math.sqrt(1 + m * m) - (Number(plate?.['width']) / 2) * m;
  const top = standing?.['ridgeTop'] === undefined ? {} : { ridgeTop: over + (Number(span) / 2) * m };
  const last = (standing?.['lastRafter'] ?? 0) / 2;
  return typeof standing === 'object'
    ? { ...standing, heightAbovePlate: over, lastRafter: last, ...top }
    : standing;
};

/** Nine in ten leave out what another key stands in for, or nearly all with such a key would be refused for that. */
export const wildRoof: fc.Arbitrary<unknown> = fc
  .tuple(anyKeys, fc.integer({ min: 0, max: 9 }))
  .map(([file, dice]) => {
    const out = Object.entries(insteadOf).flatMap(([key, keys]) => (file[key] === undefined ? [] : keys));
    if (dice === 0) return file;
    const kept = Object.fromEntries(Object.entries(file).filter(([key]) => !out.includes(key)));
    return dice < 3 || kept['standing'] === undefined ? kept : { ...kept, standing: measured(kept) };
  });

/** Lengths and counts that may be below nothing: heights are from the plates, and layout runs both ways from a middle. */
const signed =
  /^(riseOffNominal|lastRafter|underside|height|heightAbovePlate|topHeight|at|stations|rise|run|backing)$/;

/** What is wrong with a figured roof whatever its plan: the place of a number that is none, or is below nothing. */
const wrongIn = (value: unknown, path: string, key: string): readonly string[] => {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) return [`${path} is ${value}`];
    return value < 0 && !signed.test(key) ? [`${path} is ${value}`] : [];
  }
  if (Array.isArray(value)) return value.flatMap((one, i) => wrongIn(one, `${path}.${i}`, key));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => wrongIn(one, `${path}.${name}`, name));
};

export type Tried = { readonly figured: boolean; readonly wrong: readonly string[] };

/** Reads and figures a file, or has it refused: a complaint names a place and what is accepted. */
export const tryRoof = (file: unknown): Tried => {
  const read = readRoof(file);
  if (!read.ok) {
    const silent = read.complaints.filter(({ path, wrong, accepted }) => !path || !wrong || !accepted);
    return {
      figured: false,
      wrong: read.complaints.length === 0 || silent.length > 0 ? ['refused without a word'] : [],
    };
  }
  const roof: FiguredRoof = figure(read.value);
  return { figured: true, wrong: wrongIn(roof, 'roof', '') };
};
