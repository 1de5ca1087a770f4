import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../src/core/geometry/vector';
import { box } from '../../src/present/model/prism';
import type { Solid } from '../../src/present/model/solid';
import { tickAt } from '../../src/scenes/closeUp/steel';
import { corners, cornerCamera, project, sectionCamera, sideCamera } from '../../src/scenes/ink/camera';
import { seenRuns } from '../../src/scenes/ink/edges';
import { measureOf } from '../../src/scenes/ink/fraction';
import { groundOf, slantAt } from '../../src/scenes/ink/plane';
import { addSolid, rasterFor } from '../../src/scenes/ink/raster';
import { cutAt } from '../../src/scenes/measured/cutAt';
import { memberAt } from '../../src/scenes/overview/pick';
import { layoutOf } from '../../src/scenes/stageLayout';

const lie = { scale: 4, middle: [100, 100] as const, target: [0, 0, 0] as Vec3 };
const post = (id: string, x: number, y: number): Solid =>
  box({ id, role: 'post', selectable: true }, { from: [x - 2, y - 2, -10], to: [x + 2, y + 2, 10] });

describe('cameras', () => {
  test('from the street A is on the left, from the yard B is', () => {
    const x = (corner: (typeof corners)[number], p: Vec3): number => project(cornerCamera(corner, lie), p)[0];
    expect(x('street', [-10, 0, 0])).toBeLessThan(x('street', [10, 0, 0]));
    expect(x('yard', [-10, 0, 0])).toBeGreaterThan(x('yard', [10, 0, 0]));
  });

  test('each corner has the side it is named by nearest', () => {
    const near: Record<string, Vec3> = {
      street: [0, -50, 0],
      yard: [0, 50, 0],
      A: [-50, 0, 0],
      B: [50, 0, 0],
    };
    for (const corner of corners) {
      const depth = (p: Vec3): number => project(cornerCamera(corner, lie), p)[2];
      const first = Object.entries(near).sort((a, b) => depth(a[1]) - depth(b[1]))[0];
      expect(first?.[0]).toBe(corner);
    }
  });

  test('level views share heights; the section has the street on its right', () => {
    const [section, side] = [sectionCamera(lie), sideCamera('street', lie)];
    expect(project(section, [3, 7, 12])[1]).toBe(project(side, [40, -7, 12])[1]);
    expect(project(section, [0, -10, 0])[0]).toBeGreaterThan(project(section, [0, 10, 0])[0]);
  });

  test('a plane seen at a sample is where the camera projects it from', () => {
    const camera = cornerCamera('street', lie);
    const p: Vec3 = [3, -4, 5];
    const [x, y] = project(camera, p);
    const ground = groundOf(camera, [0, 0, 5], [0, 0, 1]);
    expect([0, 1, 2].map((i) => slantAt(ground[i as 0], x, y))).toEqual(p.map((v) => expect.closeTo(v, 9)));
  });
});

describe('what is in front', () => {
  const camera = sideCamera('street', lie);
  const scene = (): ReturnType<typeof rasterFor> => {
    const raster = rasterFor({ width: 200, height: 200, fine: 2 }, camera);
    addSolid(raster, post('far', 0, 20));
    addSolid(raster, post('near', 1, -20));
    return raster;
  };
  const spots = [{ id: 'rafter.yard.9', points: [[18, 0, 0] as const] }];

  test('a finger finds the nearer of two, the farther beside it, an open place, and nothing', () => {
    const seen = { raster: scene(), camera, spots, ratio: 1 };
    expect(memberAt(seen, [104, 100])).toBe('near');
    expect(memberAt(seen, [93, 100])).toBe('far');
    expect(memberAt(seen, [172, 104])).toBe('rafter.yard.9');
    expect(memberAt(seen, [20, 20])).toBeUndefined();
  });

  test('a thin stick may be missed by a little', () => {
    expect(memberAt({ raster: scene(), camera, spots: [], ratio: 1 }, [117, 100])).toBe('near');
  });

  test('a line behind a body is broken where the body hides it', () => {
    const runs = seenRuns(scene(), { a: [-20, 0, 0], b: [20, 0, 0] }, 0.5);
    expect(runs).toHaveLength(2);
    expect(runs[0]?.to[0]).toBeCloseTo(96, -0.5);
    expect(runs[1]?.from[0]).toBeCloseTo(112, -0.5);
  });
});

describe('a section', () => {
  test('keeps what lies beyond and closes what it goes through', () => {
    const solids = cutAt([post('before', -10, 0), post('through', 0, 0), post('beyond', 10, 0)], 0.5);
    expect(solids.map(({ id }) => id)).toEqual(['through', 'beyond']);
    const [through] = solids;
    const cap = through?.faces.find(({ normal }) => normal[0] === -1 && through.cut);
    const xs = through?.faces.flatMap(({ points }) => points.map((p) => p[0])) ?? [];
    expect(Math.min(...xs)).toBe(0.5);
    expect(
      through?.faces.some(({ points }) => points.length === 4 && points.every((p) => p[0] === 0.5)),
    ).toBe(true);
    expect(cap).toBeDefined();
  });
});

describe('scales', () => {
  test('ticks lie where they read, to the pixel', () => {
    const view = {
      ink: undefined as never,
      theme: 'day' as const,
      ratio: 1,
      k: 384,
      zero: [50, 300] as const,
    };
    for (const [way, sign] of [
      ['right', 1],
      ['up', -1],
      ['down', 1],
    ] as const) {
      const at = (inches: number): number => tickAt({ view, zero: [0.25, 0.5], way }, inches);
      expect(at(3 / 16) - at(0)).toBeCloseTo(sign * 72, 9);
    }
  });

  test('a length is set as feet, inches and a reduced fraction', () => {
    expect(measureOf(58.625, true)).toEqual({ feet: 4, whole: 10, over: 5, under: 8 });
    expect(measureOf(48.0625, false)).toEqual({ feet: 0, whole: 48, over: 1, under: 16 });
    expect(measureOf(11.99, true)).toEqual({ feet: 1, whole: 0, over: 0, under: 16 });
  });
});

describe('the stage is laid out by its width', () => {
  const insets = { top: 50, right: 0, bottom: 0, left: 0 };
  test.each([
    [1280, 800, ['section', 'side']],
    [760, 800, ['side']],
    [390, 844, []],
    [844, 390, []],
  ] as const)('%i × %i', (width, height, views) => {
    const layout = layoutOf({ width, height, insets, view: 'overview' });
    expect(layout.linkedViews).toEqual(views);
    const low = layout.linked ?? layout.main;
    expect(low.y + low.height).toBe(height);
  });
});
