import { drawMeasure, measureOf } from '../ink/fraction';
import { css, type Rgb } from '../ink/color';
import type { Ink, Point } from '../ink/pencil';
import { drawingFont } from '../overview/axisMark';
import { tickAt, type Ruled } from '../closeUp/steel';
import { toX, toY } from '../closeUp/board';

const engraved: Rgb = [24, 34, 43];

/** How far from the ends of a scale a number is no longer whole, CSS pixels. Ours. */
const clear = 10;

/** Height of a stacked fraction over the size it is set in. */
const stack = 1.75;
/** Sizes its numbers are set in, CSS pixels. Ours. */
const sizes = { least: 11, most: 18 };

/** Where on the picture numbers may stand along the scale, and how deep the ruled strip is across it. Pixels. */
export type Room = { readonly from: number; readonly to: number; readonly deep: number };

/** Every quarter inch named behind its tick: a scale of which little is in sight tells where it is. */
export const nameQuarters = (ruled: Ruled, { from, to, deep }: Room): void => {
  const { view, zero, way, tick, grow } = ruled;
  const { ink, ratio } = view;
  const left = deep - tick;
  const size = Math.max(
    sizes.least * ratio,
    Math.min(sizes.most * ratio, left / (way === 'right' ? stack : 2)),
  );
  const off = (tick + left / 2) * grow;
  for (let i = Math.ceil(ruled.from * 4 - 1e-9); i <= Math.floor(ruled.to * 4 + 1e-9); i++) {
    const at = tickAt(ruled, i / 4);
    // A scale that starts at its own end has no number there.
    if (i === 0 && ruled.from === 0) continue;
    if (at < from + clear * ratio || at > to - clear * ratio) continue;
    const spot: Point = way === 'right' ? [at, toY(view, zero[1]) + off] : [toX(view, zero[0]) + off, at];
    const lettering = { size, color: engraved, weight: 700 };
    if (i === 0) zeroAt(ink, spot, size);
    else drawMeasure(ink, measureOf(i / 4, false), { at: spot, lettering });
  }
};

const zeroAt = (ink: Ink, [x, y]: Point, size: number): void => {
  ink.font = drawingFont(size, 700);
  ink.fillStyle = css(engraved);
  ink.textAlign = 'center';
  ink.textBaseline = 'middle';
  ink.fillText('0', x, y);
};
