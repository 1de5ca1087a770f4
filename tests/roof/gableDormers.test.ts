import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { listsOf } from '../../src/core/roof/lists';
import { commonOf, dormerIn, shed, steep } from './dormers';
import { bare, gableDormer, ridgeIn, walled } from './gableDormers';
import { planOf, sample, type Changes } from './roofs';
import { jacksOfKind, valleysOf } from './wings';
import { english } from '../content/english';

/** Gable dormers: planes, what carries them, and the rafters they interrupt. */

describe('a gable dormer with side walls, by hand', () => {
  // In from the main wall's face, up from its plate: main tops u − 3.5 + 7.25·√2 = u + 6.75305. The dormer's stand over their
  // plates by 7.25·√13/3 − 3·2/3 = 6.71342, 78.71342 up. That high the main ones are 71.96037 in, and where the dormer's
  // have climbed 36·2/3 = 24 more, 95.96037 in.
  const roof = gableDormer(walled);
  const dormer = dormerIn(roof);

  it('comes to the main roof where both tops are equally high', () => {
    expect(dormer).toMatchObject({ kind: 'gable', meets: 'header' });
    expect(dormer.run).toBeCloseTo(79.96037, 4);
    expect(dormer.meetHeight).toBeCloseTo(102.71342, 4);
    expect(dormer.frontHeight).toBeCloseTo(49.24695, 4);
  });

  it('has a ridge from its front to the face of the header', () => {
    const ridge = ridgeIn(roof);
    expect(ridge.lineLength).toBeCloseTo(79.96037, 4);
    expect(ridge.length).toBeCloseTo(79.21037, 4);
    // Half of it down the slope: 102.71342 − 0.75·2/3.
    expect(ridge.topHeight).toBeCloseTo(102.21342, 4);
  });

  it('has plates that end on the main rafters', () => {
    const [plates] = dormer.sidePlates ?? [];
    expect(plates?.count).toBe(2);
    expect(plates?.lineLength).toBeCloseTo(55.96037, 4);
    // Main tops are 72 high 65.24695 in.
    expect(plates?.length).toBeCloseTo(49.24695, 4);
  });

  it('has valleys from trimmer to header', () => {
    // In plan 36 aside and 24 up the roof, √1872 = 43.26662; with 24 of rise √2448 = 49.47727.
    const valleys = valleysOf(roof);
    expect(valleys.map(({ side }) => side).sort()).toEqual(['A', 'B']);
    for (const valley of valleys) {
      expect(valley.run).toBeCloseTo(43.26662, 4);
      expect(valley.lineLength).toBeCloseTo(49.47727, 4);
      // Both trimmers, 3 in aside: 3·43.26662/36. Half the header, 0.75 up the roof: 0.75·43.26662/24.
      expect(valley.shorteningBottom).toBeCloseTo(3.60555, 4);
      expect(valley.shorteningTop).toBeCloseTo(1.35208, 4);
      // 38.30899·√2448/√1872
      expect(valley.bodyLength).toBeCloseTo(43.80801, 4);
      expect(valley).toMatchObject({ seat: 0, tailLength: 0 });
      expect(valley.cheeks.map(({ end }) => end)).toEqual(['bottom', 'top', 'top']);
    }
  });

  it('has commons with tails only where those stand clear of the main rafters', () => {
    // 16.75, 40, 64 and 88 in. At 64 a tail 6 in out would be 78.71342 − 4 − 8.71342 = 66 high below, the main tops 70.75305.
    expect(roof.commonRafters.map(({ count, tailLength }) => [count, tailLength > 0])).toEqual([
      [32, true],
      [4, true],
      [2, false],
    ]);
    // 35.25·√13/3
    expect(roof.commonRafters[1]?.bodyLength).toBeCloseTo(42.36523, 4);
  });

  it('has jacks on both sides of its valleys', () => {
    // 88 in: 16.03963 up the roof is 24.05945 aside. (36 − 24.05945 − 0.75 − 0.75·43.26662/24)·√13/3.
    const own = jacksOfKind(roof, 'valleyJack');
    expect(own.map(({ count, side }) => [count, side])).toEqual([
      [1, 'A'],
      [1, 'B'],
    ]);
    expect(own[0]?.bodyLength).toBeCloseTo(11.82437, 4);
    // Marks 168 and 192 come to a valley 16 up the roof, 8 below the header: (8 − 0.75 − 0.75·43.26662/36)·√2.
    const main = jacksOfKind(roof, 'valleyToHeader');
    expect(main.map(({ count, valleySide }) => [count, valleySide]).sort()).toEqual([
      [1, 'left'],
      [1, 'right'],
    ]);
    expect(main[0]?.bodyLength).toBeCloseTo(8.97827, 4);
  });

  it('has headers between doubled trimmers under its side walls', () => {
    expect(dormer.trimmers).toMatchObject({ count: 4, at: [144.75, 146.25, 213.75, 215.25] });
    const [lower, upper] = dormer.headers;
    expect(lower).toMatchObject({ count: 2, length: 66, from: 16, bearsFully: true });
    expect(lower?.topHeight).toBeCloseTo(22.75305, 4);
    expect(lower?.bevel).toBeUndefined();
    expect(upper?.from).toBeCloseTo(95.21037, 4);
    expect(upper?.topHeight).toBeCloseTo(101.96342, 4);
    // The valleys reach lowest: 11.25·√2448/√1872 under the header's top, where the middle of theirs is.
    expect(upper?.leastDepth).toBeCloseTo(12.86487, 4);
    expect(upper?.bearsFully).toBe(true);
  });

  it('cuts two main rafters in two', () => {
    expect(dormer.lowerRafters).toMatchObject([{ count: 2, run: 16 }]);
    // (144 − 95.96037 − 0.75 − 2.25)·√2
    expect(dormer.upperRafters).toMatchObject([{ count: 2, shorteningTop: 0.75, shorteningBottom: 2.25 }]);
    expect(dormer.upperRafters[0]?.bodyLength).toBeCloseTo(63.69565, 4);
  });

  it('has side studs square on top and beveled below', () => {
    // Front edges 31.25 and 47.25 in: 72 − 1.5 − 6.75305 − 31.25.
    const [studs] = dormer.sideStuds;
    expect(studs).toMatchObject({ count: 4, spacing: 16, difference: 16, topBevel: { rise: 0 } });
    expect(studs?.lengths[0]).toBeCloseTo(32.49695, 4);
    expect(studs?.lengths[1]).toBeCloseTo(16.49695, 4);
  });

  it('has joists across its plates, one for each pair', () => {
    expect(roof.ties.find(({ id }) => id === 'joist.dormer')).toMatchObject({
      count: 3,
      height: 72,
      length: 72,
    });
    expect(roof.ties.some(({ id }) => id === 'collar.dormer')).toBe(false);
  });
});

