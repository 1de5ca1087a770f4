import { cross, dot, unit, type Vec3 } from '../../core/geometry/vector';
import type { Solid } from '../../present/model/solid';
import { sameCamera, type Camera, type Corner } from './camera';
import type { Mesh } from './mesh';
import { addCaster, addRoundCaster, depthsFor, depthsOver, type Raster } from './raster';

/** What the sun sees, and what a dozen spots of sky see: shadows and contact shade come from these depths. */
export type Lights = {
  readonly toSun: Vec3;
  readonly sun: Raster;
  readonly sky: readonly Raster[];
  /** Bodies of the site that cast, and the same depths of those alone, the sun's first. */
  readonly casters: readonly Solid[];
  readonly bare: readonly Raster[];
};

/**
 * Toward the sun, by the look's tokens, for somebody at the street corner. It goes round with the corner one stands at, so
 * that in every view top edges are brightest, the near eave next and the gable darkest.
 */
const streetSun: Vec3 = unit([-0.4, -0.52, 0.75]) ?? [0, 0, 1];

export const sunFrom = (corner: Corner): Vec3 => {
  const [x, y, z] = streetSun;
  if (corner === 'B') return [-y, x, z];
  if (corner === 'yard') return [-x, -y, z];
  return corner === 'A' ? [y, -x, z] : streetSun;
};

const sunCells = 1200;
const skyCells = 300;
const skySpots = 10;
/** Turns by the golden angle, radians: spots of sky spread evenly. */
const golden = 2.399963;

type Scene = {
  /** Bodies of the site: they stay for long. */
  readonly solids: readonly Solid[];
  /** What people use and move about. */
  readonly things: readonly Solid[];
  readonly meshes: readonly Mesh[];
};

const casts = ({ shadowless }: Solid): boolean => !shadowless;

const cornersOf = ({ faces }: Solid): readonly Vec3[] => [
  ...(faces[0]?.points ?? []),
  ...(faces[1]?.points ?? []),
];

const skyDirections: readonly Vec3[] = Array.from({ length: skySpots }, (_, i): Vec3 => {
  const z = 1 - ((i + 0.5) / skySpots) * 0.93;
  const r = Math.sqrt(1 - z * z);
  return [r * Math.cos(i * golden), r * Math.sin(i * golden), z];
});

/** `before`: lights of the moment before; depths are taken over where nothing that casts into them changed. */
export const lightsFor = (scene: Scene, corner: Corner, before?: Lights): Lights => {
  const toSun = sunFrom(corner);
  const casters = scene.solids.filter(casts);
  const things = scene.things.filter(casts);
  const stood = [...casters, ...things].flatMap(cornersOf);
  const people = scene.meshes.flatMap((mesh) => mesh.triangles.slice(0, 4).map(([a]) => a.p));
  const stays =
    before?.casters.length === casters.length && casters.every((one, i) => one === before.casters[i]);
  const bare: Raster[] = [];
  const seenFrom = (toward: Vec3, cells: number, round: readonly Mesh[]): Raster => {
    const points = round.length > 0 ? [...stood, ...people] : stood;
    const camera = cameraFrom(toward, points, cells);
    const known = stays ? before.bare[bare.length] : undefined;
    const under =
      known && sameCamera(known.camera, camera) ? known : castBy(casters, depthsFor(cells, camera));
    bare.push(under);
    if (things.length === 0 && round.length === 0) return under;
    const raster = depthsOver(under);
    for (const mesh of round) addRoundCaster(raster, mesh);
    return castBy(things, raster);
  };
  // People cast a shadow from the sun; the sky hardly notices them.
  return {
    toSun,
    sun: seenFrom(toSun, sunCells, scene.meshes),
    sky: skyDirections.map((toward) => seenFrom(toward, skyCells, [])),
    casters,
    bare,
  };
};

const castBy = (casters: readonly Solid[], raster: Raster): Raster => {
  for (const solid of casters) addCaster(raster, solid);
  return raster;
};

/** The rasters of lights that are no longer needed, but for those that later ones took over. */
export const rastersOf = (lights: Lights, later?: Lights): readonly Raster[] => {
  const all = new Set([lights.sun, ...lights.sky, ...lights.bare]);
  if (later) for (const raster of [later.sun, ...later.sky, ...later.bare]) all.delete(raster);
  return [...all];
};

/** A light's picture reaches to whole steps of so much, inches; ours: shade stays where it is while people go about. */
const wholeSteps = 36;

/** A camera that sees every point from that direction, as large as the raster allows. */
const cameraFrom = (toward: Vec3, points: readonly Vec3[], cells: number): Camera => {
  const away: Vec3 = [-toward[0], -toward[1], -toward[2]];
  const right = unit(cross(away, Math.abs(away[2]) < 0.95 ? [0, 0, 1] : [0, 1, 0])) ?? [1, 0, 0];
  const up = cross(right, away);
  let [left, low, wide, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const p of points) {
    const [x, y] = [dot(p, right), dot(p, up)];
    if (x < left) left = x;
    if (x > wide) wide = x;
    if (y < low) low = y;
    if (y > high) high = y;
  }
  [left, low] = [Math.floor(left / wholeSteps) * wholeSteps, Math.floor(low / wholeSteps) * wholeSteps];
  [wide, high] = [Math.ceil(wide / wholeSteps) * wholeSteps, Math.ceil(high / wholeSteps) * wholeSteps];
  const scale = (cells - 4) / Math.max(wide - left, high - low, 1);
  return { right, up, away, scale, middle: [2 - left * scale, 2 + high * scale], target: [0, 0, 0] };
};
