import type { NailTool } from '../../present/model/actSeen';
import type { Ink } from '../ink/pencil';

/** Tools as they strike, in inches about the point where they touch the work; y runs down. */

const wood = ['#d9b27a', '#a9743f'] as const;
const metal = ['#cfdbe4', '#5d7488'] as const;
const outline = '#26313b';

const washed = (ink: Ink, colors: readonly [string, string], high: number): CanvasGradient => {
  const wash = ink.createLinearGradient(0, -high, 0, high);
  wash.addColorStop(0, colors[0]);
  wash.addColorStop(1, colors[1]);
  return wash;
};

type Bar = {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
  readonly round: number;
  readonly colors: readonly [string, string];
};

const bar = (ink: Ink, { x, y, wide, high, round, colors }: Bar): void => {
  ink.save();
  ink.translate(x, y);
  ink.fillStyle = washed(ink, colors, high);
  ink.beginPath();
  ink.roundRect(0, -high / 2, wide, high, round);
  ink.fill();
  ink.stroke();
  ink.restore();
};

/** The face at the origin, the handle running off to the right. */
const hammer = (ink: Ink): void => {
  bar(ink, { x: 1, y: -2.6, wide: 13, high: 1.2, round: 0.5, colors: wood });
  ink.save();
  ink.rotate(-Math.PI / 2);
  bar(ink, { x: 0, y: 1.4, wide: 5, high: 1.6, round: 0.5, colors: metal });
  ink.restore();
};

const nailer = (ink: Ink): void => {
  ink.save();
  ink.rotate(-Math.PI / 2);
  bar(ink, { x: 0, y: 0, wide: 2.4, high: 1.3, round: 0.2, colors: ['#3f4b56', '#2a333b'] });
  bar(ink, { x: 2, y: 0, wide: 7.5, high: 3.6, round: 1, colors: metal });
  ink.restore();
  bar(ink, { x: 1.2, y: -6.4, wide: 6.5, high: 2.2, round: 0.9, colors: ['#3f4b56', '#2a333b'] });
  ink.save();
  ink.rotate(0.5);
  bar(ink, { x: 0.4, y: -1.8, wide: 8.5, high: 1.6, round: 0.3, colors: ['#59666f', '#3a464f'] });
  ink.restore();
};

const puller = (ink: Ink): void => {
  bar(ink, { x: 0, y: -0.7, wide: 12, high: 0.9, round: 0.4, colors: metal });
  ink.save();
  ink.rotate(Math.PI / 3);
  bar(ink, { x: -0.4, y: 0, wide: 2.4, high: 0.9, round: 0.4, colors: metal });
  ink.restore();
};

const bodies: Readonly<Record<NailTool, (ink: Ink) => void>> = { hammer, nailer, puller };

/** How far a tool is raised, turned and drawn back through one stroke; 0 and 1 touch the work. */
const lie = (tool: NailTool, t: number): { readonly turn: number; readonly y: number } => {
  if (tool === 'nailer') return { turn: 0, y: -2.2 * Math.max(0, 1 - t * 4) };
  if (tool === 'puller') return { turn: -0.9 * t, y: 0 };
  // Raised in the first two thirds, down in the last.
  const up = t < 0.66 ? Math.sin((t / 0.66) * (Math.PI / 2)) : 1 - ((t - 0.66) / 0.34) ** 2;
  return { turn: 0.95 * up, y: 0 };
};

/** Turned about where the hand holds it. */
const grip: Readonly<Record<NailTool, readonly [number, number]>> = {
  hammer: [13, -2.6],
  nailer: [5, -6.4],
  puller: [0, 0],
};

export type Stroke = {
  readonly tool: NailTool;
  /** Through one stroke, 0…1. */
  readonly t: number;
  /** Where it touches, and pixels to an inch. */
  readonly at: readonly [number, number];
  readonly scale: number;
  /** Held from the left instead of the right. */
  readonly mirrored: boolean;
};

export const drawStroke = (ink: Ink, { tool, t, at, scale, mirrored }: Stroke): void => {
  const { turn, y } = lie(tool, t);
  const [gx, gy] = grip[tool];
  ink.save();
  ink.translate(at[0], at[1]);
  ink.scale(mirrored ? -scale : scale, scale);
  ink.translate(gx, y + gy);
  ink.rotate(turn);
  ink.translate(-gx, -gy);
  ink.strokeStyle = outline;
  ink.lineWidth = 1.1 / scale;
  ink.lineJoin = 'round';
  bodies[tool](ink);
  ink.restore();
};
