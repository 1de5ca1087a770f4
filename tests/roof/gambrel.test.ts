import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { gambrelFile, gambrelRoof, mitered, rafterIn } from './gambrels';
import type { Changes } from './roofs';
import { english } from '../content/english';

/** The number printed by hand, to its last figure. */
const near = (found: number | undefined, wanted: number): void => expect(found).toBeCloseTo(wanted, 4);

const lowerOf = (changes: Changes = {}) => rafterIn(gambrelRoof(changes), 'common.lower');
const upperOf = (changes: Changes = {}) => rafterIn(gambrelRoof(changes), 'common.upper');

describe('a gambrel on purlins, worked by hand', () => {
  // 16 in 12 is 4 up on 3 in on 5 along; 5 in 12 is 5 up on 12 in on 13 along. Rafters 6 deep.
  it('has the lower rafters of its steep slope', () => {
    // 60 in: 80 up, 100 along. Plumb cut 6 · 5/3 = 10. Over the plate 10 − 2 · 4/3 = 7 1/3. Tail 9 · 5/3 = 15.
    const lower = lowerOf();
    expect(lower).toMatchObject({ count: 28, side: 'both', run: 60, shortening: 0, seat: 2 });
    near(lower.rise, 80);
    near(lower.lineLength, 100);
    near(lower.bodyLength, 100);
    near(lower.tailLength, 15);
    near(lower.plumbCutLength, 10);
    near(lower.heightAbovePlate, 7.33333);
    near(lower.notchDepth, 1.6);
    // 115 and what a plumb cut slants: 6 · 4/3 = 8.
    near(lower.stockLength, 123);
  });

  it('has the upper rafters of its flat one, from the purlin to the ridge', () => {
    // 132 − 60 = 72 in: 30 up, 78 along; 3/4 in for the ridge: 71.25 · 13/12 = 77.1875. Plumb cut 6 · 13/12 = 6.5.
    const upper = upperOf();
    expect(upper).toMatchObject({
      count: 28,
      side: 'both',
      run: 72,
      shortening: 0.75,
      tailLength: 0,
      seat: 2.4,
    });
    near(upper.rise, 30);
    near(upper.lineLength, 78);
    near(upper.bodyLength, 77.1875);
    near(upper.plumbCutLength, 6.5);
    // Over the purlin 6.5 − 2.4 · 5/12 = 5.5.
    near(upper.heightAbovePlate, 5.5);
  });

  it('has its break where both top edges meet, a purlin under it and a ridge over it', () => {
    const { breaks, purlins, ridges, gussets } = gambrelRoof();
    // 80 + 7 1/3; the purlin 5.5 lower; the ridge 71.25 · 5/12 = 29.6875 higher.
    expect(breaks).toMatchObject([{ count: 2, side: 'both', run: 60, joint: 'plumb', length: 312 }]);
    near(breaks?.[0]?.height, 87.33333);
    near(breaks?.[0]?.jointLength, 5.5);
    expect(breaks?.[0]?.lowerCut).toEqual({ rise: 16 / 12, run: 1 });
    expect(breaks?.[0]?.upperCut).toEqual({ rise: 5 / 12, run: 1 });
    near(purlins?.[0]?.topHeight, 81.83333);
    // Of the lower rafters' cut of 10 the upper ones take 5.5.
    near(purlins?.[0]?.leastDepth, 4.5);
    expect(purlins).toMatchObject([{ count: 2, length: 312, bearsFully: true }]);
    near(ridges[0]?.topHeight, 117.02083);
    near(ridges[0]?.leastDepth, 6.5);
    expect(gussets).toBeUndefined();
  });

  it('has joists on its plates, ties from break to break and collars in the upper third over the break', () => {
    const { ties } = gambrelRoof();
    expect(ties.map(({ kind, count }) => [kind, count])).toEqual([
      ['joist', 14],
      ['breakTie', 14],
      ['collar', 8],
    ]);
    const [joist, breakTie, collar] = ties;
    expect(joist).toMatchObject({ height: 0, length: 264 });
    // 2 · 72; as deep as the rafters it stands 6 − 5.5 out of the plane at the break.
    near(breakTie?.height, 81.83333);
    near(breakTie?.length, 144);
    near(breakTie?.clip, 0.5);
    // 81.8333 + 2/3 · 35.1875; the plane is at 117.3333 over the middle, 12.041667 more, 28.9 out at 5 in 12.
    near(collar?.height, 105.29167);
    near(collar?.length, 57.8);
  });

  it('has a raised tie as long as the steep slope lets it be, below the break', () => {
    // At 40 the steep plane has come in (40 − 7 1/3) · 3/4 = 24.5 on each side.
    const { ties } = gambrelRoof({ joists: { height: 40 } });
    expect(ties[0]).toMatchObject({ kind: 'rafterTie', clip: 0 });
    near(ties[0]?.length, 264 - 49);
  });

  it('has gable studs under both slopes, none through the purlin', () => {
    const { gableStuds } = gambrelRoof({ gableStuds: {} });
    const [lower, upper] = gableStuds ?? [];
    expect(lower).toMatchObject({ id: 'stud.lower.1', count: 16, side: 'both' });
    expect(upper).toMatchObject({ id: 'stud.upper.1', count: 16, side: 'both' });
    // 16, 32 … in from the ridge; 80 out is 52 in: 7 1/3 + 52 · 4/3 − 10, and 3/4 · 4/3 to the long point.
    [3.66667, 25, 46.33333, 67.66667].forEach((length, i) => near(lower?.lengths[i], length));
    // 64 out is 8 in from the break: 87 1/3 + 8 · 5/12 − 6.5, and 3/4 · 5/12.
    [84.47917, 91.14583, 97.8125, 104.47917].forEach((length, i) => near(upper?.lengths[i], length));
    expect([lower?.lengths.length, upper?.lengths.length]).toEqual([4, 4]);
  });

  it('has blocks on the plates and on the purlins', () => {
    const { blocks } = gambrelRoof();
    const heights = (part: string) => new Set(blocks.filter((one) => one.part === part).map((b) => b.height));
    near([...heights('lower')][0], 7.33333);
    near([...heights('upper')][0], 5.5);
    expect(blocks.reduce((sum, { count }) => sum + count, 0)).toBe(4 * 13);
  });
});

