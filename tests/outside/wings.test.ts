import { describe, expect, it } from 'vitest';
import { degreesOf } from '../../src/present/degrees';
import { jacksOfKind, valleysOf, wingRidge, wingRoof } from '../roof/wings';

/**
 * Published rules and figures of wings, valleys and their jacks. NAV is NAVEDTRA 14044, Builder 3 & 2, vol. 2, ch. 2. The
 * rules give no numbers of their own: they are held on a 24 ft roof with a wing of 16 ft, whose plates are 10 ft long.
 */

const at = (rise: number, more: object = {}) => ({ slope: { rise, run: 12 }, seat: 1.5, ...more });

/** Line 2 of the framing square: length of a hip or valley for each foot of common run (reckoned, two places). */
const line2 = [
  [4, 17.44],
  [6, 18.0],
  [8, 18.76],
  [9, 19.21],
  [12, 20.78],
] as const;

/** NAV p. 2-22: half the 45° thickness of a 1 1/2 in piece. */
const half45 = 1.0607;

describe('W14: the long valley, NAV p. 2-28', () => {
  it.each(line2)('at %i in 12 is line 2 times half the span of the main roof in feet', (rise, perFoot) => {
    const [long, short] = valleysOf(wingRoof({}, at(rise)));
    expect(long!.lineLength / 12).toBeCloseTo(perFoot, 1);
    // The table's two places times 12 ft.
    expect(Math.abs(long!.lineLength - 12 * perFoot)).toBeLessThan(12 * 0.005 + 1e-9);
    // And the short one takes half the span of the wing.
    expect(Math.abs(short!.lineLength - 8 * perFoot)).toBeLessThan(8 * 0.005 + 1e-9);
  });

  // Equal pitches stand at 45° in plan, 16.97 in to a foot (Carpentry, trade-school textbook of 1916, § 20).
  it('runs 16.97 in for each foot of the common run', () => {
    expect(valleysOf(wingRoof())[0]!.run / 12).toBeCloseTo(16.97, 2);
  });
});

describe('W18: what valley jacks are shortened by, NAV p. 2-33', () => {
  it('is half the 45° thickness of the valley, at the bottom', () => {
    const [jacks] = jacksOfKind(wingRoof(), 'valleyJack');
    expect(jacks!.shorteningBottom).toBeCloseTo(half45, 4);
  });

  // The row as we have it says half the 45° thickness of the ridge at the top. A valley jack comes square to its ridge, so
  // half the ridge's own thickness is what a common loses there (W3), and what leaves no gap: held by the solids too.
  it('is half of the ridge at the top, as for commons', () => {
    const [jacks] = jacksOfKind(wingRoof(), 'valleyJack');
    expect(jacks!.shorteningTop).toBe(0.75);
  });

  it('of cripples between two valleys is half the 45° thickness at both ends', () => {
    const [cripples] = jacksOfKind(wingRoof(), 'valleyCripple');
    expect(cripples!.shorteningTop).toBeCloseTo(half45, 4);
    expect(cripples!.shorteningBottom).toBeCloseTo(half45, 4);
  });
});

// IRC R802.3 (2006 text, read second hand): as deep as the cut end of the rafter, 8.106 in for 7 1/4 at 6 in 12 (row 1.2).
it.each([
  [7.25, true],
  [8.1, true],
  [8.11, false],
])('1.6: a valley %f in deep is warned of: %s', (depth, warned) => {
  const codes = wingRoof({ valley: { thickness: 1.5, depth } }).cautions.map(({ code }) => code);
  expect(codes.includes('valleyShallow')).toBe(warned);
});

