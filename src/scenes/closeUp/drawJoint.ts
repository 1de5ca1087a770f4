import { partsOfJoint, placeOf, type BlockId, type RafterId } from '../../core/site/ids';
import type { Shown } from '../../present/model/scheme';
import { css } from '../ink/color';
import { palettes, type Theme } from '../ink/palette';
import { inkOn, pencil, type Ink, type Point } from '../ink/pencil';
import { drawingFont } from '../overview/axisMark';
import type { Area } from '../overview/fit';
import type { DrawingWords } from '../overview/words';
import { blockScene } from './blockScene';
import { drawPiece, edgePiece, shadeBand, toPoint, toX, toY, tracePath, type Scaled } from './board';
import { heelScene } from './heelScene';
import { ledgerScene } from './ledgerScene';
import type { JointScene } from './jointScene';
import { drawLens } from './lens';
import { drawHead, drawSideNail } from './nails';
import { ridgeScene } from './ridgeScene';
import { drawPlate, drawTicks } from './steel';

/** A canvas to draw a close-up into, and the part of it that is free. Device pixels. */
export type Into = {
  readonly canvas: HTMLCanvasElement;
  readonly area: Area;
  readonly ratio: number;
  readonly theme: Theme;
  readonly words: DrawingWords;
};

/** Which joints have a close-up: plumb cuts, heels, block ends and a ledger's nails. Anything else is looked at through its rafter's. */
export const jointSceneOf = (shown: Shown, joint: string): JointScene | undefined => {
  const kind = joint.slice(0, joint.indexOf(':'));
  const { member } = partsOfJoint(joint);
  if (kind === 'ledger') return ledgerScene(shown, joint);
  const block = shown.pose.blocks[member as BlockId];
  if (block) return blockScene(shown, block, joint);
  const { station, side } = placeOf(joint);
  const id: RafterId = member.startsWith('rafter.')
    ? (member as RafterId)
    : `rafter.${side ?? 'street'}.${station ?? 1}`;
  const rafter = shown.pose.rafters[id];
  if (!rafter) return undefined;
  if (kind === 'ridge' || kind === 'ridgeTop' || kind === 'collarEnd' || kind === 'strap')
    return ridgeScene({ shown, rafter, joint: id, atTop: kind === 'ridgeTop' });
  return heelScene({ shown, rafter, joint: id, gap: kind === 'heelCut' ? 'heelCut' : 'seat' });
};

/** Pixels to an inch when there is room, device ratio 1; from the look's tokens. */
const largest = 62;

export const drawJoint = (into: Into, shown: Shown, joint: string): void => {
  const scene = jointSceneOf(shown, joint);
  if (!scene) return;
  const { area, ratio, canvas, words } = into;
  const radius = lensRadius(into);
  const view = viewOf(into, scene, radius);
  view.ink.save();
  view.ink.beginPath();
  view.ink.rect(area.x, area.y, canvas.width, canvas.height);
  view.ink.clip();
  drawScene(view, scene);
  const at = lensAt(area, radius, ratio);
  nameNails(view, scene, { words, at, radius });
  drawLens({
    view,
    at,
    radius,
    spot: scene.spot,
    caption: words.eachTick,
    draw: (inner) => {
      drawScene(inner, scene);
    },
  });
  view.ink.restore();
  if (words.joint) title(view.ink, into, words.joint);
};

const lensRadius = ({ area, ratio }: Into): number =>
  Math.min(116 * ratio, area.width * 0.24, area.height * 0.21);

/** A nail of a close-up: where its head is and the box it is drawn in, device pixels, and which way it goes in if not to the right. */
export type NailSeen = { readonly head: Point; readonly box: Area; readonly way?: 'left' };

