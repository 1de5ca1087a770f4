import type { Scheme } from '../../present/model/scheme';
import type { Model } from '../../present/model/solidsOf';
import { css } from '../ink/color';
import { palettes, type Palette, type Theme } from '../ink/palette';
import { pencil, type Ink, type Line, type Point } from '../ink/pencil';

/** What measured views show of a wall that a ledger is nailed to, and how far they reach because of it. */

/** How far over the ledger and how deep behind its face the wall is drawn, inches: studs and a sheet. Ours. */
const overLedger = 30;
const deep = 4;
/** Down to where it is drawn in a section, inches from the plates' tops; ours. */
export const wallFoot = -16;

/** Whether there is one side, and a wall where the other would be. */
export const atWall = ({ sides }: Pick<Scheme, 'sides'>): boolean => sides.length === 1;

/** How far what is drawn reaches from y = 0 to either side: the tails, or the back of the wall. Inches. */
export const reachOf = (
  scheme: Pick<Scheme, 'half' | 'yard' | 'sides'>,
  overhang: number,
): { readonly street: number; readonly yard: number } => ({
  street: scheme.half + overhang,
  yard: scheme.yard + (atWall(scheme) ? deep : overhang),
});

/** The highest that is drawn, over the plates. Inches. */
export const highestOf = (scheme: Pick<Scheme, 'top' | 'sides'>): number =>
  scheme.top + (atWall(scheme) ? overLedger : 0);

/** Nearer than this is on the wall's face, inches. */
const touching = 0.01;

/** What plan and section show: the wall itself is drawn as what it is there, cut. */
export const withoutWall = (model: Model, scheme: Pick<Scheme, 'sides' | 'yard'>): Model => {
  if (!atWall(scheme)) return model;
  const behind = scheme.yard - touching;
  const solids = model.solids.filter(({ faces }) =>
    faces.some(({ points }) => points.some((p) => p[1] < behind)),
  );
  return { ...model, solids };
};

/** At which share of the half width the slope is told: nearer the ledger where the height stands on the same side. */
export const slopeOut = (scheme: Pick<Scheme, 'sides'>, free: number): number =>
  atWall(scheme) ? 0.56 : free;

/** From its face to its back, and as far as it goes on: two corners on the sheet. */
export type WallCut = { readonly face: readonly [Point, Point]; readonly back: readonly [Point, Point] };
type Look = { readonly theme: Theme; readonly ratio: number };

/** Between the lines of a hatch, square to the level; and how far a break swings out. CSS pixels. */
const hatchEvery = 7;
const swing = 3.5;

/** A wall that is cut: hatched between its face and its back, broken off at both ends. Whatever lies under it is covered. */
export const drawWallCut = (ink: Ink, wall: WallCut, { theme, ratio }: Look): void => {
  const palette = palettes[theme];
  const { face, back } = wall;
  ink.save();
  ink.beginPath();
  for (const [x, y] of [face[0], face[1], back[1], back[0]]) ink.lineTo(x, y);
  ink.closePath();
  ink.clip();
  ink.fillStyle = css(palette.deck);
  ink.fill();
  for (const line of hatchOf(wall, hatchEvery * ratio))
    pencil(ink, { ...line, width: 0.7 * ratio, alpha: 0.6, color: palette.pencil });
  ink.restore();
  const heavy = { width: 1.5 * ratio, alpha: 0.95, color: palette.edge };
  pencil(ink, { from: face[0], to: face[1], ...heavy });
  pencil(ink, { from: back[0], to: back[1], ...heavy, width: ratio });
  for (const i of [0, 1] as const) breakLine(ink, [face[i], back[i]], { palette, ratio });
};

/** At 45 degrees over the whole of it; what is beyond its edges is clipped. */
const hatchOf = ({ face, back }: WallCut, every: number): readonly Line[] => {
  const corners = [...face, ...back];
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const [left, right, top, foot] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const [wide, high] = [right - left, foot - top];
  const count = Math.max(0, Math.floor((wide + high) / every));
  return Array.from({ length: count }, (_, i): Line => {
    const far = (i + 1) * every;
    const [low, up] = [Math.max(0, far - high), Math.min(wide, far)];
    return { from: [left + low, top + far - low], to: [left + up, top + far - up] };
  });
};

/** A thin line with a zigzag in it: here it goes on. */
const breakLine = (
  ink: Ink,
  [a, b]: readonly [Point, Point],
  { palette, ratio }: { readonly palette: Palette; readonly ratio: number },
): void => {
  const far = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const [ux, uy] = [(b[0] - a[0]) / far, (b[1] - a[1]) / far];
  const past = 4 * ratio;
  const at = (along: number, off: number): Point => [
    a[0] + ux * along - uy * off * ratio,
    a[1] + uy * along + ux * off * ratio,
  ];
  const [middle, step] = [far / 2, Math.min(2.5 * ratio, far / 5)];
  const points = [
    at(-past, 0),
    at(middle - step, 0),
    at(middle - step / 2, swing),
    at(middle + step / 2, -swing),
    at(middle + step, 0),
    at(far + past, 0),
  ];
  points.slice(1).forEach((to, i) => {
    pencil(ink, { from: points[i] as Point, to, width: ratio, alpha: 0.85, color: palette.pencil });
  });
};
