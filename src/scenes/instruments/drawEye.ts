import { gradeStamps } from '../../core/stock/wood';
import { css } from '../ink/color';
import { palettes, type Theme } from '../ink/palette';
import { pencil, inkOn, type Ink, type Point } from '../ink/pencil';
import { dryChecks, endPaint, gradeStamp, knotAt, woodColor, type Face } from './drawMarks';

/** Somebody sights along a rafter lying on its edge: near end large, far end small, so that a crown shows. */

export type EyeInto = { readonly canvas: HTMLCanvasElement; readonly ratio: number; readonly theme: Theme };

/** Where the far end lies and how much smaller it is; how far a crown lifts the middle of what is seen. Shares, ours. */
const lie = { farX: 0.9, nearX: 0.1, farScale: 0.42, crown: 0.13, twist: 0.1 };

type Board = {
  readonly width: number;
  readonly height: number;
  readonly bow: number;
  readonly twist: number;
};

/** Top and bottom edge of the board at a share of its length from the near end. */
const edgeAt = (
  { width, height, bow, twist }: Board,
  t: number,
): { readonly top: Point; readonly low: Point } => {
  const x = width * (lie.nearX + (lie.farX - lie.nearX) * (1 - (1 - t) * (1 - t)));
  const size = height * 0.42 * (1 - t * (1 - lie.farScale));
  const middle = height * (0.55 - 0.12 * t);
  const lift = -bow * height * 4 * t * (1 - t);
  const lean = twist * height * t;
  return { top: [x + lean, middle - size / 2 + lift], low: [x - lean, middle + size / 2 + lift] };
};

export const drawEye = ({ canvas, ratio, theme }: EyeInto, seen: string): void => {
  const ink = inkOn(canvas);
  const palette = palettes[theme];
  const { width, height } = canvas;
  ink.clearRect(0, 0, width, height);
  const bow = seen === 'crownDown' ? -lie.crown : lie.crown * 0.28;
  const board: Board = { width, height, bow, twist: seen === 'twist' ? lie.twist : 0 };
  const steps = Array.from({ length: 41 }, (_, i) => edgeAt(board, i / 40));
  const batch = seen === 'otherBatch' ? 'other' : 'own';
  fillFace(ink, { steps, color: woodColor(theme, batch) });
  const lines = { ink, ratio, color: palette.edge };
  grain(lines, board);
  edge(
    lines,
    steps.map(({ top }) => top),
  );
  edge(
    lines,
    steps.map(({ low }) => low),
  );
  notch(lines, board, css(palette.deck));
  const face: Face = { ink, ratio, theme, at: (along, across) => between(edgeAt(board, along), across) };
  endPaint(face, batch);
  gradeStamp(face, seen === 'lowGrade' ? gradeStamps.tooLow : gradeStamps.asOrdered);
  if (seen === 'split') crack(lines, board);
  if (seen === 'knot') knotAt(face, face.at(notchAt + 0.025, 0.6));
  if (seen === 'otherBatch') dryChecks(face);
  sightLine(lines, board, palette.chalk);
};

type Lines = { readonly ink: Ink; readonly ratio: number; readonly color: readonly [number, number, number] };

const fillFace = (
  ink: Ink,
  {
    steps,
    color,
  }: { readonly steps: readonly { readonly top: Point; readonly low: Point }[]; readonly color: string },
): void => {
  ink.fillStyle = color;
  ink.beginPath();
  for (const { top } of steps) ink.lineTo(top[0], top[1]);
  for (const { low } of [...steps].reverse()) ink.lineTo(low[0], low[1]);
  ink.closePath();
  ink.fill();
};

const edge = ({ ink, ratio, color }: Lines, points: readonly Point[]): void => {
  points
    .slice(1)
    .forEach((to, i) =>
      pencil(ink, { from: points[i] as Point, to, width: 1.3 * ratio, alpha: 0.85, color }),
    );
};

const between = ({ top, low }: { readonly top: Point; readonly low: Point }, share: number): Point => [
  top[0] + (low[0] - top[0]) * share,
  top[1] + (low[1] - top[1]) * share,
];

const grain = (lines: Lines, board: Board): void => {
  for (const share of [0.2, 0.37, 0.52, 0.7, 0.86]) {
    const points = Array.from({ length: 21 }, (_, i) =>
      between(edgeAt(board, i / 20), share + 0.03 * ((i * 7) % 5) * 0.2),
    );
    points.slice(1).forEach((to, i) =>
      pencil(lines.ink, {
        from: points[i] as Point,
        to,
        width: 0.8 * lines.ratio,
        alpha: 0.28,
        color: lines.color,
      }),
    );
  }
};

/** The birdsmouth shows a third of the way along; it stands on the lower edge. */
const notchAt = 0.3;

const notch = (lines: Lines, board: Board, deck: string): void => {
  const a = edgeAt(board, notchAt);
  const b = edgeAt(board, notchAt + 0.05);
  const apex = between(a, 0.74);
  lines.ink.fillStyle = deck;
  lines.ink.beginPath();
  for (const [x, y] of [a.low, apex, b.low]) lines.ink.lineTo(x, y + 2 * lines.ratio);
  lines.ink.closePath();
  lines.ink.fill();
  edge(lines, [a.low, apex, b.low]);
};

const crack = (lines: Lines, board: Board): void => {
  const points = Array.from({ length: 9 }, (_, i) =>
    between(edgeAt(board, notchAt + i * 0.035), 0.74 - 0.05 * (i % 2) - i * 0.02),
  );
  points.slice(1).forEach((to, i) =>
    pencil(lines.ink, {
      from: points[i] as Point,
      to,
      width: (3.4 - i * 0.3) * lines.ratio,
      alpha: 0.95,
      color: [30, 20, 12],
    }),
  );
};

/** A straight line from end to end of the top edge: what the eye holds the board against. */
const sightLine = (lines: Lines, board: Board, color: Lines['color']): void => {
  const from = edgeAt(board, 0).top;
  const to = edgeAt(board, 1).top;
  pencil(lines.ink, {
    from,
    to: [to[0] - board.twist * board.height, to[1]],
    width: 1.2 * lines.ratio,
    alpha: 0.9,
    color,
    dash: [6 * lines.ratio, 4 * lines.ratio],
  });
};