/** The nails of a close-up in the order they were driven. */
export const nailsSeen = (into: Into, shown: Shown, joint: string): readonly NailSeen[] => {
  const scene = jointSceneOf(shown, joint);
  if (!scene) return [];
  const view = viewOf(into, scene, lensRadius(into));
  const { k, ratio } = view;
  const room = 0.3 * k + 6 * ratio;
  const sides = scene.sideNails.map(({ face, w, proud, length, way }): NailSeen => {
    const left = way === 'left';
    const [x, y] = [toX(view, left ? face + proud : face - proud), toY(view, w)];
    const from = left ? x - length * k : x;
    return {
      head: [x, y],
      ...(left && { way }),
      box: { x: from - room, y: y - room, width: length * k + 2 * room, height: 2 * room },
    };
  });
  const heads = scene.heads.map(({ at }): NailSeen => {
    const [x, y] = toPoint(view, at);
    return { head: [x, y], box: { x: x - room, y: y - room, width: 2 * room, height: 2 * room } };
  });
  return [...sides, ...heads];
};

/** Wide: the lens has the lower left corner to itself. Narrow: it takes the upper right, where a roof slopes away. */
const isWide = (area: Area): boolean => area.width > area.height * 1.15;

const viewOf = ({ area, ratio, theme, canvas }: Into, scene: JointScene, radius: number): Scaled => {
  const [u0, u1, w0, w1] = scene.extent;
  const side = isWide(area) ? radius * 1.9 + 30 * ratio : 0;
  const head = 16 * ratio;
  const k = Math.min(largest * ratio, (area.width - side) / (u1 - u0), (area.height - head) / (w1 - w0));
  const spare = isWide(area) ? 0 : Math.max(0, (area.width - (u1 - u0) * k) / 2);
  return {
    ink: inkOn(canvas),
    theme,
    ratio,
    k,
    zero: [
      area.x + side + spare - u0 * k,
      area.y + head + w1 * k + Math.max(0, (area.height - head - (w1 - w0) * k) / 2),
    ],
  };
};

const lensAt = (area: Area, radius: number, ratio: number): readonly [number, number] => {
  if (isWide(area)) return [area.x + radius + 18 * ratio, area.y + area.height - radius - 46 * ratio];
  const x = area.x + area.width - radius - 16 * ratio;
  const under = x - radius < area.x + titleWide * ratio ? titleHigh * ratio : 0;
  return [x, area.y + radius + 16 * ratio + under];
};
/** Room for the two lines of a long joint name and how it is looked at, CSS pixels. */
const titleWide = 215;
const titleHigh = 38;

const drawScene = (view: Scaled, scene: JointScene): void => {
  for (const piece of scene.pieces) {
    drawPiece(view, piece);
    edgePiece(view, piece.outline, view.k > 150 * view.ratio ? 1.8 : 1.5);
  }
  contact(view, scene);
  for (const outline of scene.light) drawLight(view, outline);
  for (const [a, b] of scene.marks)
    pencil(view.ink, {
      from: toPoint(view, a),
      to: toPoint(view, b),
      width: 2 * view.ratio,
      alpha: 0.9,
      color: [58, 56, 60],
    });
  for (const nail of scene.sideNails) drawSideNail(view, nail);
  for (const { at, proud } of scene.heads) drawHead(view, at, proud);
  drawRule(view, scene);
};

/** The second piece's first edge throws a little shade on what it touches. */
const contact = (view: Scaled, { pieces }: JointScene): void => {
  const last = pieces[pieces.length - 1];
  const [a, b] = [last?.outline[0], last?.outline[1]];
  if (last && a && b && last.grain !== 'end') shadeBand(view, [b, a], 0.35);
};

/** Daylight through a gap: bright to the eye, spilling a little on both edges. */
const drawLight = (view: Scaled, outline: JointScene['light'][number]): void => {
  const { ink, ratio, theme } = view;
  ink.save();
  tracePath(view, outline);
  ink.shadowColor = theme === 'night' ? 'rgba(255,222,150,.8)' : 'rgba(255,244,205,.95)';
  ink.shadowBlur = 8 * ratio;
  ink.fillStyle = theme === 'night' ? '#ffe9b8' : '#fffef8';
  ink.fill();
  ink.restore();
  tracePath(view, outline);
  ink.fillStyle = theme === 'night' ? '#fff0cd' : '#ffffff';
  ink.fill();
};

/** Six-inch rule: half an inch wide, its zero at the gap. */
const ruleLong = 6;
const ruleWide = 0.5;

