import { lerp, type Vec3 } from '../../core/geometry/vector';
import type { Shown } from '../../present/model/scheme';
import { schemeOf } from '../../present/model/scheme';
import { onScreen, type Camera } from '../ink/camera';
import { css, type Rgb } from '../ink/color';
import { seenRuns } from '../ink/edges';
import type { Palette } from '../ink/palette';
import type { Ink } from '../ink/pencil';
import type { Raster } from '../ink/raster';
import { pinAt, slungAt } from './machine';

/** Lifting gear: the sling choked round the ridge, its legs, the hook and the fall line. */
export type Gear = {
  readonly ink: Ink;
  readonly raster: Raster;
  readonly camera: Camera;
  readonly palette: Palette;
  readonly ratio: number;
};

export const drawGear = (gear: Gear, shown: Shown, tagHand?: Vec3): void => {
  const { site, pose, level } = shown;
  const slung = slungAt(shown);
  if (!slung) return;
  const { hook, chokes, y, z } = slung;
  const { length } = schemeOf(shown);
  const slack = site.ridge !== undefined && site.ridge.on === 'machine' && heldAtEnds(shown);
  for (const x of chokes) {
    drawLeg(gear, { from: [x, y, z + 0.6], hook, slack });
    drawChoke(gear, { x, y, top: z, depth: pose.ridge ? level.plan.ridge.depth : 1.5 });
  }
  if (site.sling?.tagLine)
    band(gear, tagLine([tagHand && tagHand[0] < length / 2 ? 6 : length - 6, y, z - 3], tagHand), {
      width: 1.6,
      color: gear.palette.ink2,
    });
  drawHook(gear, hook, pinAt(slung));
};

const heldAtEnds = ({ site }: Shown): boolean =>
  Object.entries(site.joints).filter(([id, so]) => id.startsWith('ridge:') && (so?.nails ?? 0) > 0).length >=
  4;

/** From the end of the load to the hand that guides it, else hanging down free. */
const tagLine = (from: Vec3, hand: Vec3 | undefined): readonly Vec3[] =>
  Array.from({ length: 24 }, (_, i): Vec3 => {
    if (hand) {
      const p = lerp(from, hand, i / 23);
      return [p[0], p[1], p[2] - 9 * Math.sin((Math.PI * i) / 23)];
    }
    const t = i / 23;
    return [from[0] + 34 * t, from[1] - 30 * t, from[2] - 62 * t * t - 6 * Math.sin(t * 5)];
  });

type Leg = { readonly from: Vec3; readonly hook: Vec3; readonly slack: boolean };

const drawLeg = (gear: Gear, { from, hook, slack }: Leg): void => {
  const sag = slack ? 7 : 0.6;
  const points = Array.from({ length: 25 }, (_, i): Vec3 => {
    const t = i / 24;
    const p = lerp(from, hook, t);
    const hang = Math.sin(Math.PI * t) * sag * (1 - t * 0.25);
    return [p[0] + (from[0] < hook[0] ? -1 : 1) * hang * 0.35, p[1], p[2] - hang * 0.9];
  });
  webbing(gear, points);
};

const drawChoke = (
  gear: Gear,
  { x, y, top, depth }: { x: number; y: number; top: number; depth: number },
): void => {
  const near = gear.camera.away[1] > 0 ? -0.8 : 0.8;
  for (const dx of [0, 2.6]) {
    webbing(gear, [
      [x + dx, y + near, top - depth - 0.1],
      [x + dx, y + near, top + 0.1],
      [x + dx, y - near, top + 0.1],
    ]);
  }
};

const webbing = (gear: Gear, points: readonly Vec3[]): void => {
  band(gear, points, { width: 4.4, color: gear.palette.slingEdge });
  band(gear, points, { width: 2.8, color: gear.palette.sling });
};

type Look = { readonly width: number; readonly color: Rgb };

/** Shorter pieces than this on screen, device pixels, would be lost when what is hidden is left out. */
const shortest = 6;

