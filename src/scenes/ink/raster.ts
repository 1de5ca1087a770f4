import { cross, dot, sub, unit, type Vec3 } from '../../core/geometry/vector';
import type { Face, Solid } from '../../present/model/solid';
import { project, type Camera } from './camera';
import type { Mesh, MeshTriangle } from './mesh';

/** One flat thing in the picture: a face of a solid, or a triangle of a rounded body. */
export type Surface = {
  readonly solid: Solid | undefined;
  readonly mesh: Mesh | undefined;
  readonly normal: Vec3;
  readonly triangle: MeshTriangle | undefined;
  readonly point: Vec3;
};

/** What is in front at every sample: depth away from the eye, and which surface. The camera is in samples. */
export type Raster = {
  readonly width: number;
  readonly height: number;
  /** Samples per device pixel, each way. */
  readonly fine: number;
  readonly camera: Camera;
  readonly depth: Float32Array;
  readonly surface: Int32Array;
  readonly surfaces: Surface[];
};

export const nothing = -1;
const infinitelyFar = 1e9;

/** Rasters handed back: a new one of the same size takes over their memory instead of asking for more. */
const spareDepths: Float32Array[] = [];
const spareSurfaces: Int32Array[] = [];
/** Kept at most; ours: an overview, two level views and twice the lights. */
const mostSpare = 28;

/** Nobody may look at a raster again after this. */
export const giveBack = (rasters: readonly Raster[]): void => {
  for (const { depth, surface } of rasters) {
    if (spareDepths.length < mostSpare) spareDepths.push(depth);
    if (surface !== scrap && spareSurfaces.length < mostSpare) spareSurfaces.push(surface);
  }
};

const depthsOf = (length: number): Float32Array => {
  const i = spareDepths.findIndex((spare) => spare.length === length);
  const found = i >= 0 ? spareDepths.splice(i, 1)[0] : undefined;
  return (found ?? new Float32Array(length)).fill(infinitelyFar);
};

const surfacesOf = (length: number): Int32Array => {
  const i = spareSurfaces.findIndex((spare) => spare.length === length);
  const found = i >= 0 ? spareSurfaces.splice(i, 1)[0] : undefined;
  return (found ?? new Int32Array(length)).fill(nothing);
};

export type Frame = { readonly width: number; readonly height: number; readonly fine: number };

/** An empty raster for a picture of that many device pixels. */
export const rasterFor = ({ width, height, fine }: Frame, camera: Camera): Raster => {
  const [w, h] = [Math.ceil(width) * fine, Math.ceil(height) * fine];
  return {
    width: w,
    height: h,
    fine,
    camera: {
      ...camera,
      scale: camera.scale * fine,
      middle: [camera.middle[0] * fine, camera.middle[1] * fine],
    },
    depth: depthsOf(w * h),
    surface: surfacesOf(w * h),
    surfaces: [],
  };
};

/** Lights ask for depth only: all of them write surface numbers into one scrap nobody reads. */
let scrap = new Int32Array(0);

/** A square raster for a light, which keeps depths only. */
export const depthsFor = (cells: number, camera: Camera): Raster => {
  if (scrap.length < cells * cells) scrap = new Int32Array(cells * cells);
  const depth = depthsOf(cells * cells);
  return { width: cells, height: cells, fine: 1, camera, depth, surface: scrap, surfaces: [] };
};

/** The same depths in memory of their own: more can be laid over them. */
export const depthsOver = (under: Raster): Raster => {
  const depth = depthsOf(under.depth.length);
  depth.set(under.depth);
  return { ...under, depth };
};

const facingAway = -1e-6;

export const addSolid = (raster: Raster, solid: Solid): void => {
  for (const face of solid.faces) {
    if (dot(face.normal, raster.camera.away) >= facingAway) continue;
    const id = raster.surfaces.length;
    raster.surfaces.push({
      solid,
      mesh: undefined,
      normal: face.normal,
      triangle: undefined,
      point: face.points[0] as Vec3,
    });
    fillFace(raster, face, id);
  }
};

/** Everything a light sees, whichever way it faces: only depth counts. */
export const addCaster = (raster: Raster, solid: Solid): void => {
  for (const face of solid.faces)
    if (dot(face.normal, raster.camera.away) < facingAway) fillFace(raster, face, 0);
};

