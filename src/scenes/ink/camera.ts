import { cross, type Vec3 } from '../../core/geometry/vector';
import type { Point } from './pencil';

/** A parallel projection: directions to the right, up and away from the eye, pixels per inch, and what lies in the middle. */
export type Camera = {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly away: Vec3;
  readonly scale: number;
  readonly middle: Point;
  readonly target: Vec3;
};

/** Screen x and y, and depth away from the eye in inches. */
export const project = ({ right, up, away, scale, middle, target }: Camera, p: Vec3): Vec3 => {
  const x = p[0] - target[0];
  const y = p[1] - target[1];
  const z = p[2] - target[2];
  return [
    middle[0] + scale * (x * right[0] + y * right[1] + z * right[2]),
    middle[1] - scale * (x * up[0] + y * up[1] + z * up[2]),
    x * away[0] + y * away[1] + z * away[2],
  ];
};

/** Whether two put everything in the same place. */
export const sameCamera = (a: Camera, b: Camera): boolean => {
  const all = ({ right, up, away, scale, middle, target }: Camera): readonly number[] => [
    ...right,
    ...up,
    ...away,
    scale,
    ...middle,
    ...target,
  ];
  const other = all(b);
  return all(a).every((value, i) => value === other[i]);
};

export const onScreen = (camera: Camera, p: Vec3): Point => {
  const [x, y] = project(camera, p);
  return [x, y];
};

/** The four corners one may stand at: the eave side or gable end that mostly faces you. */
export type Corner = 'street' | 'B' | 'yard' | 'A';
export const corners: readonly Corner[] = ['street', 'B', 'yard', 'A'];

/** Degrees turned past square to that side, and tilted down; from the look's tokens. */
const turned = 30;
const tilted = 26;
const radians = Math.PI / 180;

type Lie = Pick<Camera, 'scale' | 'middle' | 'target'>;

export const cornerCamera = (corner: Corner, lie: Lie): Camera => {
  const a = (turned + 90 * corners.indexOf(corner)) * radians;
  const e = tilted * radians;
  const away: Vec3 = [-Math.sin(a) * Math.cos(e), Math.cos(a) * Math.cos(e), -Math.sin(e)];
  const right: Vec3 = [Math.cos(a), Math.sin(a), 0];
  return { ...lie, away, right, up: cross(right, away) };
};

/** Looking level from end A along the ridge: street on the right. */
export const sectionCamera = (lie: Lie): Camera => ({
  ...lie,
  right: [0, -1, 0],
  up: [0, 0, 1],
  away: [1, 0, 0],
});

/** Looking level across the ridge from the street (A on the left) or from the yard (B on the left). */
export const sideCamera = (from: 'street' | 'yard', lie: Lie): Camera => ({
  ...lie,
  right: [from === 'street' ? 1 : -1, 0, 0],
  up: [0, 0, 1],
  away: [0, from === 'street' ? 1 : -1, 0],
});

/** Looking straight down: A on the left, street at the foot, so that it hangs over the side seen from the street. */
export const planCamera = (lie: Lie): Camera => ({
  ...lie,
  right: [1, 0, 0],
  up: [0, 1, 0],
  away: [0, 0, -1],
});
