import type { Point, Shape } from './draw';

/** Parts of its depth at which a rafter's grain is drawn: above its birdsmouth, never midway. Ours. */
const grainAt = [0.22, 0.4] as const;

/** Grain of a rafter whose top edge runs from its last corner to its first, in the drawing. */
export const grainOf = (points: readonly Point[]): readonly Shape[] => {
  const [top, next] = points;
  const tail = points[points.length - 1];
  if (!top || !next || !tail || top[0] === tail[0]) return [];
  const depth = next[1] - top[1];
  return grainAt.flatMap((share) => {
    const down = depth * share;
    const line = [top, tail].map(([x, y]): Point => [x, y + down]) as [Point, Point];
    return inside(points, line);
  });
};

/** The pieces of an endless line that lie in an outline. */
const inside = (points: readonly Point[], [from, to]: readonly [Point, Point]): readonly Shape[] => {
  const way: Point = [to[0] - from[0], to[1] - from[1]];
  const off = ([x, y]: Point): number => way[0] * (y - from[1]) - way[1] * (x - from[0]);
  const along = ([x, y]: Point): number => way[0] * (x - from[0]) + way[1] * (y - from[1]);
  const crossings = points
    .flatMap((a, i): readonly Point[] => {
      const b = points[(i + 1) % points.length] ?? a;
      const [p, q] = [off(a), off(b)];
      const share = p / (p - q);
      return p > 0 === q > 0 ? [] : [[a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]];
    })
    .sort((a, b) => along(a) - along(b));
  return crossings.flatMap((start, i): readonly Shape[] => {
    const end = crossings[i + 1];
    return i % 2 === 0 && end ? [{ kind: 'line', points: [start, end], role: 'grain' }] : [];
  });
};
