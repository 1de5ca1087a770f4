import { toPoint, toX, toY, tracePath, type Scaled } from '../closeUp/board';
import { drawPlate, drawTicks, type Ruled } from '../closeUp/steel';
import type { Point } from '../ink/pencil';
import { put } from './drawAcross';
import { nameQuarters } from './quarters';
import type { ReadingPicture } from './readingPicture';
import type { Parts } from './scaledFor';
import { lightIn, ringAt, within } from './within';

type Squared = Extract<ReadingPicture, { tool: 'square' }>;

/** The square on the board, and beside it the end of the cut where light shows, with a rule in it. */
export const drawSquare = (view: Scaled, { whole, near }: Parts, picture: Squared): void => {
  within(view.ink, whole, () => drawOnBoard(view, whole, picture));
  within(view.ink, near, () => drawLight(view, near, picture));
};

/** A framing square's two arms: how wide each is, inches. Common practice, no source. */
const arms = { blade: 2, tongue: 1.5 };
/** The square is stepped off at twelve inches of run. */
const run = 12;
/** The board goes on this far beyond the picture, inches. */
const far = 14;

const drawOnBoard = (
  view: Scaled,
  { x, y, width, height }: Parts['whole'],
  { slope: m, plumb, turned, shown }: Squared,
): void => {
  const low = Math.max(run * m + arms.tongue, plumb) + 0.8;
  const k = (height * 0.96) / (low + 1.6);
  const small: Scaled = {
    ...view,
    k,
    zero: [x + width * (turned ? 0.36 : 0.66), y + height * 0.02 + 1.6 * k],
  };
  const g = Math.sqrt(1 + m * m);
  put(small, {
    outline: [
      [0, 0],
      [0, -plumb],
      [-far, -plumb - far * m],
      [-far, -far * m],
    ],
    seed: 31,
    grain: [1 / g, m / g],
    light: 0.8,
  });
  const corner = -run * m;
  const { ink, ratio } = small;
  const plate = (from: Point, to: Point): void =>
    drawPlate(
      ink,
      {
        x: toX(small, from[0]),
        y: toY(small, from[1]),
        width: (to[0] - from[0]) * k,
        height: (from[1] - to[1]) * k,
      },
      ratio,
    );
  plate([turned ? 0 : -run - 4, corner], [turned ? run + 4 : 0.02, corner - arms.tongue]);
  plate([0, 1.4], [arms.blade, corner - arms.tongue]);
  ringAt(small, toPoint(small, [0, shown < 0 ? 0 : -plumb]));
};

/** Zero is the board's corner; the blade stands off it by what is shown. */
const drawLight = (view: Scaled, near: Parts['near'], { slope: m, shown }: Squared): void => {
  const { ink, theme, k, ratio, zero } = view;
  const gap = Math.abs(shown);
  const up = shown < 0 ? -1 : 1;
  ink.fillStyle = lightIn(theme);
  tracePath(view, [
    [0, 0],
    [gap, 0],
    [gap, far * up],
    [0, far * up],
  ]);
  ink.fill();
  const g = Math.sqrt(1 + m * m);
  put(view, {
    outline: [
      [0, 0],
      [0, far * up],
      [-far, far * up],
      [-far, -far * m],
    ],
    seed: 31,
    grain: [1 / g, m / g],
    light: 0.8,
  });
  const right = near.x + near.width;
  const blade = toX(view, gap);
  drawPlate(
    ink,
    { x: blade, y: near.y - 20 * ratio, width: right - blade + 40 * ratio, height: near.height + 40 * ratio },
    ratio,
  );
  const room = (up > 0 ? near.y + near.height - zero[1] : zero[1] - near.y) + 20 * ratio;
  drawPlate(
    ink,
    { x: zero[0], y: up > 0 ? zero[1] : zero[1] - room, width: right - zero[0] + 40 * ratio, height: room },
    ratio,
  );
  const ruled: Ruled = {
    view,
    zero: [0, 0],
    way: 'right',
    from: 0,
    to: (right - zero[0]) / k,
    tick: Math.min(0.26 * k, (room - 20 * ratio) * 0.4),
    grow: up,
    numbers: () => '',
  };
  drawTicks(ruled);
  nameQuarters(ruled, { from: near.x, to: right, deep: room - 20 * ratio });
};
