import { inkOn } from '../ink/pencil';
import type { Scaled } from '../closeUp/board';
import type { Into } from '../closeUp/drawJoint';
import type { ReadingPicture } from './readingPicture';

/** How large a tool is drawn and where its zero lies, so that all that is read off it lies inside the picture. */

/** Where the ends of a drawing of a tool lie, inches from its zero: what must be seen of it, up and down. */
type Reach = { readonly up: number; readonly down: number };

/** Inches that show across a tool read from left to right: with fewer, no numbered tick may be in sight. Ours. */
const across = { usual: 2.5, least: 1.35 };
/** Pixels to an inch, device ratio 1: enough to judge a sixteenth, and no more than the picture needs. Ours. */
const scales = { most: 320, usual: 192 };

/** Tools held upright: what they reach is what sets the scale. Round their reading stays a quarter inch. Ours. */
const spare = 0.25;

const reachOf = (picture: ReadingPicture): Reach | undefined => {
  const { tool, shown } = picture;
  if (tool === 'waterLevel') {
    const reach = Math.max(0.5, Math.abs(shown) + spare);
    return { up: reach, down: reach };
  }
  if (tool !== 'string') return undefined;
  const { over, nominal } = picture;
  return over === 'plate'
    ? { up: nominal + 0.1, down: Math.max(spare, -shown + 0.1) }
    : { up: Math.max(nominal, shown) + spare, down: 0.12 };
};

/** How far down the picture the zero of a tool read from left to right lies: its ticks and numbers need the rest. */
const lies: Readonly<Partial<Record<ReadingPicture['tool'], number>>> = {
  tape: 0.82,
  rule: 0.4,
  pattern: 0.5,
};

export const scaledFor = ({ canvas, area, ratio, theme }: Into, picture: ReadingPicture): Scaled => {
  const { x, y, width, height } = area;
  const common = { ink: inkOn(canvas), theme, ratio };
  const reach = reachOf(picture);
  if (reach) {
    const k = Math.min(scales.most * ratio, (height * 0.96) / (reach.up + reach.down));
    return { ...common, k, zero: [x + width * 0.5, y + height * 0.02 + reach.up * k] };
  }
  const usual = Math.max(width / across.usual, scales.usual * ratio);
  const k = Math.min(scales.most * ratio, usual, width / across.least);
  return { ...common, k, zero: [x + width * 0.34, y + height * (lies[picture.tool] ?? 0.5)] };
};
