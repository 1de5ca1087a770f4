import startKernel, { type Manifold } from 'manifold-3d';
import { cross, dot, lengthOf, scale, sub, type Vec2, type Vec3 } from '../../../src/core/geometry/vector';
import type { Timber } from '../../../src/core/roof/timber';

/**
 * Members as solids of a mesh kernel that shares no code with ours. Inches, axes of the roof. It works in doubles inside;
 * only meshes that leave it are in single precision, so nothing here takes one out in the roof's axes.
 */
const kernel = await startKernel();
kernel.setup();

export type Solid = Manifold;
export type Box = { readonly min: Vec3; readonly max: Vec3 };
/** A face without end: normal · point = reach. The normal need not be of length 1. */
export type Plane = Timber['cuts'][number];

const held = new Set<Solid>();

/** Solids lie outside of what the engine clears away: to be called after each test that made some. */
export const freeSolids = (): void => {
  for (const solid of held) solid.delete();
  held.clear();
};

export const heldSolids = (): number => held.size;

const hold = (solid: Solid): Solid => {
  held.add(solid);
  return solid;
};

/** What is asked of a solid that nobody keeps. */
const once = <T>(solid: Solid, ask: (solid: Solid) => T): T => {
  try {
    return ask(solid);
  } finally {
    solid.delete();
  }
};

/** Lives until `freeSolids`. */
export const solidOf = (timber: Timber): Solid =>
  hold(timber.cuts.reduce((rest, cut) => once(rest, (solid) => trimmed(solid, cut)), prismOf(timber)));

/** What is left of a solid on the inner side of a plane. */
const trimmed = (solid: Solid, { normal, reach }: Plane): Solid => {
  const size = lengthOf(normal);
  return solid.trimByPlane([...scale(normal, -1 / size)] as [number, number, number], -reach / size);
};

/**
 * The kernel rounds outlines to about 1e-8 before it extrudes them, so every corner is put back to where it was drawn
 * while it is put in its place.
 */
const prismOf = (timber: Timber): Solid => {
  const outline = counterClockwise(timber);
  const section = new kernel.CrossSection(outline.map(([along, z]): [number, number] => [along, z]));
  const flat = section.extrude(timber.thickness, 0, 0, [1, 1], true);
  section.delete();
  return once(flat, (solid) =>
    solid.warp((corner) => {
      const [along, z] = nearest(outline, [corner[0], corner[1]]);
      const [dx, dy] = timber.direction;
      const right = corner[2];
      corner.splice(
        0,
        3,
        timber.origin[0] + along * dx + right * dy,
        timber.origin[1] + along * dy - right * dx,
        z,
      );
    }),
  );
};

/** The other way round the kernel would see a hole. */
const counterClockwise = ({ id, direction: [dx, dy], outline }: Timber): readonly Vec2[] => {
  if (Math.abs(dx * dx + dy * dy - 1) > 1e-12) throw new Error(`${id}: its direction is not of length 1`);
  const twice = outline.reduce((sum, [a, z], i) => {
    const [b, y] = outline[(i + 1) % outline.length] as Vec2;
    return sum + a * y - b * z;
  }, 0);
  if (!(Math.abs(twice) > 0)) throw new Error(`${id}: its side has no area`);
  return twice > 0 ? outline : [...outline].reverse();
};

const nearest = (corners: readonly Vec2[], [a, z]: Vec2): Vec2 => {
  const away = (corner: Vec2): number => Math.abs(corner[0] - a) + Math.abs(corner[1] - z);
  return corners.reduce((best, corner) => (away(corner) < away(best) ? corner : best));
};

/** Cubic inches. */
export const volumeOf = (solid: Solid): number => solid.volume();

/** Along the roof's axes. */
export const boxOf = (solid: Solid): Box => solid.boundingBox();

/** Wood that two solids both lay claim to, cubic inches. */
export const overlap = (a: Solid, b: Solid): number => once(a.intersect(b), volumeOf);