describe('a gable dormer without side walls, by hand', () => {
  // As steep as the main roof: its gable 30 in, valleys from there 36 up the roof and 36 aside.
  const roof = gableDormer(bare);
  const dormer = dormerIn(roof);

  it('has a ridge of half its width, less half of the header', () => {
    expect(dormer.run).toBeCloseTo(36, 9);
    expect(ridgeIn(roof).length).toBeCloseTo(35.25, 9);
    // 66 + 6.75305
    expect(dormer.meetHeight).toBeCloseTo(72.75305, 4);
    expect(dormer.frontHeight).toBe(0);
    expect(dormer.sideStuds).toEqual([]);
    expect(dormer.sidePlates).toBeUndefined();
  });

  it('has inner trimmers under the corners of its gable', () => {
    expect(dormer.trimmers.at).toEqual([142.5, 144, 216, 217.5]);
    expect(dormer.headers.map(({ length }) => length)).toEqual([70.5, 70.5]);
  });

  it('has valleys between the headers', () => {
    // 36·√2, 36·√3. Below, the lower header is 3 in up the roof: 3·√2, more than half the trimmer aside.
    for (const valley of valleysOf(roof)) {
      expect(valley.run).toBeCloseTo(50.91169, 4);
      expect(valley.lineLength).toBeCloseTo(62.35383, 4);
      expect(valley.shorteningBottom).toBeCloseTo(4.24264, 4);
      expect(valley.shorteningTop).toBeCloseTo(1.06066, 4);
    }
  });

  it('has a pair at its gable that lies on the main rafters and on the beveled header', () => {
    // In its middle, 0.75 up the roof, 0.75 aside of the corner: (35.25 − 0.75)·√2.
    const [face] = dormer.faceRafters ?? [];
    expect(face).toMatchObject({ count: 2, foot: { level: { rise: 1 }, sawTilt: { rise: 1 } } });
    expect(face?.run).toBeCloseTo(35.25, 9);
    expect(face?.bodyLength).toBeCloseTo(48.79037, 4);
    const [lower] = dormer.headers;
    expect(lower?.bevel).toEqual({ rise: 1, run: 1 });
    // Upper face 33 in, 3 higher than where the lower rafters come to it: 10.25305 + 3.
    expect(lower?.topHeight).toBeCloseTo(39.75305, 4);
    expect(lower?.leastDepth).toBeCloseTo(13.25305, 4);
    expect(commonOf(roof, 'common.dormer')).toBeUndefined();
  });

  it('has jacks like each other on both sides of its valleys', () => {
    // The next pair is 24 up the roof, marks 168 and 192 are 24 aside of the trimmers: (12 − 0.75 − 1.06066)·√2.
    for (const kind of ['valleyJack', 'valleyToHeader'] as const)
      for (const jacks of jacksOfKind(roof, kind)) expect(jacks.bodyLength).toBeCloseTo(14.4099, 4);
  });

  it('is in the lists with all that is cut for it', () => {
    const { cutList } = listsOf(planOf({ ...steep, dormers: [bare] }), roof);
    const has = (member: string) =>
      cutList.sticks.filter((one) => one.member === member).reduce((sum, { count }) => sum + count, 0);
    expect(has('face.dormer')).toBe(2);
    expect(has('header.dormer.lower') + has('header.dormer.upper')).toBe(4);
    expect(has('ridge.dormer')).toBe(1);
    expect(has('valley.1') + has('valley.2')).toBe(2);
    expect(has('upper.dormer') + has('lower.dormer')).toBe(4);
  });
});

