import { dot, scale, type Vec3 } from '../../core/geometry/vector';
import type { Solid } from '../../present/model/solid';
import { sameCamera, type Camera } from './camera';
import type { Lights } from './light';
import { groundOf, seenBy, type Ground } from './plane';
import type { Raster, Surface } from './raster';
import { leastWeight, skyCell, skyDepth, skyLift, sunLift } from './surfaceLight';

/** Where light may have changed between two moments: told for a sample, and never missed. */

/** Whether light may be another at a sample. */
export type MayDiffer = (x: number, y: number) => boolean;

/** Cells of a light in which depth changed, by tiles of so many cells, with those that look at them. */
type Stale = {
  readonly light: Raster;
  readonly before: Raster;
  readonly lift: number;
  readonly across: number;
  /** Undefined: it sees from elsewhere, all of it is another. */
  readonly tiles: Uint8Array | undefined;
};

/** Tiles of 4 by 4 cells: a sample asks for no cell farther off than in the next tile. */
const shift = 2;
/** A body's outline is moved by the lift before it is looked up: less than so many cells. */
const lifted = 4;

const staleIn = (before: Raster, light: Raster, lift: number): Stale | undefined => {
  if (before === light) return undefined;
  const { width, height, depth } = light;
  const [across, down] = [(width >> shift) + 1, (height >> shift) + 1];
  if (!sameCamera(before.camera, light.camera)) return { light, before, lift, across, tiles: undefined };
  const then = before.depth;
  const changed = new Uint8Array(across * down);
  let any = false;
  for (let y = 0, k = 0; y < height; y++)
    for (let x = 0; x < width; x++, k++)
      if (depth[k] !== then[k]) {
        any = true;
        changed[(y >> shift) * across + (x >> shift)] = 1;
      }
  return any ? { light, before, lift, across, tiles: withNext(changed, across, down) } : undefined;
};

/** Tiles that are marked, and those next to them. */
const withNext = (marked: Uint8Array, across: number, down: number): Uint8Array => {
  const all = new Uint8Array(marked.length);
  for (let y = 0; y < down; y++)
    for (let x = 0; x < across; x++) {
      if (marked[y * across + x] === 0) continue;
      for (let j = Math.max(0, y - 1); j <= Math.min(down - 1, y + 1); j++)
        for (let i = Math.max(0, x - 1); i <= Math.min(across - 1, x + 1); i++) all[j * across + i] = 1;
    }
  return all;
};

const always: MayDiffer = () => true;

/** Asked once for each surface: how to tell whether its light may differ; undefined where it cannot. */
export const differenceOf = (
  before: Lights,
  after: Lights,
): ((surface: Surface, camera: Camera) => MayDiffer | undefined) => {
  if (before === after) return () => undefined;
  const turned = before.toSun.some((value, i) => value !== after.toSun[i]);
  const sun = staleIn(before.sun, after.sun, sunLift);
  const sky = after.sky.flatMap((light, i) => staleIn(before.sky[i] as Raster, light, skyLift) ?? []);
  const meets = new Map<Stale, Map<Solid, boolean>>();
  const reached = (stale: Stale, solid: Solid): boolean => {
    const known = meets.get(stale) ?? new Map<Solid, boolean>();
    meets.set(stale, known);
    const answer = known.get(solid) ?? reaches(stale, solid);
    known.set(solid, answer);
    return answer;
  };
  return ({ solid, normal, point }, camera) => {
    if (turned || !solid) return always;
    const lit = sky.filter((stale) => -dot(normal, stale.light.camera.away) > leastWeight);
    if (sun && dot(normal, after.toSun) > 0) lit.push(sun);
    const near = lit.filter((stale) => reached(stale, solid));
    if (near.length === 0) return undefined;
    if (near.some(({ tiles }) => !tiles)) return always;
    const ground = groundOf(camera, point, normal);
    return anyOf(near.map((stale) => (stale === sun ? sunAsked : skyAsked)(stale, ground, normal)));
  };
};

const anyOf = (all: readonly MayDiffer[]): MayDiffer => {
  const [only] = all;
  if (only && all.length === 1) return only;
  return (x, y) => {
    for (const one of all) if (one(x, y)) return true;
    return false;
  };
};

/** Whether a body lies where cells of a light changed: round its corners at most. */
const reaches = ({ light, across, tiles }: Stale, { faces }: Solid): boolean => {
  if (!tiles) return true;
  const { right, up, scale: k, middle, target } = light.camera;
  const [tx, ty] = [dot(target, right), dot(target, up)];
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { points } of faces)
    for (const p of points) {
      const x = middle[0] + k * (dot(p, right) - tx);
      const y = middle[1] - k * (dot(p, up) - ty);
      if (x < x0) x0 = x;
      if (x > x1) x1 = x;
      if (y < y0) y0 = y;
      if (y > y1) y1 = y;
    }
  const tile = (v: number, most: number): number => Math.min(most - 1, Math.max(0, Math.floor(v))) >> shift;
  const [i0, i1] = [tile(x0 - lifted, light.width), tile(x1 + lifted, light.width)];
  const [j0, j1] = [tile(y0 - lifted, light.height), tile(y1 + lifted, light.height)];
  for (let j = j0; j <= j1; j++) for (let i = i0; i <= i1; i++) if (tiles[j * across + i] === 1) return true;
  return false;
};

const sunAsked = ({ light, lift, across, tiles }: Stale, ground: Ground, normal: Vec3): MayDiffer => {
  const [u, v] = seenBy(ground, light.camera, scale(normal, lift));
  const [right, low] = [light.width - 1, light.height - 1];
  return (x, y) => {
    const i = Math.floor(u[0] + u[1] * x + u[2] * y);
    const j = Math.floor(v[0] + v[1] * x + v[2] * y);
    const at =
      ((j < 0 ? 0 : j > low ? low : j) >> shift) * across + ((i < 0 ? 0 : i > right ? right : i) >> shift);
    return tiles?.[at] === 1;
  };
};

/** A spot of sky is asked for one cell only: light differs where it is now hidden and was not, or the other way round. */
const skyAsked = ({ light, before, lift }: Stale, ground: Ground, normal: Vec3): MayDiffer => {
  const view = seenBy(ground, light.camera, scale(normal, lift));
  return (x, y) => {
    const sample = [x, y] as const;
    const cell = skyCell(light, view, sample);
    if (cell < 0) return false;
    const [now, then] = [light.depth[cell] as number, before.depth[cell] as number];
    if (now === then) return false;
    const deep = skyDepth(view, sample);
    return now >= deep !== then >= deep;
  };
};
