import { lerp, lengthOf, sub, type Vec3 } from '../../core/geometry/vector';
import type { Edge, Face, Solid } from '../../present/model/solid';

/** A solid that a section plane went through: the part beyond it, with a face where it was cut. */
export type CutSolid = Solid & { readonly cut?: boolean };

const near = 0.01;

/** What a section across the ridge at x shows: everything beyond it, toward end B. */
export const cutAt = (solids: readonly Solid[], x: number): readonly CutSolid[] =>
  solids.flatMap((solid) => {
    const xs = solid.faces.flatMap((face) => face.points.map((p) => p[0]));
    const [low, high] = [Math.min(...xs), Math.max(...xs)];
    if (high <= x + near) return [];
    return low >= x - near ? [solid] : [halved(solid, x)];
  });

const crossing = (a: Vec3, b: Vec3, x: number): Vec3 => lerp(a, b, (x - a[0]) / (b[0] - a[0]));

const halved = (solid: Solid, x: number): CutSolid => {
  const cap = capOf(solid, x);
  const faces = solid.faces.map((face) => faceBeyond(face, x)).filter((face) => face.points.length > 2);
  const rim = cap.points.map((a, i): Edge => ({
    a,
    b: cap.points[(i + 1) % cap.points.length] as Vec3,
    n1: cap.normal,
    n2: [0, 0, 1],
  }));
  return { ...solid, faces: [...faces, cap], edges: [...edgesBeyond(solid.edges, x), ...rim], cut: true };
};

const fan = (count: number): Face['triangles'] =>
  Array.from({ length: Math.max(0, count - 2) }, (_, i) => [0, i + 1, i + 2] as const);

const faceBeyond = (face: Face, x: number): Face => {
  const points = face.points.flatMap((a, i) => {
    const b = face.points[(i + 1) % face.points.length] as Vec3;
    const kept = a[0] >= x ? [a] : [];
    return a[0] >= x !== b[0] >= x ? [...kept, crossing(a, b, x)] : kept;
  });
  const whole = points.length === face.points.length && face.points.every((p) => p[0] >= x);
  return { ...face, points, triangles: whole ? face.triangles : fan(points.length) };
};

const capOf = (solid: Solid, x: number): Face => {
  const points: Vec3[] = [];
  for (const { a, b } of solid.edges)
    if (a[0] < x !== b[0] < x) {
      const p = crossing(a, b, x);
      if (!points.some((q) => lengthOf(sub(p, q)) < near)) points.push(p);
    }
  const n = Math.max(1, points.length);
  const [my, mz] = [points.reduce((s, p) => s + p[1], 0) / n, points.reduce((s, p) => s + p[2], 0) / n];
  points.sort((p, q) => Math.atan2(p[2] - mz, p[1] - my) - Math.atan2(q[2] - mz, q[1] - my));
  return { points, triangles: fan(points.length), normal: [-1, 0, 0] };
};

const edgesBeyond = (edges: readonly Edge[], x: number): readonly Edge[] =>
  edges.flatMap((edge) => {
    const [ia, ib] = [edge.a[0] >= x, edge.b[0] >= x];
    if (!ia && !ib) return [];
    if (ia && ib) return [edge];
    const p = crossing(edge.a, edge.b, x);
    return [ia ? { ...edge, b: p } : { ...edge, a: p }];
  });