const drawRule = (view: Scaled, { rule }: JointScene): void => {
  const { ink, k, ratio } = view;
  const [u, w] = rule.zero;
  const plate =
    rule.way === 'right'
      ? { x: toX(view, u), y: toY(view, w), width: ruleLong * k, height: ruleWide * k }
      : {
          x: toX(view, u) - ruleWide * k,
          y: toY(view, rule.way === 'up' ? w + ruleLong : w),
          width: ruleWide * k,
          height: ruleLong * k,
        };
  drawPlate(ink, plate, ratio);
  drawTicks({
    view,
    zero: rule.zero,
    way: rule.way,
    from: 1 / 16,
    to: ruleLong - 1 / 16,
    tick: k > 150 * ratio ? 64 * ratio : 0.22 * k,
    grow: rule.way === 'right' ? 1 : -1,
    // Numbers only where the rule is wide enough for them.
    ...(k < 36 * ratio ? { numbers: () => '' } : {}),
  });
};

type Naming = { readonly words: DrawingWords; readonly at: Point; readonly radius: number };

/** Clear of the glass's rim, CSS pixels. */
const rimRoom = 12;

/** Proud or home is said in words as well, once for each nail that has room beside it. */
const nameNails = (view: Scaled, { sideNails, heads }: JointScene, { words, at, radius }: Naming): void => {
  const { ink, ratio, theme, k } = view;
  ink.font = drawingFont(15 * ratio);
  ink.textBaseline = 'middle';
  ink.fillStyle = css(palettes[theme].ink);
  for (const { face, w, proud, way } of sideNails) {
    const out = way === 'left' ? -1 : 1;
    ink.textAlign = way === 'left' ? 'left' : 'right';
    const [x, y] = [toX(view, face - out * proud) - out * 12 * ratio, toY(view, w)];
    const text = proud > 0 ? words.tack : words.nail;
    const near = Math.min(Math.max(at[0], x), x + ink.measureText(text).width);
    const underGlass = Math.hypot(near - at[0], y - at[1]) < radius + rimRoom * ratio;
    if (way !== 'left' || !underGlass) ink.fillText(text, x, y);
  }
  const first = heads[heads.length - 1];
  if (!first) return;
  const [x, y] = toPoint(view, first.at);
  chip(ink, {
    text: first.proud ? words.tack : words.nail,
    at: [x, y + 0.13 * k + 13 * ratio],
    ratio,
    theme,
  });
};

type Chip = {
  readonly text: string;
  readonly at: readonly [number, number];
  readonly ratio: number;
  readonly theme: Theme;
};

/** No words on grain without paper under them. */
const chip = (ink: Ink, { text, at, ratio, theme }: Chip): void => {
  ink.font = drawingFont(15 * ratio);
  const wide = ink.measureText(text).width + 10 * ratio;
  ink.fillStyle = css(palettes[theme].paper, 0.9);
  ink.fillRect(at[0] - wide / 2, at[1] - 10 * ratio, wide, 20 * ratio);
  ink.fillStyle = css(palettes[theme].ink);
  ink.textAlign = 'center';
  ink.fillText(text, at[0], at[1]);
};

const title = (ink: Ink, { area, ratio, theme }: Into, words: NonNullable<DrawingWords['joint']>): void => {
  const palette = palettes[theme];
  const [x, y] = [area.x + 15 * ratio, area.y + 24 * ratio];
  ink.strokeStyle = css(palette.deck, 0.9);
  ink.lineWidth = 6 * ratio;
  ink.lineJoin = 'round';
  ink.textAlign = 'left';
  ink.textBaseline = 'middle';
  ink.fillStyle = css(palette.ink2);
  ink.font = drawingFont(14 * ratio, 500);
  ink.strokeText(words.from, x, y + 19 * ratio);
  ink.fillText(words.from, x, y + 19 * ratio);
  ink.font = drawingFont(15 * ratio);
  ink.fillStyle = css(palette.ink);
  ink.strokeText(words.title, x, y);
  ink.fillText(words.title, x, y);
};
