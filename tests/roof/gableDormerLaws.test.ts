import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FiguredRoof } from '../../src/core/roof/figured';
import type { FiguredHip } from '../../src/core/roof/figuredSlants';
import { mmPerInch } from '../../src/core/units/inch';
import { commonOf, dormerIn } from './dormers';
import { figured, ridgeIn, roofsWith, someDormer } from './gableDormers';
import { jacksOfKind, valleysOf } from './wings';

/** What holds of every gable dormer, with side walls or without. */

const sorts = [
  ['without side walls', roofsWith(someDormer.bare)],
  ['with side walls', roofsWith(someDormer.walled)],
] as const;

type Some = (typeof sorts)[number][1] extends fc.Arbitrary<infer T> ? T : never;
type One = {
  readonly side: 'street' | 'yard';
  readonly at: number;
  readonly width: number;
  readonly front: number;
  readonly slope: { readonly rise: number; readonly run: number };
  readonly header: { readonly thickness: number };
  readonly rakeOverhang: number;
};

const always = (
  files: fc.Arbitrary<Some>,
  holds: (so: { readonly roof: FiguredRoof; readonly file: Some; readonly one: One }) => void,
): void =>
  fc.assert(
    fc.property(files, (file) => {
      const roof = figured(file);
      fc.pre(roof !== undefined);
      holds({ roof, file, one: file.dormers[0] as One });
    }),
    { numRuns: 50 },
  );

const close = (a: unknown, b: unknown, path = ''): void => {
  if (typeof a === 'number' && typeof b === 'number')
    expect(Math.abs(a - b) / Math.max(1, Math.abs(a)), path).toBeLessThan(1e-8);
  else if (typeof a === 'object' && a !== null && typeof b === 'object' && b !== null) {
    expect(Object.keys(a)).toEqual(Object.keys(b));
    for (const [key, value] of Object.entries(a))
      close(value, (b as Record<string, unknown>)[key], `${path}.${key}`);
  } else expect(a, path).toBe(b);
};

/** Everything told of a dormer but where things stand, the main roof's own commons, and which side it is on. */
const apart = (roof: FiguredRoof | undefined): object => {
  const { trimmers: _, ...dormer } = dormerIn(roof as FiguredRoof);
  return JSON.parse(
    JSON.stringify({
      dormer,
      ridge: ridgeIn(roof as FiguredRoof),
      commons: roof?.commonRafters.filter(({ id }) => id.includes('dormer')),
      valleys: lengths(roof?.valleys ?? []),
      jacks: (roof?.jacks ?? []).map(({ kind, lengths: all, counts }) => [kind, all, counts]).sort(),
      inPlace: roof?.cutInPlace?.length ?? 0,
    }).replace(/yard/g, 'street'),
  ) as object;
};

const lengths = (valleys: readonly FiguredHip[]): readonly unknown[] =>
  valleys.map(({ bodyLength, lineLength, drop, slope }) => [bodyLength, lineLength, drop, slope]);

const large = (file: unknown, by: number): unknown => {
  if (typeof file === 'number') return file * by;
  if (Array.isArray(file)) return file.map((each) => large(each, by));
  if (typeof file !== 'object' || file === null) return file;
  return Object.fromEntries(
    Object.entries(file).map(([key, value]) => [key, key === 'slope' ? value : large(value, by)]),
  );
};

const gradientOf = ({ slope }: { readonly slope: { readonly rise: number; readonly run: number } }) =>
  slope.rise / slope.run;