describe('a gambrel with gussets, worked by hand', () => {
  // The turn from 4/3 to 5/12 has the cosine (3 · 12 + 4 · 5) / 65 = 56/65 and the sine 33/65; half of it 33 / (65 + 56) = 3/11.
  it('has both rafters cut along the line that halves their angle', () => {
    const { breaks, purlins, blocks } = gambrelRoof(mitered);
    const [one] = breaks ?? [];
    expect(one?.joint).toBe('miter');
    for (const cut of [one!.lowerCut, one!.upperCut]) near(cut.rise / cut.run, 3 / 11);
    // 6 over the cosine of half the turn, 11 / √130.
    near(one?.jointLength, 6.21914);
    near(one?.height, 87.33333);
    expect(purlins).toBeUndefined();
    expect(blocks.reduce((sum, { count }) => sum + count, 0)).toBe(2 * 13);
  });

  it('has upper rafters without a seat, their long points on the top edge', () => {
    const upper = upperOf(mitered);
    expect(upper).toMatchObject({ seat: 0, notchDepth: 0 });
    near(upper.stockLength, 77.1875);
    near(lowerOf(mitered).stockLength, 123);
  });

  it('has gussets on both faces, the end pairs on the inner alone', () => {
    // Length 2 · 12 · 11/√130; width 12 · 3/√130 + 6 · 11/√130.
    const [gusset] = gambrelRoof(mitered).gussets ?? [];
    expect(gusset).toMatchObject({ count: 2 * (2 * 14 - 2), thickness: 0.5, reach: 12 });
    near(gusset?.length, 23.15433);
    near(gusset?.width, 8.94599);
  });
});

