import type { Into } from '../closeUp/drawJoint';
import { nameTicks } from '../closeUp/lens';
import { drawGap, drawPattern } from './drawAcross';
import { drawBob } from './drawBob';
import { drawLevel } from './drawLevel';
import { drawPole } from './drawPole';
import { drawSquare } from './drawSquare';
import { drawStraightedge } from './drawStraightedge';
import { drawTape } from './drawTape';
import { drawUpright } from './drawUpright';
import type { ReadingPicture } from './readingPicture';
import { partsOf, scaledFor } from './scaledFor';

/** A tool at its place, drawn so large that a sixteenth can be judged. Ticks lie exactly where they belong. */
export const drawReading = (into: Into, picture: ReadingPicture): void => {
  const view = scaledFor(into, picture);
  const { ink } = view;
  const { area, ratio, words } = into;
  ink.save();
  ink.beginPath();
  ink.rect(area.x, area.y, into.canvas.width, into.canvas.height);
  ink.clip();
  if (picture.tool === 'tape') drawTape(view, into, picture);
  else if (picture.tool === 'level') drawLevel(view, into, picture);
  else if (picture.tool === 'rule') drawGap(view, into, picture.shown);
  else if (picture.tool === 'pattern') drawPattern(view, into, picture.shown);
  else if (picture.tool === 'square') drawSquare(view, partsOf(into, picture), picture);
  else if (picture.tool === 'straightedge') drawStraightedge(view, partsOf(into, picture), picture);
  else if (picture.tool === 'storyPole') drawPole(view, partsOf(into, picture), picture);
  else if (picture.tool === 'bob') drawBob(view, into, picture);
  else drawUpright(view, area, picture);
  if (area.height >= leastForWords * ratio)
    nameTicks(view, {
      at: [area.x + area.width / 2, area.y + area.height - 24 * ratio],
      caption: words.eachTick,
    });
  ink.restore();
};

/** A lower picture has no room for what a tick is: the words would lie over the ticks. CSS pixels, ours. */
const leastForWords = 260;
