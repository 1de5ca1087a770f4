import { css } from '../ink/color';
import { palettes } from '../ink/palette';
import { toPoint, toX, toY, type Scaled } from '../closeUp/board';
import { drawingFont } from '../overview/axisMark';
import { put, slab } from './drawAcross';
import type { ReadingPicture } from './readingPicture';
import type { Parts } from './scaledFor';
import { standRule } from './standRule';
import { lightIn, ringAt, within } from './within';

type Edged = Extract<ReadingPicture, { tool: 'straightedge' }>;

/** The edge over three rafters, and beside it the gap: under the middle one, or at a neighbor when it rocks. */
export const drawStraightedge = (view: Scaled, { whole, near }: Parts, picture: Edged): void => {
  within(view.ink, whole, () => drawThree(view, whole, picture));
  within(view.ink, near, () => drawUnder(view, near, Math.abs(picture.shown)));
};

/** A straight board, planed: paler than what it lies on. */
const planed = { seed: 57, grain: [1, 0], light: 0.98 } as const;

/** Three rafters seen on end, how far apart they are drawn, and how high the edge is, inches. Ours. */
const three = { thick: 1.5, apart: 3, edge: 1.6 };

const drawThree = (
  view: Scaled,
  { x, y, width, height }: Parts['whole'],
  { shown, station }: Edged,
): void => {
  const k = width / (2 * three.apart + three.thick + 0.5);
  const small: Scaled = { ...view, k, zero: [x + width / 2, y + height * 0.44] };
  const drop = (i: number): number => (i === 0 ? Math.min(0, shown) : Math.min(0, -shown));
  const { ink, ratio, theme } = small;
  ink.font = drawingFont(15 * ratio);
  ink.textAlign = 'center';
  ink.textBaseline = 'middle';
  for (const i of [-1, 0, 1]) {
    const u = i * three.apart;
    const half = three.thick / 2;
    put(small, {
      outline: slab([u - half, u + half], [-(height * 0.34) / k, drop(i)]),
      seed: 24 + i,
      grain: 'end',
      pith: [3.4, 2],
      light: 0.66,
    });
    ink.fillStyle = css(palettes[theme].ink);
    ink.fillText(String(station + i), toX(small, u), y + height - 13 * ratio);
  }
  put(small, { ...planed, outline: slab([-40, 40], [0, three.edge]) });
  ringAt(small, toPoint(small, [shown > 0 ? three.apart : 0, Math.min(0, -Math.abs(shown) / 2)]));
};

/** The rafter's edge is zero; the straightedge lies over it by the gap. */
const drawUnder = (view: Scaled, near: Parts['near'], gap: number): void => {
  const { ink, theme, k } = view;
  ink.fillStyle = lightIn(theme);
  ink.fillRect(near.x, toY(view, gap), near.width, gap * k);
  put(view, { outline: slab([-6, 6], [-3, 0]), seed: 24, grain: 'end', pith: [3.4, 2], light: 0.66 });
  put(view, { ...planed, outline: slab([-6, 6], [gap, 8]) });
  standRule(view, near, { at: -0.05, low: 0 });
};
