import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { commonOf, dormerIn, shed, steep, toRidge, withDormer } from './dormers';
import { codesOf, roofOf, type Changes } from './roofs';
import { english } from '../content/english';

/** Shed dormers: the plane, what carries it, and the rafters it interrupts. */

describe('a shed dormer by hand', () => {
  // Undersides pass through the inner ends of seats, tops lie a plumb cut over them. In from the main wall's face, up from
  // its plate: main tops u − 3.5 + 7.25·√2 = u + 6.75305; dormer tops 84 + (u − 27.5)/3 + 7.25·√10/3 = u/3 + 82.47550.
  // They meet at u = 75.72246·3/2 = 113.58368, 120.33673 high: 89.58368 in from the dormer's front, 30.41632 from the ridge.
  const roof = withDormer();
  const dormer = dormerIn(roof);

  it('comes to the main roof where both tops are equally high', () => {
    expect(dormer.meets).toBe('header');
    expect(dormer.run).toBeCloseTo(89.58368, 4);
    expect(dormer.meetHeight).toBeCloseTo(120.33673, 4);
    // 84 − 24 − 6.75305
    expect(dormer.frontHeight).toBeCloseTo(53.24695, 4);
  });

  it('has commons from its plate to the upper header', () => {
    // A header of two members 1 1/2 in thick stands with its middle under the meeting: (89.58368 − 1.5)·√10/3.
    expect(commonOf(roof, 'common.dormer.street')).toMatchObject({ count: 6, shortening: 1.5, seat: 3.5 });
    expect(commonOf(roof, 'common.dormer.street')?.bodyLength).toBeCloseTo(92.84836, 4);
    // 8·√10/3
    expect(commonOf(roof, 'common.dormer.street')?.tailLength).toBeCloseTo(8.43274, 4);
  });

  it('has headers between doubled trimmers', () => {
    // Side walls from 108 to 252; marks 108 and 252 would stand in the trimmers' place.
    expect(dormer.trimmers).toMatchObject({ count: 4, at: [108.75, 110.25, 249.75, 251.25] });
    expect(roof.layout.stations).toEqual([
      0.75, 24, 48, 72, 96, 108.75, 110.25, 120, 144, 168, 192, 216, 240, 249.75, 251.25, 264, 288, 312, 336,
      359.25,
    ]);
    const [lower, upper] = dormer.headers;
    expect(lower).toMatchObject({ count: 2, length: 138, from: 24, thickness: 3, bearsFully: true });
    // 24 + 6.75305, and the whole plumb cut 7.25·√2.
    expect(lower?.topHeight).toBeCloseTo(30.75305, 4);
    expect(lower?.leastDepth).toBeCloseTo(10.25305, 4);
    // 120.33673 − 1.5/3; the upper rafters' cuts go down to 120.33673 + 1.5 − 10.25305 = 111.58368.
    expect(upper?.from).toBeCloseTo(112.08368, 4);
    expect(upper?.topHeight).toBeCloseTo(119.83673, 4);
    expect(upper?.leastDepth).toBeCloseTo(8.25305, 4);
  });

  it('cuts six main rafters in two', () => {
    // 24·√2 to the header's outer face; (30.41632 − 0.75 − 1.5)·√2 from the upper header to the ridge.
    expect(dormer.lowerRafters).toMatchObject([{ count: 6, run: 24, shortening: 0 }]);
    expect(dormer.lowerRafters[0]?.bodyLength).toBeCloseTo(33.94113, 4);
    expect(dormer.upperRafters).toMatchObject([{ count: 6, shorteningTop: 0.75, shorteningBottom: 1.5 }]);
    expect(dormer.upperRafters[0]?.bodyLength).toBeCloseTo(39.83319, 4);
    // 20 marks a side, less six cut and two in the trimmers' place, four trimmers more: 12 + 16 opposite.
    expect(commonOf(roof, 'common.both')?.count).toBe(30);
  });

  it('tapers its end rafters to the trimmers', () => {
    // Undersides 7.25·√10/3 = 7.64217 lower come to the main tops 7.64217·3/2 = 11.46326 before the tops do.
    const [end] = dormer.endRafters;
    expect(end?.count).toBe(2);
    expect(end?.taperFrom).toBeCloseTo(78.12043, 4);
    // 11.46326·√2
    expect(end?.taperLength).toBeCloseTo(16.21149, 4);
    // 45° less 18.435°: (1 − 1/3)/(1 + 1/3)
    expect((end?.taper.rise ?? 0) / (end?.taper.run ?? 1)).toBeCloseTo(0.5, 12);
  });

  it('has side studs that lose two thirds of their spacing each', () => {
    // Front edges at 15.25, 31.25 …: (78.12043 − 15.25)·2/3 = 41.91362.
    const [studs] = dormer.sideStuds;
    expect(studs).toMatchObject({ count: 8, spacing: 16 });
    expect(studs?.difference).toBeCloseTo(10.66667, 4);
    expect(studs?.lengths).toHaveLength(4);
    expect(studs?.lengths[0]).toBeCloseTo(41.91362, 4);
    // The top bevel climbs 1.5/3 over the stud.
    expect(studs?.stockLengths[0]).toBeCloseTo(42.41362, 4);
  });
});

