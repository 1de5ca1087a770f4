import { css } from '../ink/color';
import { palettes } from '../ink/palette';
import { drawPiece, edgePiece, toX, toY, type Scaled } from '../closeUp/board';
import type { Into } from '../closeUp/drawJoint';
import { drawTicks } from '../closeUp/steel';

/** How wide the blade is, inches: a common 1-inch tape. */
const blade = 1;
const foot = 12;

/** The blade over the work's edge: the number to read is where the edge cuts the ticks. Hook far to the left. */
export const drawTape = (view: Scaled, { area }: Into, shown: number): void => {
  const { ink, k, ratio, theme } = view;
  const far: Scaled = { ...view, zero: [view.zero[0] - shown * k, view.zero[1]] };
  const [left, right] = [(area.x - far.zero[0]) / k, (area.x + area.width - far.zero[0]) / k];
  const outline = [
    [left - 1, 1.55],
    [shown, 1.55],
    [shown, -1],
    [left - 1, -1],
  ] as const;
  drawPiece(far, { outline, seed: 43, grain: [1, 0], light: 0.78 });
  edgePiece(far, outline, 1.8);
  ink.save();
  ink.shadowColor = 'rgba(40,26,10,.45)';
  ink.shadowBlur = 10 * ratio;
  ink.shadowOffsetY = 7 * ratio;
  ink.fillStyle = theme === 'night' ? '#cfc6a4' : '#f4ecd0';
  ink.fillRect(
    toX(far, Math.max(left - 1, 0)),
    toY(far, blade),
    (right - Math.max(left - 1, 0) + 1) * k,
    blade * k,
  );
  ink.restore();
  const shine = ink.createLinearGradient(0, toY(far, blade), 0, toY(far, 0));
  shine.addColorStop(0, 'rgba(60,50,20,.22)');
  shine.addColorStop(0.35, 'rgba(255,255,255,.35)');
  shine.addColorStop(1, 'rgba(60,50,20,.05)');
  ink.fillStyle = shine;
  ink.fillRect(
    toX(far, Math.max(left - 1, 0)),
    toY(far, blade),
    (right - Math.max(left - 1, 0) + 1) * k,
    blade * k,
  );
  drawTicks({
    view: far,
    zero: [0, 0],
    way: 'right',
    from: Math.max(0, left),
    to: right,
    tick: 0.42 * k,
    grow: -1,
    numbers: () => '',
  });
  numbers(far, Math.max(1, Math.floor(left)), Math.ceil(right));
  if (left < 0.2) hook(far);
};

/** Inches from the hook stand left of their tick over the short ones, feet and inches above, as tapes have it. */
const numbers = (view: Scaled, from: number, to: number): void => {
  const { ink, k, ratio, theme } = view;
  ink.textBaseline = 'middle';
  ink.textAlign = 'right';
  for (let inch = from; inch <= to; inch++) {
    const x = toX(view, inch) - 0.05 * k;
    ink.font = `700 ${Math.max(20 * ratio, 0.2 * k).toFixed(1)}px "Barlow Condensed", "Arial Narrow", sans-serif`;
    const wide = ink.measureText(String(inch)).width;
    ink.fillStyle = theme === 'night' ? '#c9c0a0' : '#efe7cb';
    ink.fillRect(x - wide - 0.02 * k, toY(view, 0.4), wide + 0.03 * k, 0.21 * k);
    ink.fillStyle = '#18222b';
    ink.fillText(String(inch), x, toY(view, 0.29));
    if (inch < foot) continue;
    ink.fillStyle = '#832e08';
    ink.font = `600 ${Math.max(13 * ratio, 0.12 * k).toFixed(1)}px "Barlow Condensed", "Arial Narrow", sans-serif`;
    const rest = inch % foot;
    ink.fillText(
      rest === 0 ? `${String(inch / foot)}'` : `${String(Math.floor(inch / foot))}' ${String(rest)}"`,
      x,
      toY(view, 0.55),
    );
  }
};

const hook = (view: Scaled): void => {
  const { ink, k, ratio, theme } = view;
  ink.fillStyle = '#6d8093';
  ink.strokeStyle = css(palettes[theme].steelEdge);
  ink.lineWidth = 1.2 * ratio;
  ink.fillRect(toX(view, -0.07), toY(view, blade * 0.95), 0.07 * k, blade * 1.5 * k);
  ink.strokeRect(toX(view, -0.07), toY(view, blade * 0.95), 0.07 * k, blade * 1.5 * k);
};
