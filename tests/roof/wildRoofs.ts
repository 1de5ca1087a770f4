import fc from 'fast-check';
import { readRoof } from '../../src/content/readRoof';
import { roofKinds } from '../../src/content/roofSchemaParts';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';
import { listsOf } from '../../src/core/roof/lists';

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

const often = (usual: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc.oneof({ weight: 1, arbitrary: fc.constant(undefined) }, { weight: 4, arbitrary: usual });

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
  framing: maybe(fc.constantFrom('longValley', 'suspendedRidge', 'overSheathing')),
  longFrom: maybe(fc.constantFrom('A', 'B')),
});
/** Past the gables: mostly far enough for the rake rafters that some of these have. */
const rakes = {
  rakeOverhang: often(between(2, 60)),
  rake: maybe(
    fc.record({
      rafter: maybe(section),
      lookouts: maybe(
        fc.oneof(
          fc.constant(false),
          fc.record({
            spacing: often(between(6, 60)),
            thickness: often(between(0.7, 3)),
            width: often(between(1, 6)),
            back: often(mostly(fc.integer({ min: 1, max: 3 }))),
          }),
        ),
      ),
    }),
  ),
};

const dormer = fc.record({
  kind: mostly(fc.constant('shed')),
  side: mostly(fc.constantFrom('street', 'yard')),
  at: between(60, 600),
  width: between(30, 250),
  front: fc.oneof(fc.constant(0), between(4, 60)),
  wall: between(30, 140),
  slope: maybe(fc.record({ rise: between(0.5, 8), run: mostly(fc.constant(12)) })),
  overhang: maybe(between(0, 24)),
  seat: maybe(between(0.5, 5)),
  header: maybe(section),
  studs: maybe(fc.record({ spacing: maybe(between(8, 30)), thickness: maybe(between(1, 4)) })),
});

const smallGable = fc.record({
  kind: fc.constant('gable'),
  side: mostly(fc.constantFrom('street', 'yard')),
  at: between(60, 600),
  width: between(20, 150),
  front: fc.oneof(fc.constant(0), between(4, 60)),
  slope: maybe(slope),
  rakeOverhang: maybe(between(0, 24)),
  ridge: maybe(section),
  valley: maybe(section),
  header: maybe(section),
});
/** Its walls, and what means nothing without them. */
const onWalls = fc.record({
  wall: between(20, 140),
  overhang: maybe(between(0, 24)),
  seat: maybe(between(0.5, 5)),
  studs: maybe(fc.record({ spacing: maybe(between(8, 30)), thickness: maybe(between(1, 4)) })),
});
const gableDormer = fc.oneof(
  smallGable,
  fc.tuple(smallGable, onWalls).map(([one, walls]) => ({ ...one, ...walls })),
);

const gablet = fc.record({
  back: between(4, 120),
  ends: maybe(fc.constantFrom(['A'], ['B'], ['A', 'B'], ['B', 'A'], ['A', 'A'])),
  header: maybe(section),
  doubled: maybe(fc.boolean()),
});
/** A small gable, and what means nothing without one. */
const small = {
  gablet: fc.option(gablet, { nil: undefined, freq: 3 }),
  rakeOverhang: fc.oneof(
    { weight: 7, arbitrary: fc.constant(undefined) },
    { weight: 1, arbitrary: between(0, 24) },
  ),
  gableStuds: fc.oneof(
    { weight: 7, arbitrary: fc.constant(undefined) },
    { weight: 1, arbitrary: fc.record({ spacing: maybe(between(8, 30)) }) },
  ),
};

const standing = fc.record({
  end: mostly(fc.constantFrom('A', 'B')),
  heightAbovePlate: between(3, 12),
  ridgeTop: maybe(between(20, 300)),
  ridgeThickness: maybe(between(0.7, 4)),
  lastRafter: between(0.5, 30),
  rafterDepth: maybe(between(3, 16)),
});

const runOf = fc.record({
  length: between(30, 130),
  span: maybe(between(60, 500)),
  slope: maybe(slope),
  plateHeight: maybe(between(-100, 100)),
  overhang: maybe(between(0, 24)),
  seat: maybe(between(0.5, 6)),
  ridge: maybe(section),
  stepOverhang: maybe(between(0, 24)),
  bearing: maybe(
    fc.record({
      on: maybe(fc.constantFrom('pocket', 'wall')),
      length: maybe(between(0.5, 8)),
      below: maybe(between(0, 120)),
      clearance: maybe(between(0, 2)),
    }),
  ),
});

