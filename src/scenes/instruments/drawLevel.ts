import { bubbleOff } from '../../present/bubble';
import { css } from '../ink/color';
import { palettes } from '../ink/palette';
import { drawPiece, edgePiece, toX, toY, type Scaled } from '../closeUp/board';
import type { Into } from '../closeUp/drawJoint';
import type { ReadingPicture } from './readingPicture';
import { drawPlate, drawTicks } from '../closeUp/steel';

type Lying = Extract<ReadingPicture, { tool: 'level' }>;

/**
 * The level twice: lying as found, its bubble off by what it shows; and its low end lifted until the bubble centers, a
 * rule in the space. One over the other where the picture is high, side by side where it is not.
 */
export const drawLevel = (view: Scaled, into: Into, level: Lying): void => {
  const { area, ratio } = into;
  const { x, y, width, height } = area;
  if (height >= stackedFrom * ratio) {
    const high = Math.min(110 * ratio, height * 0.2);
    drawVial(view, { x: x + width * 0.12, y: y + height * 0.06, width: width * 0.76, height: high }, level);
    drawLift(view, { x, y: y + height * 0.3, width, height: height * 0.7 }, level);
    return;
  }
  drawLift(view, { x: x + width * 0.44, y, width: width * 0.56, height }, level);
  const high = Math.min(height * 0.5, 52 * ratio);
  drawVial(view, { x: x + 4 * ratio, y: y + (height - high) / 2, width: width * 0.4, height: high }, level);
};

/** From this height on both lie one over the other, CSS pixels. Ours. */
const stackedFrom = 190;

const drawVial = (
  { ink, ratio, theme }: Scaled,
  { x, y, width, height }: Into['area'],
  { shown, long }: Lying,
): void => {
  drawPlate(ink, { x, y, width, height }, ratio);
  const [cx, cy] = [x + width / 2, y + height / 2];
  const [half, r] = [Math.min(width * 0.3, height * 1.4), height * 0.27];
  const glass = ink.createLinearGradient(0, cy - r, 0, cy + r);
  glass.addColorStop(0, '#c9d394');
  glass.addColorStop(0.5, '#eef3c8');
  glass.addColorStop(1, '#a9b66c');
  ink.fillStyle = glass;
  ink.strokeStyle = '#2f3d4a';
  ink.lineWidth = 1.4 * ratio;
  ink.beginPath();
  ink.roundRect(cx - half, cy - r, half * 2, r * 2, r * 0.9);
  ink.fill();
  ink.stroke();
  const bubble = half * 0.44;
  const off = Math.max(-half + bubble * 0.6, Math.min(half - bubble * 0.6, bubbleOff(shown, long) * bubble));
  ink.fillStyle = 'rgba(255,255,248,.95)';
  ink.strokeStyle = 'rgba(84,98,44,.9)';
  ink.lineWidth = 1.6 * ratio;
  ink.beginPath();
  ink.ellipse(cx + off, cy - r * 0.14, bubble / 2, r * 0.62, 0, 0, 7);
  ink.fill();
  ink.stroke();
  ink.fillStyle = css(palettes[theme === 'night' ? 'day' : theme].ink);
  for (const side of [-1, 1]) ink.fillRect(cx + (side * bubble) / 2 - ratio, cy - r, 2 * ratio, r * 2);
};

/** Inches of the rule that should be in sight over the work's edge; thickness drawn of the level. Ours. */
const seen = 0.6;
const thick = 0.5;
/** A sixteenth never gets smaller than can be judged, as long as the space under the level and this much over it show. */
const finest = { scale: 192, over: 0.1 };

/** The low end of the level over the work's edge, and the rule that says how much was put under it. */
const drawLift = (view: Scaled, area: Into['area'], { shown, long }: Lying): void => {
  const { ink } = view;
  const gap = Math.abs(shown);
  const right = shown < 0;
  const room = area.height * 0.8;
  const judged = Math.min(finest.scale * view.ratio, room / (gap + finest.over));
  const k = Math.min(view.k, Math.max(judged, room / Math.max(seen, gap + thick + 0.06)));
  const low: Scaled = {
    ...view,
    k,
    zero: [area.x + area.width * (right ? 0.62 : 0.38), area.y + area.height * 0.84],
  };
  ink.save();
  ink.beginPath();
  ink.rect(area.x, area.y, area.width, area.height);
  ink.clip();
  const work = [
    [-8, 0],
    [8, 0],
    [8, -3],
    [-8, -3],
  ] as const;
  drawPiece(low, { outline: work, seed: 24, grain: [1, 0], light: 0.84 });
  edgePiece(low, work, 1.8);
  fillLevel(low, right ? 1 : -1, { gap, long });
  standRule(low, area, right);
  ink.restore();
};

/** The level's body, its low end at zero, the rest away from the rule. */
const fillLevel = (
  low: Scaled,
  way: 1 | -1,
  { gap, long }: { readonly gap: number; readonly long: number },
): void => {
  const { ink, ratio } = low;
  const tilt = gap / long;
  const [x0, x1] = [toX(low, 0), toX(low, -way * 9)];
  ink.save();
  ink.beginPath();
  ink.moveTo(x0, toY(low, gap));
  ink.lineTo(x1, toY(low, gap - 9 * tilt));
  ink.lineTo(x1, toY(low, gap - 9 * tilt + thick));
  ink.lineTo(x0, toY(low, gap + thick));
  ink.closePath();
  const steel = ink.createLinearGradient(0, toY(low, gap + thick), 0, toY(low, gap));
  steel.addColorStop(0, '#b9c8d4');
  steel.addColorStop(0.3, '#7f95a8');
  steel.addColorStop(1, '#4f6478');
  ink.fillStyle = steel;
  ink.shadowColor = 'rgba(40,26,10,.5)';
  ink.shadowBlur = 8 * ratio;
  ink.shadowOffsetY = 5 * ratio;
  ink.fill();
  ink.restore();
  ink.strokeStyle = '#26313b';
  ink.lineWidth = 1.5 * ratio;
  ink.stroke();
};

/** A rule stood on the work beside the level's end, as high as the picture lets it be. */
const standRule = (low: Scaled, area: Into['area'], right: boolean): void => {
  const { ink, k, ratio, zero } = low;
  const at = right ? 0.08 : -0.08;
  const high = Math.min(0.95, (zero[1] - area.y - 4 * ratio) / k);
  const wide = 0.5;
  drawPlate(
    ink,
    { x: toX(low, right ? at : at - wide), y: toY(low, high), width: wide * k, height: high * k },
    ratio,
  );
  drawTicks({
    view: low,
    zero: [at, 0],
    way: 'up',
    from: 1 / 16,
    to: high - 0.03,
    tick: 0.26 * k,
    grow: right ? 1 : -1,
  });
};
