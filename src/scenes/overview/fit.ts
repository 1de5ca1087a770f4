import type { Vec3 } from '../../core/geometry/vector';
import { cornerCamera, project, type Camera, type Corner } from '../ink/camera';
import type { Scheme } from '../../present/model/scheme';

/** A part of a picture in device pixels. */
export type Area = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

/** Pixels per inch on a desk, device ratio 1; from the look's tokens. Bigger roofs come out smaller. */
const largest = 3.2;

/** A hard hat of somebody who stands on the joists, inches over them; ours. */
const headHigh = 73;

/** What has to be in the picture: tails, ridge with room for a hook, who stands at it, and a stretch of wall. */
const extremes = (
  { half, yard, length, top, common, tieDepth }: Scheme,
  { overhang, hook }: Around,
): readonly Vec3[] => {
  const eave = half + overhang;
  const low = common.heightAbovePlate - common.plumbCutLength - overhang * 0.75;
  const far = yard === half ? eave : yard;
  const heads = [6, length - 6].flatMap((x) => [-13, 13].map((y): Vec3 => [x, y, tieDepth + headHigh]));
  return [
    ...heads,
    ...[-eave, far].flatMap((y): Vec3[] => [
      [-8, y, low - 16],
      [length + 16, y, low - 16],
      [-8, 0, top + 12],
      [length + 12, 0, top + 12],
      [length / 2, 0, top + hook],
    ]),
  ];
};

type Around = { readonly overhang: number; readonly hook: number };

export type Fit = {
  readonly scheme: Scheme;
  readonly overhang: number;
  /** Room over the ridge: more where a machine's hook may hang. Inches. */
  readonly hook: number;
  readonly corner: Corner;
  readonly area: Area;
  readonly ratio: number;
};

/** The camera for a corner that shows the whole roof in the area. It depends on the plan only, so it never jumps. */
export const fittedCamera = ({ scheme, overhang, hook, corner, area, ratio }: Fit): Camera => {
  const target: Vec3 = [scheme.length / 2, (scheme.yard - scheme.half) / 2, scheme.top * 0.35];
  const unitCamera = cornerCamera(corner, { scale: 1, middle: [0, 0], target });
  const seen = extremes(scheme, { overhang, hook }).map((p) => project(unitCamera, p));
  const xs = seen.map(([x]) => x);
  const ys = seen.map(([, y]) => y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = Math.min(largest * ratio, area.width / (right - left), area.height / (bottom - top));
  return cornerCamera(corner, {
    scale,
    target,
    middle: [
      area.x + area.width / 2 - ((left + right) / 2) * scale,
      area.y + area.height / 2 - ((top + bottom) / 2) * scale,
    ],
  });
};
