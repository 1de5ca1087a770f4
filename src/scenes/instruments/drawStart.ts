import { css } from '../ink/color';
import { palettes } from '../ink/palette';
import { toX, toY, type Scaled } from '../closeUp/board';
import { drawTicks } from '../closeUp/steel';
import { drawingFont } from '../overview/axisMark';
import type { Area } from '../overview/fit';
import { put, slab } from './drawAcross';

/** The other end of a tape: held with its inch mark on the edge, or put from rafter to rafter. Small, beside the reading. */

/** Inches seen across, the work's edge from the left, and how deep the blade lies, shares of the picture. Ours. */
const small = { across: 3.2, edge: 1.6, low: 0.72, deep: 0.58 };

const blade = (view: Scaled, [from, to]: readonly [number, number], deep: number): void => {
  const { ink, k, theme, ratio } = view;
  ink.save();
  ink.shadowColor = 'rgba(40,26,10,.45)';
  ink.shadowBlur = 6 * ratio;
  ink.shadowOffsetY = 4 * ratio;
  ink.fillStyle = theme === 'night' ? '#cfc6a4' : '#f4ecd0';
  ink.fillRect(toX(view, from), toY(view, deep), (to - from) * k, deep * k);
  ink.restore();
};

const hook = (view: Scaled, at: number, deep: number): void => {
  const { ink, k, ratio, theme } = view;
  const wide = Math.max(0.07 * k, 3 * ratio);
  ink.fillStyle = '#6d8093';
  ink.strokeStyle = css(palettes[theme].steelEdge);
  ink.lineWidth = 1.1 * ratio;
  ink.fillRect(toX(view, at) - wide, toY(view, deep), wide, deep * 1.3 * k);
  ink.strokeRect(toX(view, at) - wide, toY(view, deep), wide, deep * 1.3 * k);
};

/** The hook hangs free; the inch mark lies on the edge. */
export const drawInchHeld = (view: Scaled, area: Area): void => {
  const { x, y, width, height } = area;
  const k = width / small.across;
  const held: Scaled = { ...view, k, zero: [x + small.edge * k, y + height * small.low] };
  const { ink, ratio } = held;
  const deep = Math.min(1, (height * small.deep) / k);
  put(held, { outline: slab([0, 6], [-6, 1.5]), seed: 43, grain: [1, 0], light: 0.78 });
  blade(held, [-1, 6], deep);
  drawTicks({
    view: held,
    zero: [-1, 0],
    way: 'right',
    from: 1 / 16,
    to: 2.7,
    tick: 0.42 * deep * k,
    grow: -1,
    numbers: () => '',
  });
  hook(held, -1, deep);
  ink.fillStyle = '#18222b';
  ink.font = drawingFont(Math.min(22 * ratio, 0.5 * deep * k), 700);
  ink.textAlign = 'right';
  ink.textBaseline = 'middle';
  ink.fillText('1', toX(held, 0) - 3 * ratio, toY(held, 0.66 * deep));
};

/** Rafters on end, drawn nearer to each other than they stand; the tape goes from one to the next. Inches, and share of the width; ours. */
const hops = { thick: 1.5, apart: 4, deep: 0.8, wide: 0.68 };

export const drawHops = (view: Scaled, { x, y, width, height }: Area, sum: string): void => {
  const k = (width * hops.wide) / (2 * hops.apart + hops.thick + 0.6);
  const held: Scaled = { ...view, k, zero: [x + 0.3 * k, y + height * 0.72] };
  const { ink, ratio, theme } = held;
  const faces = [0, 1, 2].map((i) => i * hops.apart);
  for (const [i, u] of faces.entries())
    put(held, {
      outline: slab([u, u + hops.thick], [-(height * 0.5) / k, 0]),
      seed: 24 + i,
      grain: 'end',
      pith: [3.4, 2],
      light: 0.66,
    });
  for (const u of faces.slice(0, 2)) {
    blade(held, [u, u + hops.apart], hops.deep);
    hook(held, u, hops.deep);
  }
  ink.fillStyle = css(palettes[theme].ink);
  ink.textAlign = 'center';
  ink.textBaseline = 'middle';
  ink.font = drawingFont(18 * ratio, 700);
  ink.fillText('+', toX(held, hops.apart), toY(held, hops.deep) - 9 * ratio);
  ink.font = drawingFont(18 * ratio);
  ink.fillText(`= ${sum}`, x + width * (0.5 + hops.wide / 2), y + height * 0.5);
};
