import type { Nailing } from '../../core/site/state';
import { css } from '../ink/color';
import { palettes } from '../ink/palette';
import type { Point } from '../ink/pencil';
import { toPoint, toX, toY, type Scaled } from './board';

/** Nails that can be counted: tacks stand proud with a shadow, driven ones lie flush. Inches. */

export const drawHead = (view: Scaled, at: Point, proud: boolean): void => {
  const { ink, ratio, k } = view;
  const [x, y] = toPoint(view, at);
  const r = Math.max(3.4 * ratio, 0.13 * k);
  ink.save();
  if (proud) {
    ink.shadowColor = 'rgba(40,26,10,.6)';
    ink.shadowBlur = 4 * ratio;
    ink.shadowOffsetX = 0.5 * r;
    ink.shadowOffsetY = 0.6 * r;
  }
  const shine = ink.createRadialGradient(x - r * 0.36, y - r * 0.36, r * 0.1, x, y, r * 1.1);
  shine.addColorStop(0, proud ? '#f4f8fa' : '#b9c6d0');
  shine.addColorStop(0.5, proud ? '#9fb2c2' : '#8496a5');
  shine.addColorStop(1, '#4a5c6c');
  ink.fillStyle = shine;
  ink.beginPath();
  ink.arc(x, y, proud ? r : r * 0.92, 0, 7);
  ink.fill();
  ink.restore();
  ink.strokeStyle = proud ? '#26313b' : 'rgba(38,24,10,.75)';
  ink.lineWidth = (proud ? 1 : 1.4) * ratio;
  ink.stroke();
};

/** A nail seen from its side, driven to the right from the face at u, or to the left; what is inside the wood is dashed. */
export type SideNail = {
  readonly face: number;
  readonly w: number;
  readonly proud: number;
  readonly length: number;
  readonly way?: 'left';
};

export const drawSideNail = (view: Scaled, nail: SideNail): void => {
  if (nail.way !== 'left') return drawDriven(view, nail);
  const { ink } = view;
  ink.save();
  ink.translate(2 * toX(view, nail.face), 0);
  ink.scale(-1, 1);
  drawDriven(view, nail);
  ink.restore();
};

const drawDriven = (view: Scaled, { face, w, proud, length }: SideNail): void => {
  const { ink, ratio, k, theme } = view;
  const y = toY(view, w);
  const [x0, xf, x1] = [toX(view, face - proud), toX(view, face), toX(view, face - proud + length)];
  const half = Math.max(1.4 * ratio, 0.058 * k);
  const head = half * 2.35;
  const metal = ink.createLinearGradient(0, y - half, 0, y + half);
  metal.addColorStop(0, '#dfe8ee');
  metal.addColorStop(0.5, '#8ba0b2');
  metal.addColorStop(1, '#46586a');
  ink.save();
  ink.fillStyle = metal;
  ink.strokeStyle = '#2a3641';
  ink.lineWidth = ratio;
  if (proud > 0) {
    ink.fillRect(x0, y - half, xf - x0, half * 2);
    ink.strokeRect(x0, y - half, xf - x0, half * 2);
  }
  ink.beginPath();
  ink.roundRect(x0 - 4 * ratio, y - head, 5 * ratio, head * 2, 1.5 * ratio);
  ink.fill();
  ink.stroke();
  ink.setLineDash([7 * ratio, 4 * ratio]);
  ink.strokeStyle = css(palettes[theme].edge, 0.9);
  ink.lineWidth = 1.2 * ratio;
  ink.beginPath();
  ink.moveTo(xf + 2, y - half);
  ink.lineTo(x1 - half * 2.2, y - half);
  ink.lineTo(x1, y);
  ink.lineTo(x1 - half * 2.2, y + half);
  ink.lineTo(xf + 2, y + half);
  ink.stroke();
  ink.restore();
};

/** Which of a joint's nails stand proud: the tacks come last. */
export const nailsOf = (joint: Nailing | undefined): readonly ('proud' | 'home')[] => [
  ...Array.from({ length: joint?.nails ?? 0 }, () => 'home' as const),
  ...Array.from({ length: joint?.tacks ?? 0 }, () => 'proud' as const),
];
