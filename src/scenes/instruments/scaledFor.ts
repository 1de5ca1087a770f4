import { inkOn } from '../ink/pencil';
import type { Area } from '../overview/fit';
import type { Scaled } from '../closeUp/board';
import type { Into } from '../closeUp/drawJoint';
import type { ReadingPicture } from './readingPicture';
import { slidTo, type Span } from './slide';

/** How large a tool is drawn and where its zero lies, so that all that is read off it lies inside the picture. */

/** Where the ends of a drawing of a tool lie, inches from its zero: what must be seen of it, up and down. */
type Reach = { readonly up: number; readonly down: number };

/**
 * Inches that show across a tool read from left to right: with fewer, no numbered tick may be in sight. Ours.
 */
const across = { usual: 2.5, least: 1.2 };
/** Pixels to an inch, device ratio 1: enough to judge a sixteenth, and no more than the picture needs. Ours. */
const scales = { most: 320, usual: 192 };

/** Tools held upright: what they reach is what sets the scale. Round their reading stays a quarter inch. Ours. */
const spare = 0.25;

/** A picture that needs two: the place as a whole on the left, and beside it what is read. */
export type Parts = { readonly whole: Area; readonly near: Area };

/** Share of the width that the whole takes, or of the height over a tape. Ours. */
const wholeShare: Readonly<Partial<Record<ReadingPicture['tool'], number>>> = {
  square: 0.4,
  straightedge: 0.4,
  storyPole: 0.32,
};
const overTape = 0.36;

export const partsOf = ({ area }: Pick<Into, 'area'>, picture: ReadingPicture): Parts => {
  if (picture.tool === 'tape') {
    const high = area.height * (picture.from === undefined ? 0 : overTape);
    return {
      whole: { ...area, height: high },
      near: { ...area, y: area.y + high, height: area.height - high },
    };
  }
  const wide = area.width * (wholeShare[picture.tool] ?? 0);
  return {
    whole: { ...area, width: wide },
    near: { ...area, x: area.x + wide, width: area.width - wide },
  };
};

const reachOf = (picture: ReadingPicture): Reach | undefined => {
  const { tool, shown } = picture;
  if (tool !== 'string') return undefined;
  const { over, nominal } = picture;
  return over === 'plate'
    ? { up: nominal + 0.1, down: Math.max(spare, -shown + 0.1) }
    : { up: Math.max(nominal, shown) + spare, down: 0.12 };
};

/** What has to be in sight along the scale of a tool that is read at one place, inches, and where it is read. */
const spanOf = (picture: ReadingPicture): (Span & { readonly way: 'across' | 'up' }) | undefined => {
  const { tool, shown } = picture;
  const gap = Math.abs(shown);
  switch (tool) {
    case 'square':
      return { way: 'across', low: -0.1, high: Math.max(0.35, gap + 0.15), read: gap };
    case 'bob':
      return { way: 'across', low: Math.min(0, shown) - 0.5, high: Math.max(0, shown) + 0.5, read: shown };
    case 'straightedge':
      return { way: 'up', low: -0.12, high: gap + 0.2, read: gap };
    case 'storyPole':
    case 'waterLevel':
      return { way: 'up', low: Math.min(0, shown) - 0.2, high: Math.max(0, shown) + 0.2, read: shown };
    default:
      return undefined;
  }
};

/** How far down the picture the zero of a tool read from left to right lies: its ticks and numbers need the rest. */
const lies = (picture: ReadingPicture): number => {
  if (picture.tool === 'square') return picture.shown < 0 ? 0.44 : 0.56;
  const usual: Readonly<Partial<Record<ReadingPicture['tool'], number>>> = {
    tape: 0.82,
    rule: 0.4,
    bob: 0.52,
  };
  return usual[picture.tool] ?? 0.5;
};

export const scaledFor = (into: Into, picture: ReadingPicture): Scaled => {
  const { canvas, ratio, theme } = into;
  const { x, y, width, height } = partsOf(into, picture).near;
  const common = { ink: inkOn(canvas), theme, ratio };
  const reach = reachOf(picture);
  if (reach) {
    const k = Math.min(scales.most * ratio, (height * 0.96) / (reach.up + reach.down));
    return { ...common, k, zero: [x + width * 0.5, y + height * 0.02 + reach.up * k] };
  }
  const span = spanOf(picture);
  if (span) return { ...common, ...slidFor(into, picture, span) };
  const usual = Math.max(width / across.usual, scales.usual * ratio);
  const k = Math.min(scales.most * ratio, usual, width / across.least);
  return { ...common, k, zero: [x + zeroAt(width, k, picture), y + height * lies(picture)] };
};

/** A zero stands here as a share of the width, and this much shows to both sides of what is read, inches. Ours. */
const usualZero = 0.34;
const about = 0.2;

/** Where a wide gap, or a board far off its pattern, would lie outside the picture, its zero makes room. */
const zeroAt = (width: number, k: number, { tool, shown }: ReadingPicture): number => {
  const usual = width * usualZero;
  if (tool !== 'rule' && tool !== 'pattern') return usual;
  return shown > 0 ? Math.min(usual, width - (shown + about) * k) : Math.max(usual, (about - shown) * k);
};

/** Where the ticks of an upright rule begin, as a share of the width: what is read stands left of it. Ours. */
const stands = (picture: ReadingPicture): number => {
  if (picture.tool === 'waterLevel') return picture.together ? 0.66 : 0.5;
  return 0.28;
};

const slidFor = (
  into: Into,
  picture: ReadingPicture,
  span: Span & { readonly way: 'across' | 'up' },
): Pick<Scaled, 'k' | 'zero'> => {
  const { x, y, width, height } = partsOf(into, picture).near;
  const across = span.way === 'across';
  const { k, start } = slidTo(across ? width : height, span, {
    least: scales.usual * into.ratio,
    most: scales.most * into.ratio,
  });
  const zero: Scaled['zero'] = across
    ? [x - start * k, y + height * lies(picture)]
    : [x + width * stands(picture), y + height + start * k];
  return { k, zero };
};
