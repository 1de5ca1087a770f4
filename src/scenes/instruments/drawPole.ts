import { css } from '../ink/color';
import { palettes } from '../ink/palette';
import { toPoint, toX, toY, type Scaled } from '../closeUp/board';
import { put, slab } from './drawAcross';
import type { ReadingPicture } from './readingPicture';
import type { Parts } from './scaledFor';
import { ruleWide, standRule } from './standRule';
import { ringAt, within } from './within';

type Poled = Extract<ReadingPicture, { tool: 'storyPole' }>;

/** The pole beside the ridge, and large: the ridge's top edge, a rule with its zero on the mark, the pole. */
export const drawPole = (view: Scaled, { whole, near }: Parts, { shown, plumb }: Poled): void => {
  within(view.ink, whole, () => drawBeside(view, whole, { shown, plumb }));
  within(view.ink, near, () => drawTop(view, near, shown));
};

/** A pole ripped from a board, and the ridge seen on end, inches. Ours. */
const pole = { wide: 1.5, off: 0.4 };
const ridge = { thick: 1.5, deep: 7.25 };

/** How far a pole held by eye is drawn off plumb, of its height; more than it is, to be seen. Ours. */
const leans = 0.09;

const drawBeside = (
  view: Scaled,
  { x, y, width, height }: Parts['whole'],
  { shown, plumb }: Omit<Poled, 'tool'>,
): void => {
  const k = Math.min(height / 11, width / 6);
  const small: Scaled = { ...view, k, zero: [x + width * 0.5, y + height * 0.22] };
  put(small, {
    outline: slab([-ridge.thick - pole.off / 2, -pole.off / 2], [shown - ridge.deep, shown]),
    seed: 24,
    grain: 'end',
    pith: [-3.4, 0.75],
    light: 0.62,
  });
  put(small, {
    outline: slab([pole.off / 2, pole.off / 2 + pole.wide], [-20, 1.6]).map(([at, up]) => [
      at - (plumb ? 0 : leans * up),
      up,
    ]),
    seed: 57,
    grain: [0, 1],
    light: 0.9,
  });
  mark(small, pole.off / 2, pole.wide);
  ringAt(small, toPoint(small, [0, shown / 2]));
};

const drawTop = (view: Scaled, near: Parts['near'], shown: number): void => {
  put(view, {
    outline: slab([-6, -0.06], [-8, shown]),
    seed: 24,
    grain: 'end',
    pith: [-3.4, 0.75],
    light: 0.62,
  });
  const polesEdge = ruleWide(view) - 0.03;
  put(view, { outline: slab([polesEdge, 6], [-8, 8]), seed: 57, grain: [0, 1], light: 0.9 });
  mark(view, polesEdge, 1);
  standRule(view, near, { at: -0.05, low: -100 });
};

/** The pole's mark: a line across it and a crow's foot that says which line is meant. */
const mark = (view: Scaled, from: number, wide: number): void => {
  const { ink, ratio, theme } = view;
  const y = toY(view, 0);
  const [x0, x1] = [toX(view, from), toX(view, from + wide)];
  const foot = Math.min(14 * ratio, (x1 - x0) * 0.4);
  ink.strokeStyle = css(palettes[theme].chalk);
  ink.lineWidth = 2.2 * ratio;
  ink.beginPath();
  ink.moveTo(x0, y);
  ink.lineTo(x1, y);
  ink.moveTo(x0 + foot, y - foot * 0.6);
  ink.lineTo(x0 + 2 * ratio, y);
  ink.lineTo(x0 + foot, y + foot * 0.6);
  ink.stroke();
};
