import { css } from '../ink/color';
import { palettes } from '../ink/palette';
import { drawPiece, edgePiece, toX, toY, type Scaled } from '../closeUp/board';
import type { Into } from '../closeUp/drawJoint';
import { drawTicks } from '../closeUp/steel';
import { drawHops, drawInchHeld } from './drawStart';
import type { ReadingPicture } from './readingPicture';
import { partsOf } from './scaledFor';
import { within } from './within';

/** How wide the blade is, inches: a common 1-inch tape. */
const blade = 1;
const foot = 12;

type Taped = Extract<ReadingPicture, { tool: 'tape' }>;

/** A tape that is hooked alone; held otherwise, with its other end small beside it. */
export const drawTape = (view: Scaled, into: Into, picture: Taped): void => {
  const { whole, near } = partsOf(into, picture);
  const { from } = picture;
  if (from !== undefined)
    within(view.ink, whole, () =>
      from === 'inch' ? drawInchHeld(view, whole) : drawHops(view, whole, into.words.sum),
    );
  within(view.ink, near, () => drawBlade(view, near, picture));
};

/** The blade over the work's edge: the number to read is where the edge cuts the ticks. Hook far to the left. */
const drawBlade = (view: Scaled, area: Into['area'], { shown, from }: Taped): void => {
  const { k } = view;
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
  const deep = deepOf(far, area.y);
  fillBlade(far, { from: Math.max(left - 1, 0), to: right + 1, deep });
  drawTicks({
    view: far,
    zero: [0, 0],
    way: 'right',
    from: Math.max(0, left),
    to: right,
    tick: 0.42 * deep,
    grow: -1,
    numbers: () => '',
  });
  numbers(far, { left, right, deep });
  if (left < 0.2 && from !== 'inch') hook(far);
};

/** Where a tape's numbers stand over the edge of its blade, as shares of its width: inches, then feet and inches. */
const stand = { inches: 0.29, feet: 0.55, top: 0.64 };

/** Pixels to an inch across the blade: less than along it where the picture is too low for both rows of numbers. */
const deepOf = ({ k, zero }: Scaled, top: number): number => Math.min(k, (zero[1] - top) / stand.top);

type Strip = { readonly from: number; readonly to: number; readonly deep: number };

const fillBlade = (view: Scaled, { from, to, deep }: Strip): void => {
  const { ink, k, ratio, theme, zero } = view;
  const [x, y, wide, high] = [toX(view, from), zero[1] - blade * deep, (to - from) * k, blade * deep];
  ink.save();
  ink.shadowColor = 'rgba(40,26,10,.45)';
  ink.shadowBlur = 10 * ratio;
  ink.shadowOffsetY = 7 * ratio;
  ink.fillStyle = theme === 'night' ? '#cfc6a4' : '#f4ecd0';
  ink.fillRect(x, y, wide, high);
  ink.restore();
  const shine = ink.createLinearGradient(0, y, 0, zero[1]);
  shine.addColorStop(0, 'rgba(60,50,20,.22)');
  shine.addColorStop(0.35, 'rgba(255,255,255,.35)');
  shine.addColorStop(1, 'rgba(60,50,20,.05)');
  ink.fillStyle = shine;
  ink.fillRect(x, y, wide, high);
};

type Sight = { readonly left: number; readonly right: number; readonly deep: number };

/** Inches from the hook stand left of their tick over the short ones, feet and inches above, as tapes have it. None is cut. */
const numbers = (view: Scaled, { left, right, deep }: Sight): void => {
  const { ink, k, ratio, theme, zero } = view;
  ink.textBaseline = 'middle';
  ink.textAlign = 'right';
  for (let inch = Math.max(1, Math.ceil(left)); inch <= Math.floor(right); inch++) {
    const x = toX(view, inch) - 0.03 * k;
    const size = Math.max(18 * ratio, Math.min(32 * ratio, 0.2 * deep));
    ink.font = `700 ${size.toFixed(1)}px "Barlow Condensed", "Arial Narrow", sans-serif`;
    const wide = ink.measureText(String(inch)).width;
    if (x - wide < toX(view, left)) continue;
    const y = zero[1] - stand.inches * deep;
    ink.fillStyle = theme === 'night' ? '#c9c0a0' : '#efe7cb';
    ink.fillRect(x - wide - 2 * ratio, y - size / 2, wide + 3 * ratio, size);
    ink.fillStyle = '#18222b';
    ink.fillText(String(inch), x, y);
    if (inch < foot) continue;
    ink.fillStyle = '#832e08';
    ink.font = `600 ${Math.max(13 * ratio, 0.12 * deep).toFixed(1)}px "Barlow Condensed", "Arial Narrow", sans-serif`;
    ink.fillText(feetText(inch), x, zero[1] - stand.feet * deep);
  }
};

const feetText = (inch: number): string => {
  const rest = inch % foot;
  return rest === 0 ? `${String(inch / foot)}'` : `${String(Math.floor(inch / foot))}' ${String(rest)}"`;
};

const hook = (view: Scaled): void => {
  const { ink, k, ratio, theme } = view;
  ink.fillStyle = '#6d8093';
  ink.strokeStyle = css(palettes[theme].steelEdge);
  ink.lineWidth = 1.2 * ratio;
  ink.fillRect(toX(view, -0.07), toY(view, blade * 0.95), 0.07 * k, blade * 1.5 * k);
  ink.strokeRect(toX(view, -0.07), toY(view, blade * 0.95), 0.07 * k, blade * 1.5 * k);
};
