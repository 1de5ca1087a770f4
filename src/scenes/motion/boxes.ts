import type { Vec3 } from '../../core/geometry/vector';
import type { Solid } from '../../present/model/solid';
import { onScreen, type Camera } from '../ink/camera';
import type { Area } from '../overview/fit';

/** Boxes on a picture, device pixels, whole numbers. */

/** What is drawn of a body may reach so far past its corners, device pixels. */
const margin = 5;

/** The box round bodies, cut to the picture; undefined where none of it is on the picture. */
export const boxOf = (
  camera: Camera,
  bodies: readonly Solid[],
  picture: { readonly width: number; readonly height: number },
): Area | undefined =>
  boxRound(
    camera,
    bodies.flatMap(({ faces }) => faces.flatMap(({ points }) => points)),
    picture,
  );

export const boxRound = (
  camera: Camera,
  points: readonly Vec3[],
  { width, height }: { readonly width: number; readonly height: number },
): Area | undefined => {
  let [left, top, right, foot] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const point of points) {
    const [x, y] = onScreen(camera, point);
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x);
    foot = Math.max(foot, y);
  }
  const x = Math.max(0, Math.floor(left - margin));
  const y = Math.max(0, Math.floor(top - margin));
  const wide = Math.min(width, Math.ceil(right + margin)) - x;
  const high = Math.min(height, Math.ceil(foot + margin)) - y;
  return wide > 0 && high > 0 ? { x, y, width: wide, height: high } : undefined;
};