const complaintsOf = (dormer: object, changes: Changes = {}): readonly (readonly [string, string])[] => {
  const read = readRoof({ ...sample, ...steep, ...changes, dormers: [dormer] });
  return read.ok ? [] : read.complaints.map(({ path, accepted }) => [path, english(accepted)] as const);
};

describe('gable dormers that cannot be framed', () => {
  it.each([
    ['past the end of the roof', { ...bare, at: 40 }, 'dormers.0.at', '41.25 in to 318.75 in'],
    ['with a gable over the main birdsmouth', { ...bare, front: 2 }, 'dormers.0.front', 'more than 3.5 in'],
    ['with a gable over the main wall', { ...bare, front: 0 }, 'dormers.0.front', 'more than 3.5 in'],
    // 144 − 0.75 − 2.25 − 1.5 = 139.5 in for its ridge, 109.5 behind its front.
    ['as wide as the roof is high', { ...bare, width: 230 }, 'dormers.0.width', 'at most 219 in'],
    // 6 of the lower header, 1.5 of half the upper one, and 1.5·√2/2 for the cheeks, twice.
    [
      'with no room for a valley',
      { ...bare, width: 16, header: { thickness: 3, depth: 14 } },
      'dormers.0.width',
      'more than 17.121 in',
    ],
    // 66 − 33 − 0.75
    [
      'with a ridge that comes into the header',
      { ...bare, ridge: { thickness: 1.5, depth: 33 } },
      'dormers.0.ridge.depth',
      'at most 32.25 in',
    ],
    [
      'thinner below than its rafters',
      { ...bare, header: { thickness: 0.5, depth: 14 } },
      'dormers.0.header.thickness',
      'at least 0.75 in',
    ],
    // 16 + 3.5 + 6.75305 + 1.5
    ['under the main roof', { ...walled, wall: 20 }, 'dormers.0.wall', '27.753 in to '],
    // 139.5 + 6.75305 − 6.71342 − 24
    ['over the ridge', { ...walled, wall: 120 }, 'dormers.0.wall', ' to 115.54 in'],
    ['with a seat over its plate', { ...walled, seat: 5 }, 'dormers.0.seat', 'at most 3.5 in'],
    [
      'over the wall between two rafters',
      { ...walled, front: 0, width: 15 },
      'dormers.0.width',
      'at least 34.5 in',
    ],
    ['with an overhang and no walls', { ...bare, overhang: 6 }, 'dormers.0.overhang', 'only with wall'],
    ['with studs and no walls', { ...bare, studs: {} }, 'dormers.0.studs', 'only with wall'],
  ])('%s', (_name, dormer, path, accepted) => {
    const found = complaintsOf(dormer);
    expect(found.map(([at]) => at)).toEqual([path]);
    expect(found[0]?.[1]).toContain(accepted);
  });

  it('at the ends of the range that is told, and no farther', () => {
    expect(complaintsOf({ ...bare, at: 41.25 })).toEqual([]);
    expect(complaintsOf({ ...bare, at: 41.2 })).toHaveLength(1);
    expect(complaintsOf({ ...walled, wall: 27.754 })).toEqual([]);
    expect(complaintsOf({ ...walled, wall: 115.539 })).toEqual([]);
    expect(complaintsOf({ ...walled, wall: 115.541 })).toHaveLength(1);
    expect(complaintsOf({ ...bare, width: 219 })).toEqual([]);
    expect(complaintsOf({ ...bare, width: 219.01 })).toHaveLength(1);
  });

  it('or keys of a gable on a shed, and a shed without its wall', () => {
    const { wall: _, ...low } = shed;
    expect(complaintsOf({ ...shed, valley: { thickness: 1.5, depth: 9.25 } })).toMatchObject([
      ['dormers.0.valley', expect.stringContaining('"gable"')],
    ]);
    expect(complaintsOf(low)).toMatchObject([['dormers.0.wall', expect.stringContaining('a length')]]);
  });
});