/**
 * Square inches that two solids bear on each other with: what overlaps once `a` went a hair toward `b`, by how far it
 * went. A face that stands square to the push counts in full, a slanting one by its share.
 */
export const contact = (a: Solid, b: Solid, { toward, by = 1e-4 }: Push): number => {
  const [x, y, z] = scale(toward, by / lengthOf(toward));
  return once(a.translate(x, y, z), (pushed) => overlap(pushed, b)) / by;
};

/** Which way, and how far in inches. */
export type Push = { readonly toward: Vec3; readonly by?: number };

/**
 * How far each corner of a timber's top stands out of a plane (+) or inside of it, inches. The top is the flat face that
 * looks the plane's way the most. Told in the plane's own frame, where single precision is of what is left over.
 */
export const heightsAbovePlane = (timber: Timber, plane: Plane): readonly number[] =>
  once(inFrameOf(plane, solidOf(timber)), topCorners);

/** How large the box is that a timber fits in when it lies square to a plane: level across, along the slope, off it. */
export const sizesInPlane = (timber: Timber, plane: Plane): Vec3 =>
  once(inFrameOf(plane, solidOf(timber)), (turned) => {
    const { min, max } = boxOf(turned);
    return sub(max, min);
  });

/** Turned so that the plane is level at 0, the solid's middle over where that is counted from. Not held. */
const inFrameOf = (plane: Plane, solid: Solid): Solid => {
  const up = scale(plane.normal, 1 / lengthOf(plane.normal));
  const reach = plane.reach / lengthOf(plane.normal);
  const [u, v] = acrossOf(up);
  const middle = middleOf(boxOf(solid));
  const rows: readonly Vec3[] = [u, v, up];
  const columns = [0, 1, 2].flatMap((i) => [...rows.map((row) => row[i] as number), 0]);
  return solid.transform([...columns, -dot(u, middle), -dot(v, middle), -reach, 1] as Matrix);
};

type Matrix = Parameters<Solid['transform']>[0];

const middleOf = ({ min, max }: Box): Vec3 => [
  (min[0] + max[0]) / 2,
  (min[1] + max[1]) / 2,
  (min[2] + max[2]) / 2,
];

/** Two unit directions in a plane, so that with its normal they are right-handed. */
const acrossOf = ([x, y, z]: Vec3): readonly [Vec3, Vec3] => {
  const level = Math.sqrt(x * x + y * y);
  const u: Vec3 = level > 0 ? [-y / level, x / level, 0] : [1, 0, 0];
  return [u, cross([x, y, z], u)];
};

/** Triangles that look up alike to this are one face: a quarter of a degree, far over noise and under any bevel. */
const sameTilt = 1e-5;

const topCorners = (solid: Solid): readonly number[] => {
  const { numProp, vertProperties, triVerts } = solid.getMesh();
  const corner = (vertex: number): Vec3 => {
    const at = vertex * numProp;
    return [vertProperties[at], vertProperties[at + 1], vertProperties[at + 2]] as unknown as Vec3;
  };
  const faces = Array.from({ length: triVerts.length / 3 }, (_, i) => [...triVerts.slice(3 * i, 3 * i + 3)]);
  const looksUp = faces.map((face) => tiltOf(face.map(corner)));
  const most = Math.max(...looksUp);
  const top = new Set(faces.filter((_, i) => (looksUp[i] as number) > most - sameTilt).flat());
  return [...top].map((vertex) => corner(vertex)[2]);
};

/** How much a triangle looks up: 1 straight up, 0 to the side, −1 down. */
const tiltOf = ([a, b, c]: readonly Vec3[]): number => {
  if (!a || !b || !c) return -1;
  const normal = cross(sub(b, a), sub(c, a));
  const size = lengthOf(normal);
  return size > 0 ? normal[2] / size : -1;
};