describe('ridges of additions, NAV pp. 2-33 and 2-34, fig. 2-55', () => {
  const [plates, half, mainHalf] = [120, 96, 144];

  it('W30: as wide as the main roof, plates plus half the span less half the main ridge', () => {
    const ridge = wingRidge(wingRoof({ span: 288, at: 240 }));
    expect(ridge.length).toBeCloseTo(plates + mainHalf - 0.75, 9);
    expect(ridge.lineLength).toBeCloseTo(plates + mainHalf, 9);
  });

  it('W31: suspended, plates plus half the span of the main roof', () => {
    expect(wingRidge(wingRoof({ framing: 'suspendedRidge' })).length).toBeCloseTo(plates + mainHalf, 9);
  });

  it('W32: with a long and a short valley, plates plus half its own span less half the 45° thickness of the long one', () => {
    expect(wingRidge(wingRoof()).length).toBeCloseTo(plates + half - half45, 4);
  });
});

// NAV p. 2-38, fig. 2-61: a straightedge along a valley jack's top has to meet the middle of the valley.
it('has valley jacks whose tops lead to the middle of the valley', () => {
  const roof = wingRoof();
  const [long] = valleysOf(roof);
  const jacks = jacksOfKind(roof, 'valleyJack').find(({ side }) => side === 'yard')!;
  const common = roof.commonRafters[0]!;
  // What the longest lacks of a common is what the valley has climbed by there, at its own slope.
  const missing = common.run - jacks.run;
  const along = missing * Math.SQRT2;
  expect(long!.heightAbovePlate + along * (long!.slope.rise / long!.slope.run)).toBeCloseTo(
    common.heightAbovePlate + missing * 0.5,
    9,
  );
});

describe('a valley framed over sheathing (reckoned: plates of one height, section 10 of the list)', () => {
  // Main roof and wing at 6 in 12, half span of the wing 8 ft, sleepers and sheathing without thickness.
  const flat = {
    framing: 'overSheathing',
    over: { sheathing: 0, sleeper: { thickness: 0, depth: 9.25 } },
  } as const;

  it('has its ridge 8 ft over the main roof, sleepers of 12 ft and 11.314 ft in plan, at 45°', () => {
    const roof = wingRoof(flat);
    const [sleeper] = roof.sleepers!;
    expect(sleeper!.intrusion / 12).toBeCloseTo(8, 9);
    expect(sleeper!.run / 12).toBeCloseTo(11.314, 3);
    expect(sleeper!.lineLength / 12).toBeCloseTo(12, 9);
    expect(degreesOf(sleeper!.planAngle)).toBeCloseTo(45, 9);
    expect(wingRidge(roof).lineLength).toBeCloseTo(120 + 96, 9);
  });

  it.each([
    [6, 6],
    [4, 8],
    [8, 5],
    [12, 9],
  ] as const)('main %i, wing %i: the formulas printed with it', (um, un) => {
    const [B, g] = [96, Math.sqrt(1 + (um / 12) ** 2)];
    const over = (B * un) / um;
    const half = over <= 144;
    const roof = wingRoof(
      { ...flat, slope: { rise: un, run: 12 }, ...(half ? {} : { span: 96 }) },
      { ...at(um), seat: 2.5, spacing: 16 },
    );
    const b = half ? B : 48;
    const [I, found] = [(b * un) / um, roof.sleepers![0]!];
    expect(found.intrusion).toBeCloseTo(I, 9);
    expect(found.run).toBeCloseTo(Math.sqrt(b * b + I * I), 9);
    expect(found.lineLength).toBeCloseTo(Math.sqrt(b * b + (I * g) ** 2), 9);
    expect(degreesOf(found.planAngle)).toBeCloseTo((Math.atan2(I, b) * 180) / Math.PI, 9);
    const [jacks] = jacksOfKind(roof, 'blindJack');
    expect(jacks!.difference).toBeCloseTo(16 * (b / I) * Math.sqrt(1 + (un / 12) ** 2), 9);
    expect(degreesOf(jacks!.foot!.sawTilt)).toBeCloseTo((Math.atan(um / 12) * 180) / Math.PI, 9);
    expect(degreesOf(jacks!.foot!.level)).toBeCloseTo((Math.atan(un / 12) * 180) / Math.PI, 9);
  });
});
