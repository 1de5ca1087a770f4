import { nailToolIn, type Act } from '../../present/model/actSeen';
import type { Shown } from '../../present/model/scheme';
import { nailsSeen, type Into, type NailSeen } from '../closeUp/drawJoint';
import { inkOn, sheetOf } from '../ink/pencil';
import type { Performance } from './performance';
import { drawStroke } from './toolInAir';

/** Nails go in, or come out, one after the other, in the close-up of their joint. */

export type JointSeen = { readonly into: Into; readonly shown: Shown; readonly joint: string };

/** One stroke on one nail, ms; ours. */
const strokeLong = 230;
/** Pixels of a desk screen to an inch of the tool: a close-up leaves no room for one in its own size. Ours. */
const toolScale = 11;

export const jointShowOf = (before: JointSeen, after: JointSeen, act: Act): Performance | undefined => {
  const alike = before.into.ratio === after.into.ratio && before.into.theme === after.into.theme;
  const { width, height } = before.into.canvas;
  const fits = width === after.into.canvas.width && height === after.into.canvas.height;
  if (before.joint !== after.joint || !alike || !fits) return undefined;
  const tool = nailToolIn(act);
  if (!tool) return undefined;
  const was = nailsSeen(before.into, before.shown, before.joint);
  const is = nailsSeen(after.into, after.shown, after.joint);
  const more = is.length > was.length;
  const changed = more ? is.slice(was.length) : was.slice(is.length);
  // Driven home the same nails change, none is added.
  const nails = changed.length > 0 ? changed : is;
  if (nails.length === 0) return undefined;
  const { ratio, canvas } = after.into;
  return {
    length: strokeLong * nails.length,
    scene: before.into.canvas,
    frame: (t) => {
      const beat = Math.min(nails.length - 1e-6, t * nails.length);
      const struck = Math.floor(beat);
      const nail = nails[struck] as NailSeen;
      const sheet = sheetOf(canvas.width, canvas.height);
      const ink = inkOn(sheet);
      for (const { box } of nails.slice(0, struck)) {
        const { x, y, width, height } = box;
        ink.drawImage(canvas, x, y, width, height, x, y, width, height);
      }
      drawStroke(ink, {
        tool,
        t: beat - struck,
        at: nail.head,
        scale: toolScale * ratio,
        mirrored: nail.way !== 'left',
      });
      return [{ canvas: sheet, at: { x: 0, y: 0 } }];
    },
  };
};
