import { cross, dot, unit, type Vec3 } from '../../core/geometry/vector';
import type { Solid } from '../../present/model/solid';
import type { Camera, Corner } from './camera';
import type { Mesh } from './mesh';
import { addCaster, addRoundCaster, depthsFor, type Raster } from './raster';

/** What the sun sees, and what a dozen spots of sky see: shadows and contact shade come from these depths. */
export type Lights = { readonly toSun: Vec3; readonly sun: Raster; readonly sky: readonly Raster[] };

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

type Scene = { readonly solids: readonly Solid[]; readonly meshes: readonly Mesh[] };

export const lightsFor = (scene: Scene, corner: Corner): Lights => {
  const toSun = sunFrom(corner);
  const casters = scene.solids.filter((solid) => !solid.shadowless);
  const points = [
    ...casters.flatMap(({ faces }) => [...(faces[0]?.points ?? []), ...(faces[1]?.points ?? [])]),
    ...scene.meshes.flatMap((mesh) => mesh.triangles.slice(0, 4).map(([a]) => a.p)),
  ];
  const sky = Array.from({ length: skySpots }, (_, i): Vec3 => {
    const z = 1 - ((i + 0.5) / skySpots) * 0.93;
    const r = Math.sqrt(1 - z * z);
    return [r * Math.cos(i * golden), r * Math.sin(i * golden), z];
  });
  const seenFrom = (toward: Vec3, cells: number, round: readonly Mesh[]): Raster => {
    const raster = depthsFor(cells, cameraFrom(toward, points, cells));
    for (const solid of casters) addCaster(raster, solid);
    for (const mesh of round) addRoundCaster(raster, mesh);
    return raster;
  };
  // People cast a shadow from the sun; the sky hardly notices them.
  return {
    toSun,
    sun: seenFrom(toSun, sunCells, scene.meshes),
    sky: sky.map((toward) => seenFrom(toward, skyCells, [])),
  };
};

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
  const scale = (cells - 4) / Math.max(wide - left, high - low, 1);
  return { right, up, away, scale, middle: [2 - left * scale, 2 + high * scale], target: [0, 0, 0] };
};