describe.each(sorts)('laws of gable dormers %s', (_, files) => {
  it('leave the ridge and the commons as they are without', () => {
    always(files, ({ roof, file }) => {
      const plain = figured({ ...file, dormers: undefined });
      expect(roof.ridges.find(({ id }) => id === 'ridge')).toEqual(plain?.ridges[0]);
      const { count: _a, id: _b, ...cuts } = commonOf(roof, 'common.both') ?? {};
      const { count: _c, id: _d, ...known } = plain?.commonRafters[0] ?? {};
      expect(cuts).toEqual(known);
    });
  });

  it('are the same on the other side of the roof, and from the other end', () => {
    always(files, ({ roof, file, one }) => {
      const across = { ...one, side: one.side === 'yard' ? 'street' : 'yard' };
      close(apart(figured({ ...file, dormers: [across] })), apart(roof));
      const turned = figured({ ...file, dormers: [{ ...one, at: file.length - one.at }] });
      close(apart(turned), apart(roof));
      const at = turned ? dormerIn(turned).trimmers.at : [];
      close(
        [...at].reverse().map((x) => file.length - x),
        dormerIn(roof).trimmers.at,
      );
    });
  });

  it('have two halves alike', () => {
    always(files, ({ roof, file, one }) => {
      const valleys = valleysOf(roof);
      // Cut to both sides alike at both ends they are one piece, made twice.
      expect(valleys.reduce((sum, { count }) => sum + count, 0)).toBe(2);
      expect(valleys.map(({ side }) => side).sort()).toEqual(valleys.length === 1 ? ['both'] : ['A', 'B']);
      const [a, b] = [valleys[0], valleys.at(-1)];
      close([a?.bodyLength, a?.run, a?.drop], [b?.bodyLength, b?.run, b?.drop]);
      const [own, other] = (['A', 'B'] as const).map((side) =>
        jacksOfKind(roof, 'valleyJack')
          .filter((jacks) => jacks.side === side)
          .map((jacks) => jacks.lengths),
      );
      close(own, other);
      // In the middle of the layout the main rafters above are alike too.
      const middle = figured({ ...file, dormers: [{ ...one, at: file.length / 2 }] });
      const [left, right] = (['left', 'right'] as const).map((hand) =>
        jacksOfKind(middle ?? roof, 'valleyToHeader')
          .filter(({ valleySide }) => valleySide === hand)
          .map((jacks) => jacks.lengths),
      );
      if (middle) close(left, right);
    });
  });

  it('are those of a roof twice as large, and of one in millimeters', () => {
    always(files, ({ roof, file }) => {
      const told = (of: FiguredRoof | undefined) => ({
        ridge: of && ridgeIn(of).length,
        valleys: of?.valleys?.map(({ bodyLength }) => bodyLength),
        jacks: of?.jacks?.map((jacks) => jacks.lengths),
        headers: of && dormerIn(of).headers.map(({ topHeight, length, from }) => [topHeight, length, from]),
        studs: of && dormerIn(of).trimmers.at,
      });
      const twice = figured(large({ ...file, blockAllowance: 1 / 16 }, 2));
      if (dormerIn(roof).sideStuds.length === 0) close(told(twice), large(told(roof), 2));
      close(told(figured({ ...(large(file, mmPerInch) as object), units: 'mm' })), told(roof));
    });
  });

  it('divide the run of the main roof between what is below, in and over them', () => {
    always(files, ({ roof, one, file }) => {
      const dormer = dormerIn(roof);
      const run = commonOf(roof, 'common.both')?.run ?? NaN;
      const clad = file.reference === 'sheathing' ? file.sheathing : 0;
      const [upper] = dormer.upperRafters;
      fc.pre(upper !== undefined);
      expect(one.front + clad + dormer.run + upper.run).toBeCloseTo(run, 8);
    });
  });

  it('have a ridge as long as plates and half the width ask for, less half of the header', () => {
    always(files, ({ roof, file, one }) => {
      const plates = dormerIn(roof).sidePlates?.[0]?.lineLength ?? 0;
      const clad = plates > 0 && file.reference === 'sheathing' ? file.sheathing : 0;
      const half = ((one.width / 2 + clad) * gradientOf(one)) / gradientOf(file);
      expect(ridgeIn(roof).length).toBeCloseTo(
        plates + half - one.header.thickness / 2 + one.rakeOverhang,
        8,
      );
    });
  });

  it('have valleys and jacks of a wing of the same width and slope', () => {
    always(files, ({ roof, file, one }) => {
      const { width, slope } = one;
      const wing = figured({
        ...file,
        // Its valleys start at the sheathing of its walls; those of a dormer without walls at the corners of its gable.
        ...(dormerIn(roof).sidePlates ? {} : { reference: 'plate' }),
        dormers: undefined,
        wings: [{ side: one.side, at: 200, span: width, length: 40, slope, framing: 'suspendedRidge' }],
      });
      fc.pre(wing !== undefined);
      const [known] = valleysOf(wing);
      const [found] = valleysOf(roof);
      for (const key of ['run', 'lineLength', 'slope'] as const) close(found?.[key], known?.[key]);
      const [jack] = jacksOfKind(roof, 'valleyJack');
      const [same] = jacksOfKind(wing, 'valleyJack').filter(({ side }) => side === 'A');
      fc.pre(jack !== undefined && same !== undefined);
      close([jack.slope, jack.difference], [same.slope, same.difference]);
      const cheeks = (told: typeof jack) => told.cheeks.map(({ cheekAngle }) => cheekAngle);
      close(cheeks(jack), cheeks(same));
    });
  });
});
