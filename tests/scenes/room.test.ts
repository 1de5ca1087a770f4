import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../src/core/geometry/vector';
import { box } from '../../src/present/model/prism';
import { toX, toY } from '../../src/scenes/closeUp/board';
import type { Into } from '../../src/scenes/closeUp/drawJoint';
import { sideCamera } from '../../src/scenes/ink/camera';
import { addSolid, rasterFor } from '../../src/scenes/ink/raster';
import { scaledFor } from '../../src/scenes/instruments/scaledFor';
import type { ReadingPicture } from '../../src/scenes/instruments/readingPicture';
import { grown, isBare, meets } from '../../src/scenes/overview/bare';
import { hiddenBy } from '../../src/scenes/overview/hidden';
import type { Overview } from '../../src/scenes/overview/drawOverview';

const camera = sideCamera('street', { scale: 1, middle: [100, 100], target: [0, 0, 0] as Vec3 });

/** A post 20 px wide and high in the middle of a picture of 200 by 200. */
const drawn = (): ReturnType<typeof rasterFor> => {
  const raster = rasterFor({ width: 200, height: 200, fine: 2 }, camera);
  const post = { id: 'post.1', role: 'post', selectable: true } as const;
  addSolid(raster, box(post, { from: [-10, -2, -10], to: [10, 2, 10] }));
  return raster;
};

const at = (x: number, y: number) => ({ x, y, width: 20, height: 20 });

describe('room on a drawing', () => {
  test('is where nothing is drawn and the picture has not ended', () => {
    const raster = drawn();
    expect(isBare(raster, at(40, 40))).toBe(true);
    expect(isBare(raster, at(100, 100))).toBe(false);
    expect(isBare(raster, at(111, 90))).toBe(true);
    expect(isBare(raster, grown(at(111, 90), 3))).toBe(false);
    expect(isBare(raster, at(190, 40))).toBe(false);
    expect(isBare(raster, at(-1, 40))).toBe(false);
  });

  test('ends at a sloping outline, not at the box round it', () => {
    const slope = [[0, 100], [100, 0], [100, 100]] as const; // prettier-ignore
    expect(meets(at(10, 10), slope)).toBe(false);
    expect(meets(at(45, 45), slope)).toBe(true);
    expect(meets(at(70, 70), slope)).toBe(true);
    expect(meets(at(120, 50), slope)).toBe(false);
  });

  test('what a tag hides counts work, the chosen member far more, and letters', () => {
    const overview = { raster: drawn(), letters: [at(40, 40)] } as unknown as Overview;
    expect(hiddenBy(overview, at(140, 140), undefined)).toBe(0);
    const work = hiddenBy(overview, at(95, 95), undefined);
    expect(work).toBeGreaterThan(0);
    expect(hiddenBy(overview, at(95, 95), 'post.1')).toBeGreaterThan(10 * work);
    expect(hiddenBy(overview, at(45, 45), undefined)).toBeGreaterThan(work);
  });
});

/** Pictures of readings as small and as large as pages make them, CSS pixels. */
const pictures = [[230, 84], [340, 92], [252, 132], [252, 168], [600, 400]] as const; // prettier-ignore

const canvas = { getContext: () => ({}) } as unknown as HTMLCanvasElement;

const into = ([width, height]: readonly [number, number]): Into =>
  ({ canvas, ratio: 1, theme: 'day', area: { x: 0, y: 0, width, height } }) as unknown as Into;

describe.each(pictures)('a picture of a reading, %i by %i', (...size) => {
  const seen = (picture: ReadingPicture, inches: number): boolean => {
    const y = toY(scaledFor(into(size), picture), inches);
    return y >= 0 && y <= size[1];
  };

  test.each([1 / 4, 3 / 4, 9 / 8])(
    'shows a string %f over a rafter, the edge under it and its block',
    (shown) => {
      const picture: ReadingPicture = { tool: 'string', over: 'rafter', shown, nominal: 0.75 };
      expect([shown, 0, 0.75].map((inches) => seen(picture, inches))).toEqual([true, true, true]);
    },
  );

  test.each([-1 / 2, 0, 1 / 4])('shows a plate %f out, zero and the string', (shown) => {
    const picture: ReadingPicture = { tool: 'string', over: 'plate', shown, nominal: 0.75 };
    expect([shown, 0, 0.75].map((inches) => seen(picture, inches))).toEqual([true, true, true]);
  });

  test('has a numbered tick of a tape in sight wherever the reading lies', () => {
    const view = scaledFor(into(size), { tool: 'tape', shown: 0 });
    const left = toX(view, 0) / view.k;
    const right = (size[0] - toX(view, 0)) / view.k;
    // Three digits, each not half as wide as high and no higher than a quarter of the picture, stand left of their tick.
    const number = (3 * 0.46 * Math.min(32, Math.max(18, size[1] / 4))) / view.k + 0.03;
    for (let shown = 158; shown < 159; shown += 1 / 64)
      expect(Math.floor(shown + right) - (shown - left + number)).toBeGreaterThanOrEqual(0);
  });
});