describe('a gambrel that cannot be framed', () => {
  const refused = (changes: Changes): string => {
    const read = readRoof(gambrelFile(changes));
    return read.ok
      ? ''
      : read.complaints
          .map(({ path, wrong, accepted }) => `${path} ${wrong} (${english(accepted)})`)
          .join('; ');
  };

  it.each<[Changes, string]>([
    [{ upperSlope: undefined }, 'upperSlope is missing ({"rise", "run"}, flatter than the slope below)'],
    [{ breakIn: undefined }, 'breakIn is missing'],
    [
      { upperSlope: { rise: 16, run: 12 } },
      'upperSlope.rise makes 16 in 12 over 16 in 12 (a slope flatter than the lower one; with one slope it is a gable)',
    ],
    // Half of 264, less 3 1/2 for the purlin and 3/4 for the ridge; the seat is 2.
    [{ breakIn: 130 }, 'breakIn is 130 in (more than 2 in and less than 127.75 in on a span of 264 in)'],
    [{ breakIn: 2 }, 'breakIn is 2 in (more than 2 in and less than 127.75 in on a span of 264 in)'],
    [
      { purlin: { thickness: 1.5, depth: 9, seat: 2 } },
      'purlin.seat is 2 in on a purlin of 1.5 in (at most 1.5 in)',
    ],
    // 3 in: 4 + 7 1/3 − 5 1/2.
    [{ breakIn: 3 }, 'purlin.depth is 9.25 in and reaches down to the plates'],
    [{ gussets: {} }, 'gussets means nothing with breakOn "purlin" (only with breakOn "gussets")'],
    [{ breakOn: 'gussets' }, 'purlin means nothing with breakOn "gussets" (only with breakOn "purlin")'],
    // From 6 · 3/11 to what 72 − 3/4 leaves of the upper rafters: 77.1875 − 6 · 5/12.
    [
      { ...mitered, gussets: { reach: 80 } },
      'gussets.reach is 80 in (more than 1.636 in and at most 74.688 in on these rafters)',
    ],
    // The end bay is 24 − 3/4 − 3/4 − 3/4 = 21 3/4 clear.
    [{ ...mitered, spacing: 8, length: 48, gussets: { thickness: 3 } }, 'gussets.thickness is 3 in'],
    [{ halfCircle: true }, 'upperSlope follows from the slope in a half circle'],
    [
      { halfCircle: true, upperSlope: undefined, breakIn: undefined, slope: { rise: 14, run: 12 } },
      'slope.rise makes 14 in 12, too flat for a half circle (at least 14.182 in 12)',
    ],
    [{ posts: { at: [10], below: 0 } }, 'posts means nothing on a gambrel roof'],
  ])('%j', (changes, line) => {
    expect(refused(changes)).toContain(line);
  });

  it('is figured right up to what is refused', () => {
    expect(refused({ breakIn: 127.7 })).toBe('');
    expect(refused({ ...mitered, gussets: { reach: 74.6 } })).toBe('');
    expect(refused({ ...mitered, gussets: { reach: 1.7 } })).toBe('');
  });
});

describe('a gambrel that is unwise', () => {
  const told = (changes: Changes) =>
    gambrelRoof({ seat: 1.5, ...changes }).cautions.map(({ code, at }) => `${code} ${at}`);

  it.each<[Changes, readonly string[]]>([
    [{}, []],
    [mitered, []],
    [{ breakTies: false }, ['breakLoose breakTies']],
    [{ ...mitered, breakTies: false }, ['breakLoose breakTies']],
    [{ purlin: { thickness: 3.5, depth: 4.25, seat: 2.4 } }, ['purlinShallow purlin.depth']],
    [{ purlin: { thickness: 3.5, depth: 9.25, seat: 1 } }, ['bearingShort purlin.seat']],
    [{ upperSlope: { rise: 2, run: 12 } }, ['slopeLow upperSlope']],
    [{ joists: false }, ['tiesAbsent joists']],
    // 2 · 4/3 / (5/3) = 1.6, a quarter is 1.5.
    [{ seat: 2 }, ['notchDeep seat']],
    [{ ridge: { thickness: 1.5, depth: 6 } }, ['ridgeShallow ridge.depth']],
  ])('%j', (changes, codes) => {
    expect(told(changes).filter((one) => !one.startsWith('collarsTight'))).toEqual(codes);
  });
});
