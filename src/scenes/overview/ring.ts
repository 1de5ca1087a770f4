import type { Vec3 } from '../../core/geometry/vector';
import { onScreen, type Camera } from '../ink/camera';
import { chalkLine } from '../ink/chalk';
import type { Palette } from '../ink/palette';
import type { Ink } from '../ink/pencil';

/** What a chalk ring is drawn with: where, and how large a joint is on screen. */
export type Ringed = {
  readonly camera: Camera;
  readonly palette: Palette;
  readonly ratio: number;
  readonly at: Vec3;
};

/** Around a joint, inches, but never smaller than this on screen, CSS pixels. Ours. */
const around = 13;
const smallest = 13;

/** A ring of chalk drawn by hand, once around and a little more, over all that lies there. */
export const drawRing = (ink: Ink, { camera, palette, ratio, at }: Ringed): void => {
  const [x, y] = onScreen(camera, at);
  const radius = Math.max(around * camera.scale, smallest * ratio);
  ink.lineCap = 'round';
  chalkLine(ink, { palette, ratio, casing: 4.2, chalk: 2.2 }, () => {
    for (let i = 0; i <= turns; i++) {
      const a = (i / turns) * Math.PI * 2.25 - 2;
      const r = radius * (1 + 0.1 * (i / turns) + 0.03 * Math.sin(3 * a));
      ink.lineTo(x + r * 1.06 * Math.cos(a), y + r * 0.94 * Math.sin(a));
    }
  });
};
const turns = 64;
