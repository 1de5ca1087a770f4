import {
  add,
  cross,
  dot,
  lengthOf,
  lerp,
  scale,
  sub,
  unit,
  type Vec2,
  type Vec3,
} from '../../core/geometry/vector';
import { earClip } from './earClip';
import type { About, Edge, Face, Frame, Solid } from './solid';

/** An outline, and where each of its points lies in the building on the near (0) and the far (1) side. */
export type Extrusion = {
  readonly outline: readonly Vec2[];
  readonly place: (point: Vec2, side: 0 | 1) => Vec3;
  readonly frame?: Frame;
};

const up: Vec3 = [0, 0, 1];

/** Direction a flat outline faces when it runs counterclockwise seen from outside. */
const facing = (points: readonly Vec3[]): Vec3 => {
  const sum = points.reduce<Vec3>(
    (total, a, i) => {
      const b = points[(i + 1) % points.length] as Vec3;
      return add(total, cross(a, b));
    },
    [0, 0, 0],
  );
  return unit(sum) ?? up;
};

/** A solid with a constant outline: two ends of that outline and a face for every side of it. */
export const prism = (about: About, { outline, place, frame }: Extrusion): Solid => {
  const ordered = outwardOrder(outline, place);
  const near = ordered.map((p) => place(p, 0));
  const far = ordered.map((p) => place(p, 1));
  const triangles = earClip(ordered);
  const nearFace: Face = { points: near, triangles, normal: facing(near) };
  const farFace: Face = { points: far, triangles, normal: facing([...far].reverse()) };
  const sides = near.map((_, i) => sideFace(near, far, i));
  return {
    material: 'lumber',
    selectable: false,
    seed: seedOf(about.id),
    ...about,
    faces: [nearFace, farFace, ...sides],
    edges: edgesOf({ near, far, nearFace, farFace, sides }),
    frame: frame ?? frameOf(near, far),
  };
};

const outwardOrder = (outline: readonly Vec2[], place: Extrusion['place']): readonly Vec2[] => {
  const first = outline[0] as Vec2;
  const depth = sub(place(first, 1), place(first, 0));
  const faces = facing(outline.map((p) => place(p, 0)));
  return dot(faces, depth) > 0 ? [...outline].reverse() : outline;
};

const sideFace = (near: readonly Vec3[], far: readonly Vec3[], i: number): Face => {
  const j = (i + 1) % near.length;
  const points = [near[j], near[i], far[i], far[j]] as readonly Vec3[];
  return {
    points,
    triangles: [
      [0, 1, 2],
      [0, 2, 3],
    ],
    normal: facing(points),
  };
};

type Parts = {
  readonly near: readonly Vec3[];
  readonly far: readonly Vec3[];
  readonly nearFace: Face;
  readonly farFace: Face;
  readonly sides: readonly Face[];
};

const edgesOf = ({ near, far, nearFace, farFace, sides }: Parts): readonly Edge[] =>
  near.flatMap((a, i) => {
    const n = near.length;
    const side = (sides[i] as Face).normal;
    const before = (sides[(i + n - 1) % n] as Face).normal;
    const [b, c, d] = [near[(i + 1) % n], far[i], far[(i + 1) % n]] as [Vec3, Vec3, Vec3];
    return [
      { a, b, n1: nearFace.normal, n2: side },
      { a: c, b: d, n1: farFace.normal, n2: side },
      { a, b: c, n1: side, n2: before },
    ];
  });

/** Grain runs along the longest way, the wide face across it. */
const frameOf = (near: readonly Vec3[], far: readonly Vec3[]): Frame => {
  const [p, q, r] = [near[0], near[1], near[2]] as [Vec3, Vec3, Vec3];
  const ways = [sub(q, p), sub(r, q), sub(far[0] as Vec3, p)].sort((a, b) => lengthOf(b) - lengthOf(a));
  const along = unit(ways[0] as Vec3) ?? up;
  const through = unit(cross(along, ways[1] as Vec3)) ?? up;
  const middle = lerp(p, far[Math.floor(far.length / 2)] as Vec3, 0.5);
  return { origin: middle, along, across: cross(through, along), through };
};

/** A small whole number from a name, the same every time. */
export const seedOf = (name: string): number => {
  let h = 7;
  for (let i = 0; i < name.length; i++) h = (Math.imul(h, 31) + name.charCodeAt(i)) | 0;
  return (h >>> 0) % 99991;
};

/** Two opposite corners of a box that lies along the axes. */
export type Corners = { readonly from: Vec3; readonly to: Vec3 };

export const box = (about: About, { from, to }: Corners): Solid =>
  prism(about, {
    outline: [
      [from[0], from[1]],
      [to[0], from[1]],
      [to[0], to[1]],
      [from[0], to[1]],
    ],
    place: (p, side) => [p[0], p[1], side === 0 ? from[2] : to[2]],
  });

/** A stick between two points: `width` is measured toward `wide`, as near as square to the stick allows. */
export type Stick = {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly wide: Vec3;
  readonly width: number;
  readonly thickness: number;
};

export const stick = (about: About, { from, to, wide, width, thickness }: Stick): Solid => {
  const along = unit(sub(to, from)) ?? up;
  const across = unit(sub(wide, scale(along, dot(wide, along)))) ?? up;
  const through = cross(along, across);
  const corner = add(add(from, scale(across, -width / 2)), scale(through, -thickness / 2));
  const length = lengthOf(sub(to, from));
  return prism(about, {
    outline: [
      [0, 0],
      [length, 0],
      [length, width],
      [0, width],
    ],
    place: (p, side) =>
      add(add(add(corner, scale(along, p[0])), scale(across, p[1])), scale(through, side * thickness)),
    frame: { origin: lerp(from, to, 0.5), along, across, through },
  });
};