const byKind: Readonly<Record<string, object>> = {
  gable: {
    ridge: section,
    ...rakes,
    datum: maybe(fc.constantFrom('endA', 'endB', 'centre')),
    yard: maybe(
      fc.record({ slope: maybe(slope), plateHeight: maybe(between(-60, 60)), seat: maybe(between(1, 5)) }),
    ),
    posts: maybe(fc.record({ at: fc.array(between(0, 400), { maxLength: 4 }), below: between(0, 120) })),
    gableStuds: maybe(fc.record({ spacing: maybe(between(8, 30)) })),
    standing: maybe(standing),
    wings: fc.oneof(fc.constant(undefined), fc.array(wing, { minLength: 1, maxLength: 2 })),
    dormers: maybe(fc.array(fc.oneof(dormer, gableDormer), { minLength: 1, maxLength: 2 })),
  },
  hip: {
    ridge: section,
    endSlope: maybe(slope),
    hip: maybe(section),
    hipTop: maybe(fc.constantFrom('betweenCommons', 'againstRidge')),
    hipFit: maybe(fc.constantFrom('backed', 'dropped')),
    ...small,
  },
  gambrel: {
    ridge: section,
    // Steep enough below and flat enough above that most of them bend the right way.
    slope: fc.record({ rise: between(12, 34), run: mostly(fc.constant(12)) }),
    upperSlope: mostly(fc.record({ rise: between(2, 14), run: mostly(fc.constant(12)) })),
    breakIn: between(6, 120),
    halfCircle: maybe(fc.constant(true)),
    breakOn: maybe(fc.constantFrom('purlin', 'gussets')),
    purlin: maybe(section),
    gussets: maybe(fc.record({ thickness: maybe(between(0.3, 1)), reach: maybe(between(4, 24)) })),
    breakTies: maybe(fc.constantFrom(false, { every: 2 })),
    joists: maybe(fc.record({ height: between(0, 120) })),
    rakeOverhang: maybe(between(0, 24)),
    gableStuds: maybe(fc.record({ spacing: maybe(between(8, 30)) })),
  },
  stepped: {
    length: between(300, 900),
    ridge: section,
    datum: maybe(fc.constantFrom('endA', 'endB', 'centre')),
    joists: maybe(fc.record({ height: between(0, 60) })),
    rakeOverhang: maybe(between(0, 24)),
    gableStuds: maybe(fc.record({ spacing: maybe(between(8, 30)) })),
    posts: maybe(fc.record({ at: fc.array(between(0, 400), { maxLength: 4 }), below: between(0, 120) })),
    sections: fc.array(runOf, { minLength: 2, maxLength: 4 }),
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
    ...rakes,
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

/** What a half circle says itself is mostly left out beside it. */
const halved = <T extends Readonly<Record<string, unknown>>>(file: T): object => {
  const { upperSlope, breakIn, ...rest } = file;
  return file['halfCircle'] === true && typeof upperSlope === 'object' && typeof breakIn === 'number'
    ? rest
    : file;
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
  standing: ['seat', 'yard', 'datum', 'rake', 'dormers'],
  highPlate: ['ledger', 'rake'],
  between: ['rakeOverhang', 'rake', 'gableStuds'],
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

/** Nearly every run of its own lengths: drawn freely they hardly ever add up. */
const addedUp = (file: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> => {
  const { sections, ...rest } = file;
  if (!Array.isArray(sections)) return file;
  const { length: _, ...last } = { ...(sections.at(-1) as object | undefined) } as { length?: unknown };
  return { ...rest, sections: [...(sections as unknown[]).slice(0, -1), last] };
};

/** Dormers within the roof's length, and no wings or posts: with everything drawn freely hardly any is figured. */
const placed = (file: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> => {
  const { dormers, length, wings: _, posts: __, ...rest } = file;
  if (!Array.isArray(dormers) || typeof length !== 'number') return file;
  const within = (one: unknown): unknown =>
    typeof one === 'object' && one !== null && 'at' in one && typeof one.at === 'number'
      ? { ...one, at: (one.at * length) / 660 }
      : one;
  return { ...rest, length, dormers: dormers.map(within) };
};

/** Nine in ten leave out what another key stands in for, or nearly all with such a key would be refused for that. */
export const wildRoof: fc.Arbitrary<unknown> = fc
  .tuple(anyKeys, fc.integer({ min: 0, max: 9 }))
  .map(([wild, dice]) => {
    const file = addedUp(halved(wild) as typeof wild);
    const out = Object.entries(insteadOf).flatMap(([key, keys]) => (file[key] === undefined ? [] : keys));
    if (dice === 0) return file;
    const kept = Object.fromEntries(Object.entries(file).filter(([key]) => !out.includes(key)));
    if (dice < 3) return kept;
    return kept['standing'] === undefined ? placed(kept) : { ...kept, standing: measured(kept) };
  });

/** Lengths and counts that may be below nothing: heights are from the plates, and layout runs both ways from a middle. */
const signed =
  /^(riseOffNominal|overPlates|overLower|overHigher|to|lastRafter|underside|height|heightAbovePlate|topHeight|meetHeight|at|stations|rise|run|backing|from|by)$/;

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
  const lists = listsOf(read.value, roof);
  return { figured: true, wrong: [...wrongIn(roof, 'roof', ''), ...wrongIn(lists, 'lists', '')] };
};
