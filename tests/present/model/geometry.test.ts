import { test as property, fc } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { cross, dot, lengthOf, sub, type Vec2, type Vec3 } from '../../../src/core/geometry/vector';
import { doubleArea, earClip } from '../../../src/present/model/earClip';
import { box, prism, stick } from '../../../src/present/model/prism';
import type { Solid } from '../../../src/present/model/solid';

/** The volume a closed skin holds, from its faces' areas and the way each says it looks; too small where one looks inward. */
const volume = ({ faces }: Solid): number =>
  faces.reduce((sum, { points, triangles, normal }) => {
    const area = triangles.reduce((part, [i, j, k]) => {
      const [a, b, c] = [points[i], points[j], points[k]] as [Vec3, Vec3, Vec3];
      return part + lengthOf(cross(sub(b, a), sub(c, a))) / 2;
    }, 0);
    return sum + (area * dot(normal, points[0] as Vec3)) / 3;
  }, 0);

const outward = (points: readonly Vec3[]): Vec3 =>
  cross(sub(points[1] as Vec3, points[0] as Vec3), sub(points[2] as Vec3, points[1] as Vec3));

const notched: readonly Vec2[] = [
  [0, 0],
  [10, 0],
  [10, 4],
  [6, 4],
  [6, 2],
  [4, 2],
  [4, 4],
  [0, 4],
];

describe('cutting outlines into triangles', () => {
  const areaOf = (outline: readonly Vec2[]): number =>
    earClip(outline).reduce(
      (sum, corners) => sum + Math.abs(doubleArea(corners.map((i) => outline[i] as Vec2))),
      0,
    );

  test('covers an outline with a notch, whichever way it runs', () => {
    expect(areaOf(notched)).toBeCloseTo(Math.abs(doubleArea(notched)), 9);
    expect(areaOf([...notched].reverse())).toBeCloseTo(Math.abs(doubleArea(notched)), 9);
  });

  property.prop([
    fc.array(fc.tuple(fc.double({ min: 1, max: 9, noNaN: true }), fc.integer()), {
      minLength: 3,
      maxLength: 9,
    }),
  ])('covers any outline that is seen whole from its middle', (spokes) => {
    const outline = spokes.map(([r], i): Vec2 => {
      const a = (i / spokes.length) * 2 * Math.PI;
      return [r * Math.cos(a), r * Math.sin(a)];
    });
    expect(areaOf(outline)).toBeCloseTo(Math.abs(doubleArea(outline)), 6);
  });
});

describe('solids', () => {
  const about = { id: 'x', role: 'block' } as const;

  test('a box faces outward on all sides and holds its volume', () => {
    const solid = box(about, { from: [2, 3, 4], to: [5, 7, 9] });
    expect(solid.faces).toHaveLength(6);
    expect(volume(solid)).toBeCloseTo(60, 9);
    const normals = solid.faces.map(({ normal }) => normal.map((n) => Math.round(n)).join(' ')).sort();
    expect(normals).toEqual(['-1 0 0', '0 -1 0', '0 0 -1', '0 0 1', '0 1 0', '1 0 0'].sort());
  });

  test('a notched prism turned over still faces outward', () => {
    for (const outline of [notched, [...notched].reverse()])
      for (const way of [1, -1]) {
        const solid = prism(about, { outline, place: ([u, v], k) => [50 + u, 50 + v, 50 + way * k * 3] });
        const depth = solid.faces.slice(0, 2).map(({ normal }) => normal[2]);
        expect(depth).toEqual([-way, way]);
        for (const { points, normal } of solid.faces.slice(2))
          expect(dot(normal, outward(points))).toBeGreaterThan(0);
      }
  });

  test('a stick runs from end to end, its grain along it', () => {
    const solid = stick(about, {
      from: [0, 0, 0],
      to: [0, 30, 40],
      wide: [0, 0, 1],
      width: 3.5,
      thickness: 1.5,
    });
    expect(volume(solid)).toBeCloseTo(50 * 3.5 * 1.5, 6);
    expect(solid.frame.along[1]).toBeCloseTo(0.6, 12);
    expect(solid.frame.along[2]).toBeCloseTo(0.8, 12);
  });
});