const complaintsOf = (dormer: Changes, changes: Changes = {}): readonly (readonly [string, string])[] => {
  const read = readRoof({
    ...{ format: 'tack-and-true/roof@1', kind: 'gable', span: 288, overhang: 14, spacing: 24 },
    rafter: { thickness: 1.5, depth: 7.25 },
    ...steep,
    ...changes,
    dormers: [{ ...shed, ...dormer }],
  });
  return read.ok ? [] : read.complaints.map(({ path, accepted }) => [path, english(accepted)] as const);
};

describe('dormers that cannot be framed', () => {
  it.each([
    ['past the end of the roof', { at: 60 }, 'dormers.0.at', '75 in to 285 in'],
    ['wider than the roof', { width: 400 }, 'dormers.0.at', 'a dormer of at most 354 in'],
    ['between two rafters', { width: 13, at: 180 }, 'dormers.0.width', 'at least 34.5 in'],
    [
      'with a front over the main birdsmouth',
      { front: 2 },
      'dormers.0.front',
      '0 for a wall over the main one',
    ],
    [
      'as steep as the main roof',
      { slope: { rise: 12, run: 12 } },
      'dormers.0.slope.rise',
      'less than 12 in 12',
    ],
    // 24 + 3.5 + 6.75305 + 1.5
    ['under the main roof', { wall: 20 }, 'dormers.0.wall', '35.753 in to less than'],
    ['over the ridge', { wall: 120 }, 'dormers.0.wall', 'no slope, for one to the ridge'],
    [
      'too high for any slope to the ridge',
      { wall: 150, slope: undefined },
      'dormers.0.wall',
      '35.753 in to',
    ],
    ['with a seat over its plate', { seat: 5 }, 'dormers.0.seat', 'at most 3.5 in'],
  ])('%s', (_name, dormer, path, accepted) => {
    const found = complaintsOf(dormer);
    expect(found.map(([at]) => at)).toEqual([path]);
    expect(found[0]?.[1]).toContain(accepted);
  });

  it('at the ends of the range that is told, and no farther', () => {
    expect(complaintsOf({ at: 75 })).toEqual([]);
    expect(complaintsOf({ at: 285 })).toEqual([]);
    expect(complaintsOf({ at: 74.9 })).toHaveLength(1);
    expect(complaintsOf({ wall: 35.754 })).toEqual([]);
    expect(complaintsOf({ wall: 35.752 })).toHaveLength(1);
  });

  it('of another kind', () => {
    expect(complaintsOf({ kind: 'hip' })).toMatchObject([['dormers.0.kind', '"shed", "gable"']]);
  });

  it('where another dormer or a wing stands', () => {
    const two = (at: number, side: string) =>
      complaintsOf({}, { length: 720 }).concat(
        (() => {
          const read = readRoof({
            ...{ format: 'tack-and-true/roof@1', kind: 'gable', span: 288, overhang: 14, spacing: 24 },
            ...{ rafter: { thickness: 1.5, depth: 7.25 }, ...steep, length: 720 },
            dormers: [shed, { ...shed, at, side }],
          });
          return read.ok
            ? []
            : read.complaints.map(({ path, accepted }) => [path, english(accepted)] as const);
        })(),
      );
    expect(two(300, 'street')).toMatchObject([['dormers.1.at', expect.stringContaining('3 in')]]);
    expect(two(300, 'yard')).toEqual([]);
    expect(two(327, 'street')).toEqual([]);
    const wings = [{ side: 'street', at: 200, span: 96, length: 60, framing: 'suspendedRidge' }];
    expect(complaintsOf({}, { wings })).toMatchObject([['dormers.0.at', expect.any(String)]]);
    expect(complaintsOf({}, { wings: [{ ...wings[0], side: 'yard' }] })).toEqual([]);
  });

  it('on a roof that is no gable', () => {
    expect(complaintsOf({}, { kind: 'hip' })).toMatchObject([['dormers', 'only with kind "gable"']]);
  });
});

