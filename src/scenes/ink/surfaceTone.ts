import { cross, dot, sub, type Vec3 } from '../../core/geometry/vector';
import { toneTable } from './color';
import { boardFor, type Board, type Strip } from './grain';
import { clamp, hash, mix, noise2, smooth } from './noise';
import { palettes, type Palette, type Theme, type Tone } from './palette';
import { alongSlant, slantAt, type Ground, type Slant } from './plane';
import type { Surface } from './raster';
import type { Solid } from '../../present/model/solid';

/** The color of the sample in hand: every toner writes it here, so that no sample makes an object of its own. */
export const tint = new Float32Array(3);

/** Writes the color for a given light at a sample into `tint`. */
export type Toner = (light: number, x: number, y: number) => void;

export type Grained = { readonly theme: Theme; readonly amount: number; readonly pitch: number };

const tables = new Map<string, Float32Array>();
const tableOf = (theme: Theme, tone: Tone): Float32Array => {
  const key = `${theme}.${tone}`;
  const known = tables.get(key);
  if (known) return known;
  const table = toneTable(palettes[theme].tones[tone]);
  tables.set(key, table);
  return table;
};

const look = (table: Float32Array, light: number): void => {
  const at = Math.round(clamp(light) * 255) * 3;
  tint[0] = table[at] as number;
  tint[1] = table[at + 1] as number;
  tint[2] = table[at + 2] as number;
};

/** How one surface takes color: wood by its grain, sheets by their strands, steel plain, people in soft tones. */
export const tonerOf = (surface: Surface, ground: Ground, grained: Grained): Toner => {
  const { solid, mesh } = surface;
  if (solid?.material === 'lumber') return lumber(solid, { surface, ground }, grained);
  if (solid && solid.material !== 'steel') return sheet(solid, ground, grained.theme);
  if (mesh) return body(surface, ground, grained.theme);
  const table = tableOf(grained.theme, solid?.role === 'boom' ? 'steel' : 'alu');
  return (light) => {
    look(table, light);
  };
};

type Lies = { readonly surface: Surface; readonly ground: Ground };

const lumber = (solid: Solid, { surface, ground }: Lies, { theme, amount, pitch }: Grained): Toner => {
  const { along, across, through, origin } = solid.frame;
  const palette: Palette = palettes[theme];
  const table = tableOf(theme, 'lumber');
  const board: Board = boardFor(solid.seed, pitch);
  const [nl, nt, na] = [along, through, across].map((d) => Math.abs(dot(surface.normal, d))) as [
    number,
    number,
    number,
  ];
  const isEnd = nl > 0.75;
  const strip: Strip = isEnd ? board.end : nt >= na ? board.face : board.edge;
  const s = alongSlant(ground, isEnd ? across : along, origin);
  const t = alongSlant(ground, isEnd ? through : nt >= na ? across : through, origin);
  const shift = isEnd ? 0 : (hash(solid.seed, 3) - 0.5) * 60;
  const tone = (hash(solid.seed, 9) - 0.5) * 0.07 - (isEnd ? 0.05 : 0);
  const strength = amount * (isEnd ? 1.5 : 1);
  const [gr, gg, gb] = palette.grain;
  const { width, height, fine, dark, fiber } = strip;
  return (light, x, y) => {
    const u = Math.floor((s[0] + s[1] * x + s[2] * y + shift) * fine[0] + width / 2);
    const v = Math.floor((t[0] + t[1] * x + t[2] * y) * fine[1] + height / 2);
    const at = (v < 0 ? 0 : v >= height ? height - 1 : v) * width + (u < 0 ? 0 : u >= width ? width - 1 : u);
    look(table, light + tone + ((fiber[at] as number) / 255 - 0.5) * 0.05);
    const k = ((dark[at] as number) / 255) * strength;
    tint[0] = mix(tint[0] as number, gr, k);
    tint[1] = mix(tint[1] as number, gg, k);
    tint[2] = mix(tint[2] as number, gb, k);
  };
};

const sheet = (solid: Solid, ground: Ground, theme: Theme): Toner => {
  const { along, across, origin } = solid.frame;
  const table = tableOf(theme, solid.material === 'sheath' ? 'sheath' : 'panel');
  const s: Slant = alongSlant(ground, along, origin);
  const t: Slant = alongSlant(ground, across, origin);
  return (light, x, y) => {
    const [l, a] = [slantAt(s, x, y), slantAt(t, x, y)];
    const strands =
      noise2(l * 0.16 + 7, a * 0.9, solid.seed) - 0.5 + (noise2(l * 0.6, a * 0.5, solid.seed + 1) - 0.5);
    look(table, light - 0.02 + strands * 0.05);
  };
};

/** Three clear tones with soft steps. */
const stepped = (light: number): number => {
  const low = mix(0.3, 0.58, smooth(0.38, 0.46, light));
  return mix(light, mix(low, 0.9, smooth(0.66, 0.78, light)), 0.6);
};

const body = ({ mesh, triangle }: Surface, ground: Ground, theme: Theme): Toner => {
  const table = tableOf(theme, mesh?.tone ?? 'shirt');
  const band = mesh?.band;
  if (!band)
    return (light) => {
      look(table, stepped(light));
    };
  const other = tableOf(theme, band.tone);
  const normal = triangle ? triangle[0].n : ([0, 0, 1] as Vec3);
  return (light, x, y) => {
    const p: Vec3 = [slantAt(ground[0], x, y), slantAt(ground[1], x, y), slantAt(ground[2], x, y)];
    look(band.covers(p, normal) ? other : table, stepped(light));
  };
};

/** Directions at the corners of a rounded triangle, run straight over the picture. */
export const normalSlants = (surface: Surface, ground: Ground): Ground | undefined => {
  const { triangle } = surface;
  if (!triangle) return undefined;
  const [a, b, c] = triangle;
  const [e1, e2] = [sub(b.p, a.p), sub(c.p, a.p)];
  const flat = cross(e1, e2);
  const area = dot(flat, flat);
  if (area < 1e-12) return undefined;
  const wb = alongSlant(ground, cross(e2, flat), a.p);
  const wc = alongSlant(ground, cross(flat, e1), a.p);
  const part = (i: 0 | 1 | 2): Slant => {
    const [db, dc] = [(b.n[i] - a.n[i]) / area, (c.n[i] - a.n[i]) / area];
    return [a.n[i] + wb[0] * db + wc[0] * dc, wb[1] * db + wc[1] * dc, wb[2] * db + wc[2] * dc];
  };
  return [part(0), part(1), part(2)];
};
