import type { Vec3 } from '../../core/geometry/vector';
import type { Tone } from './palette';

/** A rounded body: triangles with a direction at each corner, so that light runs smoothly over it. */
export type Corner3 = { readonly p: Vec3; readonly n: Vec3 };
export type MeshTriangle = readonly [Corner3, Corner3, Corner3];
export type Mesh = {
  readonly id: string;
  readonly tone: Tone;
  readonly triangles: readonly MeshTriangle[];
  /** Where another tone lies on it (a vest's bands). */
  readonly band?: { readonly tone: Tone; readonly covers: (p: Vec3, n: Vec3) => boolean };
};