describe('cautions for dormers', () => {
  const codes = (dormer: Changes, changes: Changes = {}) =>
    codesOf({ ...steep, ...changes, dormers: [{ ...shed, ...dormer }] });

  /** Under a flatter roof a plate of 3 1/2 can lie lower over the rafters: tops at the front are 6.396 + 10 high. */
  const flat = { slope: { rise: 5, run: 12 } };

  it.each<[string, Changes, Changes, Changes]>([
    ['dormerSlopeLow', { slope: { rise: 2.9, run: 12 } }, { slope: { rise: 3, run: 12 } }, {}],
    // 7.25·√2 = 10.253
    [
      'headerShallow',
      { header: { thickness: 1.5, depth: 10.25 } },
      { header: { thickness: 1.5, depth: 10.26 } },
      {},
    ],
    ['headerLong', { width: 78.1 }, { width: 78 }, {}],
    ['dormerNearEnd', { at: 98 }, { at: 99 }, {}],
    [
      'dormerWallLow',
      { wall: 20.8, slope: { rise: 2, run: 12 } },
      { wall: 21, slope: { rise: 2, run: 12 } },
      flat,
    ],
  ])('%s', (code, unwise, wise, changes) => {
    expect(codes(unwise, changes)).toContain(code);
    expect(codes(wise, changes)).not.toContain(code);
  });

  it('say that pairs are cut, unless the ridge carries', () => {
    expect(codes({})).toContain('pairsCut');
    expect(codes({}, { posts: { at: [0, 180, 360], below: 0 } })).not.toContain('pairsCut');
  });

  it('point to the key of the dormer', () => {
    const roof = withDormer({ overhang: 30 });
    expect(roof.cautions.find(({ code }) => code === 'tailLong')?.at).toBe('dormers.0.overhang');
  });
});

it('tells dormers apart', () => {
  const roof = roofOf({
    ...steep,
    length: 720,
    dormers: [shed, { ...toRidge, at: 500 }, { ...shed, side: 'yard' }],
  });
  expect(roof.dormers?.map(({ id, meets }) => [id, meets])).toEqual([
    ['dormer1', 'header'],
    ['dormer2', 'ridge'],
    ['dormer3', 'header'],
  ]);
  expect(roof.commonRafters.map(({ id }) => id).sort()).toEqual([
    'common.both',
    'common.dormer1.street',
    'common.dormer2.street',
    'common.dormer3.yard',
  ]);
});
