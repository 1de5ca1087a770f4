import { dot, lerp, type Vec3 } from '../../core/geometry/vector';
import type { Solid } from '../../present/model/solid';
import { project } from './camera';
import type { Rgb } from './color';
import { mix, smooth } from './noise';
import { pencil, type Ink, type Point } from './pencil';
import { isSeen, type Raster } from './raster';

/** How an edge is drawn: width in device pixels, strength; undefined leaves it out. */
export type EdgeLook = { readonly width: number; readonly alpha: number; readonly color: Rgb };
/** `outer`: one of its two faces is seen, the other not. */
export type EdgeStyle = (solid: Solid, outer: boolean) => EdgeLook | undefined;

export type Run = { readonly from: Point; readonly to: Point; readonly a: Vec3; readonly b: Vec3 };

/** Samples between two looks along a line; gaps shorter than this many device pixels are closed, shorter runs dropped. */
const step = 1.6;
const closes = 3.2;
const dropped = 2.2;

/** The parts of a line in the building that are not hidden, in device pixels. */
export const seenRuns = (
  raster: Raster,
  { a, b }: { readonly a: Vec3; readonly b: Vec3 },
  bias: number,
): readonly Run[] => {
  const [p, q] = [project(raster.camera, a), project(raster.camera, b)];
  const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
  const steps = Math.max(1, Math.ceil(length / step));
  const parts: [number, number][] = [];
  let start = -1;
  for (let i = 0; i <= steps; i++) {
    const t = i / steps;
    const seen = isSeen(raster, [mix(p[0], q[0], t), mix(p[1], q[1], t), mix(p[2], q[2], t)], bias);
    if (seen && start < 0) start = t;
    if ((!seen || i === steps) && start >= 0) {
      const end = seen ? t : (i - 1) / steps;
      const last = parts[parts.length - 1];
      if (last && (start - last[1]) * length < closes * raster.fine) last[1] = end;
      else if (end > start) parts.push([start, end]);
      start = -1;
    }
  }
  const at = (t: number): Point => [mix(p[0], q[0], t) / raster.fine, mix(p[1], q[1], t) / raster.fine];
  return parts
    .filter(([s, e]) => (e - s) * length > dropped * raster.fine)
    .map(([s, e]) => ({ from: at(s), to: at(e), a: lerp(a, b, s), b: lerp(a, b, e) }));
};

const facing = -1e-6;
const straight = 0.985;

/** Pencil edges of solids, hidden where the model hides them. */
export const drawEdges = (ink: Ink, raster: Raster, { solids, style, bias }: Drawn): void => {
  for (const solid of solids)
    for (const { a, b, n1, n2 } of solid.edges) {
      const [f1, f2] = [dot(n1, raster.camera.away) < facing, dot(n2, raster.camera.away) < facing];
      if ((!f1 && !f2) || dot(n1, n2) > straight) continue;
      const look = style(solid, f1 !== f2);
      if (!look) continue;
      for (const run of seenRuns(raster, { a, b }, bias)) {
        if (solid.fade) fadingRun(ink, run, { look, fade: solid.fade });
        else pencil(ink, { ...run, ...look });
      }
    }
};

export type Drawn = { readonly solids: readonly Solid[]; readonly style: EdgeStyle; readonly bias: number };

/** How much sooner a line runs out than the face it bounds, inches; ours. */
const fadesSooner = 14;

type Fading = { readonly look: EdgeLook; readonly fade: NonNullable<Solid['fade']> };

const fadingRun = (ink: Ink, { from, to, a, b }: Run, { look, fade }: Fading): void => {
  const parts = Math.abs(a[2] - b[2]) < 0.5 ? 1 : 8;
  const sooner = Math.min(fadesSooner, (fade.full - fade.gone) * 0.4);
  for (let i = 0; i < parts; i++) {
    const [t0, t1] = [i / parts, (i + 1) / parts];
    const left = smooth(fade.gone - sooner, fade.full, mix(a[2], b[2], (t0 + t1) / 2));
    if (left < 0.02) continue;
    pencil(ink, {
      from: [mix(from[0], to[0], t0), mix(from[1], to[1], t0)],
      to: [mix(from[0], to[0], t1), mix(from[1], to[1], t1)],
      width: look.width,
      alpha: look.alpha * left * left,
      color: look.color,
    });
  }
};