const thinned = (camera: Camera, points: readonly Vec3[]): readonly Vec3[] => {
  // What is bent at a few points keeps them.
  if (points.length < 5) return points;
  const kept: Vec3[] = [];
  let last: readonly number[] | undefined;
  points.forEach((point, i) => {
    const [x, y] = onScreen(camera, point);
    const far = last ? Math.hypot(x - (last[0] ?? 0), y - (last[1] ?? 0)) : Infinity;
    if (far < shortest && i < points.length - 1) return;
    if (far < shortest && kept.length > 1) kept.pop();
    kept.push(point);
    last = [x, y];
  });
  return kept;
};

const band = (gear: Gear, line: readonly Vec3[], { width, color }: Look): void => {
  const { ink, raster, ratio, camera } = gear;
  const points = thinned(camera, line);
  ink.save();
  ink.strokeStyle = css(color);
  ink.lineWidth = width * ratio;
  ink.lineCap = 'round';
  ink.lineJoin = 'round';
  ink.beginPath();
  points.slice(1).forEach((b, i) => {
    for (const run of seenRuns(raster, { a: points[i] as Vec3, b }, 1.1)) {
      ink.moveTo(run.from[0], run.from[1]);
      ink.lineTo(run.to[0], run.to[1]);
    }
  });
  ink.stroke();
  ink.restore();
};

/** A lifeline or the like: safety gear, drawn thin in its own color. */
export const drawLifeline = (gear: Gear, [from, to]: readonly [Vec3, Vec3]): void => {
  const points = Array.from({ length: 17 }, (_, i): Vec3 => {
    const t = i / 16;
    const p = lerp(from, to, t);
    return [p[0], p[1], p[2] - Math.sin(Math.PI * t) * 5];
  });
  band(gear, points, { width: 2.6, color: gear.palette.slingEdge });
  band(gear, points, { width: 1.4, color: gear.palette.sling });
};

/** Block, eye and hook in pixels of a desk screen, hung on its two falls from the boom's pin. */
const drawHook = ({ ink, camera, ratio, palette }: Gear, hook: Vec3, pin: Vec3): void => {
  const [x, y] = onScreen(camera, hook);
  const long = y - onScreen(camera, pin)[1];
  ink.save();
  ink.translate(x, y);
  const size = ratio * Math.min(1, Math.max(0.6, camera.scale / ratio / 2.7));
  ink.scale(size, size);
  ink.lineCap = 'round';
  falls(ink, palette, long / size);
  const metal = ink.createLinearGradient(-9, 0, 9, 0);
  metal.addColorStop(0, '#9db2c4');
  metal.addColorStop(0.45, '#5d7488');
  metal.addColorStop(1, '#33424f');
  ink.fillStyle = metal;
  ink.strokeStyle = '#1f2932';
  ink.lineWidth = 1;
  ink.beginPath();
  ink.roundRect(-8, -36, 16, 17, 4);
  ink.fill();
  ink.stroke();
  ink.fillStyle = '#c9d6e0';
  ink.beginPath();
  ink.arc(0, -28, 3, 0, 7);
  ink.fill();
  ink.stroke();
  for (const [width, color] of [
    [5.2, '#1f2932'],
    [3.3, '#8fa5b8'],
  ] as const) {
    ink.lineWidth = width;
    ink.strokeStyle = color;
    ink.beginPath();
    ink.moveTo(0, -19);
    ink.lineTo(0, -12);
    ink.arc(0, -5, 7, -Math.PI / 2, Math.PI * 0.86);
    ink.stroke();
  }
  ink.restore();
};

/** `long`: from the hook up to what they hang from, in the hook's own pixels. */
const falls = (ink: Ink, palette: Palette, long: number): void => {
  for (const [width, color] of [
    [2.2, '#2b3641'],
    [0.9, css(palette.tones.steel[1]?.[1] ?? palette.pencil)],
  ] as const)
    for (const dx of [-1.5, 1.5]) {
      ink.strokeStyle = color;
      ink.lineWidth = width;
      ink.beginPath();
      ink.moveTo(dx, -34);
      ink.lineTo(dx, -long);
      ink.stroke();
    }
};
