import { add, dot, scale, sub, type Vec3 } from '../../core/geometry/vector';
import type { Camera } from './camera';

/** A number that runs straight over the picture: value at sample (0, 0) and its steps to the right and down. */
export type Slant = readonly [number, number, number];

export const slantAt = (s: Slant, x: number, y: number): number => s[0] + s[1] * x + s[2] * y;

/** Where in the building the surface lies that is seen at a sample: three slants. */
export type Ground = readonly [Slant, Slant, Slant];

/** A plane through a point, seen by a parallel camera: building position runs straight over the picture. */
export const groundOf = (camera: Camera, point: Vec3, normal: Vec3): Ground => {
  const facing = dot(normal, camera.away);
  const at = (x: number, y: number): Vec3 => {
    const across = scale(camera.right, (x - camera.middle[0]) / camera.scale);
    const over = scale(camera.up, (camera.middle[1] - y) / camera.scale);
    const base = add(camera.target, add(across, over));
    return add(base, scale(camera.away, dot(normal, sub(point, base)) / facing));
  };
  const [o, dx, dy] = [at(0, 0), sub(at(1, 0), at(0, 0)), sub(at(0, 1), at(0, 0))];
  return [
    [o[0], dx[0], dy[0]],
    [o[1], dx[1], dy[1]],
    [o[2], dx[2], dy[2]],
  ];
};

/** How far along a direction, from an origin, the surface lies. */
export const alongSlant = (ground: Ground, direction: Vec3, origin: Vec3): Slant => {
  const part = (i: 0 | 1 | 2): number =>
    ground[0][i] * direction[0] + ground[1][i] * direction[1] + ground[2][i] * direction[2];
  return [part(0) - dot(direction, origin), part(1), part(2)];
};

/** Screen position and depth, in another camera, of the surface this camera sees; moved along its normal by `lift`. */
export const seenBy = (ground: Ground, camera: Camera, lift: Vec3): Ground => {
  const origin = sub(camera.target, lift);
  const x = alongSlant(ground, camera.right, origin);
  const y = alongSlant(ground, camera.up, origin);
  const k = camera.scale;
  return [
    [camera.middle[0] + x[0] * k, x[1] * k, x[2] * k],
    [camera.middle[1] - y[0] * k, -y[1] * k, -y[2] * k],
    alongSlant(ground, camera.away, origin),
  ];
};