describe('gable dormers that are unwise', () => {
  const cautionsOf = (dormer: object, changes: Changes = {}): readonly string[] =>
    gableDormer(dormer, changes)
      .cautions.filter(({ at }) => at.startsWith('dormers.0.'))
      .map(({ code, at }) => `${code} ${at.slice('dormers.0.'.length)}`);

  it('says each with its place', () => {
    const usual = ['pairsCut width'];
    const seats = 'notchDeep seat';
    expect(cautionsOf(bare)).toEqual(usual);
    expect(cautionsOf({ ...bare, ridge: { thickness: 1.5, depth: 9.25 } })).toContain(
      'ridgeShallow ridge.depth',
    );
    expect(cautionsOf({ ...bare, valley: { thickness: 1.5, depth: 9.25 } })).toContain(
      'valleyShallow valley.depth',
    );
    expect(cautionsOf({ ...bare, header: { thickness: 1.5, depth: 11.25 } })).toContain(
      'headerShallow header.depth',
    );
    expect(cautionsOf({ ...bare, width: 84 })).toContain('headerLong width');
    expect(cautionsOf({ ...bare, at: 60 })).toContain('dormerNearEnd at');
    expect(cautionsOf({ ...walled, slope: { rise: 2, run: 12 } })).toContain('dormerSlopeLow slope');
    expect(cautionsOf({ ...walled, slope: { rise: 12, run: 12 } })).toContain(seats);
    expect(cautionsOf(walled, { joists: false })).toContain('tiesAbsent wall');
    expect(cautionsOf({ ...walled, overhang: 30 })).toContain('tailLong overhang');
  });
});
