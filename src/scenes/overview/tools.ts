import { add, cross, dot, lengthOf, lerp, scale, sub, unit, type Vec3 } from '../../core/geometry/vector';
import type { HandTool } from '../../present/model/task';
import type { Mesh } from '../ink/mesh';
import type { Tone } from '../ink/palette';
import { limb } from './bodies';

/** Tools as small bodies between the hand that holds them and what they touch. Inches. */

const norm = (v: Vec3): Vec3 => unit(v) ?? [0, 0, 1];

/** How a tool is held: from what it touches back to the hand, toward whoever holds it and up by so many degrees. */
type Hold = { readonly length: number; readonly rise: number };

const holds: Readonly<Record<HandTool, Hold>> = {
  hammer: { length: 10.5, rise: 24 },
  nailer: { length: 8.5, rise: 38 },
  puller: { length: 10, rise: 52 },
  tape: { length: 2.2, rise: 40 },
  rule: { length: 4.5, rise: 40 },
  level: { length: 0, rise: 0 },
  square: { length: 5, rise: 30 },
  reel: { length: 2.6, rise: 40 },
  saw: { length: 13, rise: 34 },
  pencil: { length: 4, rise: 55 },
  bar: { length: 17, rise: 50 },
  tagLine: { length: 0, rise: 0 },
};

const headOut = 2.6;

/** Where the hand's grip is while the tool touches a point; `toward` points level to whoever holds it. */
export const gripOf = (tool: HandTool | undefined, works: Vec3, toward: Vec3): Vec3 => {
  if (!tool) return works;
  const { length, rise } = holds[tool];
  const a = (rise * Math.PI) / 180;
  const back = add(scale(norm([toward[0], toward[1], 0]), Math.cos(a)), [0, 0, Math.sin(a)]);
  const head = tool === 'hammer' ? scale(faceWay(scale(back, -1)), -headOut) : ([0, 0, 0] as Vec3);
  return add(add(works, head), scale(back, length));
};

/** A hammer's face looks down, square to its handle. */
const faceWay = (handle: Vec3): Vec3 => norm(sub([0, 0, -1], scale(handle, -handle[2])));

type Held = { readonly id: string; readonly hand: Vec3; readonly works: Vec3 };
type Part = {
  readonly tone: Tone;
  readonly from: Vec3;
  readonly to: Vec3;
  readonly r: number;
  readonly end?: number;
};

/** The tool's parts as bodies, and the point of it that touches: where it truly is, given where the hand came to. */
export const toolIn = (
  tool: HandTool,
  { id, hand, works }: Held,
  toward: Vec3,
): { readonly meshes: readonly Mesh[]; readonly tip: Vec3 } => {
  const wanted = gripOf(tool, works, toward);
  const tip = add(works, sub(hand, wanted));
  const way = norm(sub(tip, hand));
  const parts = partsOf[tool]({ hand, tip, way });
  return {
    tip,
    meshes: parts.map(({ tone, from, to, r, end = r }) => ({
      id,
      tone,
      triangles: limb({ from, to, radii: [r, end], sides: 6 }),
    })),
  };
};

type Posed = { readonly hand: Vec3; readonly tip: Vec3; readonly way: Vec3 };
type Maker = (posed: Posed) => readonly Part[];

const past = (from: Vec3, way: Vec3, by: number): Vec3 => add(from, scale(way, by));

const hammerParts: Maker = ({ hand, tip }) => {
  const toHead = sub(tip, hand);
  const length = Math.sqrt(Math.max(1, dot(toHead, toHead) - headOut * headOut));
  // The handle and the head are square to each other: the head hangs from the handle's end by its own length.
  const side = norm(cross(toHead, [0, 0, 1]));
  const straight = norm(toHead);
  const down = norm(cross(straight, side)).map((v) => v) as unknown as Vec3;
  const dip = down[2] < 0 ? down : scale(down, -1);
  const far = lengthOf(toHead);
  const eye = add(hand, add(scale(straight, (length * length) / far), scale(dip, (-length * headOut) / far)));
  const handle = norm(sub(eye, hand));
  const face = norm(sub(tip, eye));
  return [
    { tone: 'belt', from: past(hand, handle, -2.8), to: eye, r: 0.75, end: 0.6 },
    { tone: 'steel', from: past(eye, face, -0.8), to: past(eye, face, headOut), r: 0.95, end: 1.1 },
    {
      tone: 'steel',
      from: past(eye, face, -0.8),
      to: past(past(eye, face, -3), handle, -1),
      r: 0.8,
      end: 0.35,
    },
  ];
};

const plain =
  (tone: Tone, r: number, end: number): Maker =>
  ({ hand, tip, way }) => [{ tone, from: past(hand, way, -1.5), to: tip, r, end }];

const partsOf: Readonly<Record<HandTool, Maker>> = {
  hammer: hammerParts,
  nailer: ({ hand, tip, way }) => [
    { tone: 'hat', from: past(hand, way, 1), to: past(tip, way, -2.5), r: 2.1, end: 1.6 },
    { tone: 'steel', from: past(tip, way, -2.5), to: tip, r: 0.9, end: 0.6 },
    { tone: 'glass', from: past(tip, way, -3), to: add(past(hand, way, 0.5), [0, 0, -5]), r: 0.9, end: 1.1 },
  ],
  puller: plain('steel', 0.6, 0.5),
  tape: ({ hand }) => [{ tone: 'hat', from: add(hand, [0, 0, -0.6]), to: add(hand, [0, 0, 1.6]), r: 1.7 }],
  rule: plain('steel', 0.5, 0.5),
  level: () => [],
  square: ({ hand, tip, way }) => {
    const leg = norm(cross(way, [0, 0, 1]));
    return [
      { tone: 'steel', from: hand, to: tip, r: 0.6, end: 0.6 },
      { tone: 'steel', from: tip, to: past(tip, leg, 9), r: 0.5, end: 0.4 },
    ];
  },
  reel: ({ hand }) => [
    { tone: 'lumber', from: add(hand, [0, 0, -2.2]), to: add(hand, [0, 0, 2.4]), r: 1.5, end: 1.5 },
  ],
  saw: ({ hand, tip, way }) => [
    { tone: 'belt', from: past(hand, way, -1.8), to: past(hand, way, 2), r: 1.5, end: 1.5 },
    { tone: 'steel', from: past(hand, way, 2), to: past(tip, way, 3), r: 1.5, end: 0.7 },
    { tone: 'steel', from: add(past(hand, way, 2), [0, 0, -1.4]), to: past(tip, way, 2), r: 1, end: 0.5 },
  ],
  pencil: plain('hat', 0.45, 0.25),
  bar: ({ hand, tip, way }) => [{ tone: 'steel', from: past(hand, way, -8), to: tip, r: 0.75, end: 0.6 }],
  tagLine: () => [],
};

/** A tape, line, hose or stick stretched between two points. */
export const stretched = (
  id: string,
  [from, to]: readonly [Vec3, Vec3],
  { tone, r, sag = 0 }: { readonly tone: Tone; readonly r: number; readonly sag?: number },
): Mesh => {
  const count = sag > 0 ? 6 : 1;
  const at = (i: number): Vec3 => {
    const t = i / count;
    return add(lerp(from, to, t), [0, 0, -4 * sag * t * (1 - t)]);
  };
  return {
    id,
    tone,
    triangles: Array.from({ length: count }, (_, i) =>
      limb({ from: at(i), to: at(i + 1), radii: [r, r], sides: 5 }),
    ).flat(),
  };
};