const fillFace = (raster: Raster, face: Face, id: number): void => {
  const seen = face.points.map((p) => project(raster.camera, p));
  for (const [a, b, c] of face.triangles)
    fillTriangle(raster, [seen[a] as Vec3, seen[b] as Vec3, seen[c] as Vec3], id);
};

export const addMesh = (raster: Raster, mesh: Mesh): void => {
  for (const triangle of mesh.triangles) {
    const [a, b, c] = triangle;
    const flat = unit(cross(sub(b.p, a.p), sub(c.p, a.p)));
    if (!flat) continue;
    const normal: Vec3 = dot(flat, raster.camera.away) > 0 ? [-flat[0], -flat[1], -flat[2]] : flat;
    const id = raster.surfaces.length;
    raster.surfaces.push({ solid: undefined, mesh, normal, triangle, point: a.p });
    fillTriangle(
      raster,
      [project(raster.camera, a.p), project(raster.camera, b.p), project(raster.camera, c.p)],
      id,
    );
  }
};

/** A rounded body as a light sees it. */
export const addRoundCaster = (raster: Raster, mesh: Mesh): void => {
  for (const [a, b, c] of mesh.triangles)
    fillTriangle(
      raster,
      [project(raster.camera, a.p), project(raster.camera, b.p), project(raster.camera, c.p)],
      0,
    );
};

/** Thinner than this on screen a triangle leaves no samples. */
const sliver = 1e-9;

type Three = readonly [Vec3, Vec3, Vec3];

const downward = ([a, b, c]: Three): Three => {
  if (a[1] <= b[1]) return b[1] <= c[1] ? [a, b, c] : a[1] <= c[1] ? [a, c, b] : [c, a, b];
  return a[1] <= c[1] ? [b, a, c] : b[1] <= c[1] ? [b, c, a] : [c, b, a];
};

/** Row by row between the left and the right edge; depth runs straight over the triangle. */
export const fillTriangle = (raster: Raster, corners: readonly [Vec3, Vec3, Vec3], id: number): void => {
  const [p, q, r] = downward(corners);
  const area = (q[0] - p[0]) * (r[1] - p[1]) - (r[0] - p[0]) * (q[1] - p[1]);
  if (Math.abs(area) < sliver) return;
  const dzdx = ((q[2] - p[2]) * (r[1] - p[1]) - (r[2] - p[2]) * (q[1] - p[1])) / area;
  const dzdy = ((r[2] - p[2]) * (q[0] - p[0]) - (q[2] - p[2]) * (r[0] - p[0])) / area;
  const { width, height, depth, surface } = raster;
  const from = Math.max(0, Math.ceil(p[1] - 0.5));
  const to = Math.min(height - 1, Math.floor(r[1] - 0.5));
  const long = r[1] > p[1] ? (r[0] - p[0]) / (r[1] - p[1]) : 0;
  const upper = q[1] > p[1] ? (q[0] - p[0]) / (q[1] - p[1]) : 0;
  const lower = r[1] > q[1] ? (r[0] - q[0]) / (r[1] - q[1]) : 0;
  for (let y = from; y <= to; y++) {
    const yc = y + 0.5;
    const e1 = p[0] + (yc - p[1]) * long;
    const e2 = yc < q[1] ? p[0] + (yc - p[1]) * upper : q[0] + (yc - q[1]) * lower;
    const x0 = Math.max(0, Math.ceil((e1 < e2 ? e1 : e2) - 0.5));
    const x1 = Math.min(width - 1, Math.floor((e1 < e2 ? e2 : e1) - 0.5));
    let z = p[2] + (x0 + 0.5 - p[0]) * dzdx + (yc - p[1]) * dzdy;
    for (let k = y * width + x0; k <= y * width + x1; k++, z += dzdx)
      if (z < (depth[k] as number)) {
        depth[k] = z;
        surface[k] = id;
      }
  }
};

/** Whether a point is in front, judged over the samples next to it. `bias` in inches. */
export const isSeen = (raster: Raster, seen: Vec3, bias: number): boolean => {
  const x = Math.round(seen[0] - 0.5);
  const y = Math.round(seen[1] - 0.5);
  let free = 0;
  let all = 0;
  for (let j = -1; j <= 1; j++)
    for (let i = -1; i <= 1; i++) {
      if (x + i < 0 || y + j < 0 || x + i >= raster.width || y + j >= raster.height) continue;
      all++;
      if ((raster.depth[(y + j) * raster.width + x + i] as number) >= seen[2] - bias) free++;
    }
  return all > 0 && free >= 4;
};
