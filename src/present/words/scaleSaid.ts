import { gaugeBlock, levelAt, levelLength, tools } from '../../core/instruments/rows';
import { waterStart } from '../../core/level/planted';
import { placeOf } from '../../core/site/ids';
import type { Attempt } from '../../core/site/attempt';
import { gradeStamps } from '../../core/stock/wood';
import { bubbleOff } from '../bubble';
import type { ReadAt } from '../offers/offer';
import type { Messages } from './messages';
import { spokenLength } from './numbers';

/**
 * What the picture of a reading shows, in words: which lines of the scale it lies between and nearer which, and which way.
 * As fine as an eye sees it and no finer; the reading is still taken, signed and said by whoever listens.
 */
export const scaleSaid = (
  words: Messages,
  { site }: Pick<Attempt, 'site'>,
  { reading, shown }: { readonly reading: ReadAt; readonly shown: number | string },
): string => {
  if (typeof shown === 'string') return boardSaid(words, shown);
  return sayers[reading.tool](words, { ...reading, shown, lines: site.lines });
};

type Shown = Omit<ReadAt, 'tool'> & { readonly shown: number; readonly lines: Attempt['site']['lines'] };
type Sayer = (words: Messages, seen: Shown) => string;

/** Parts of a sixteenth that an eye tells apart, in quarters of a hair: on the line to 2, a hair off to 5, nearer to 7. Ours. */
const parts = { sixteenth: 16, on: 2, hair: 5, nearer: 7 };
const perInch = 16 * parts.sixteenth;

/** Nearer to zero than an eye sees, inches. */
const none = (parts.on + 0.5) / perInch;

/** Where a length of no sign lies on a scale of sixteenths. */
export const onScale = (words: Messages, inches: number): string => {
  const { scale } = words.spoken;
  const fine = Math.round(inches * perInch);
  const low = Math.floor(fine / parts.sixteenth);
  const part = fine - low * parts.sixteenth;
  const [a, b] = [low, low + 1].map((n) => spokenLength(words, n / 16)) as [string, string];
  const left = parts.sixteenth - part;
  if (part <= parts.on) return scale.on(a);
  if (left <= parts.on) return scale.on(b);
  if (part <= parts.hair) return scale.hairOver(a, b);
  if (left <= parts.hair) return scale.hairUnder(a, b);
  if (part <= parts.nearer) return scale.nearLow(a, b);
  return left <= parts.nearer ? scale.nearHigh(a, b) : scale.halfway(a, b);
};

type Ways = {
  readonly on: string;
  readonly over: (at: string) => string;
  readonly under: (at: string) => string;
};

/** Over, under, or at a zero that an eye cannot tell it from. */
const either = (words: Messages, shown: number, { on, over, under }: Ways): string => {
  if (Math.abs(shown) < none) return on;
  return (shown > 0 ? over : under)(onScale(words, Math.abs(shown)));
};

const level: Sayer = (words, { at, shown }) => {
  const { bubble, lifted } = words.spoken;
  const { end } = words.trade;
  if (Math.abs(shown) < none) return bubble.centered;
  const [high, low] = shown > 0 ? [end.B, end.A] : [end.A, end.B];
  const off = Math.abs(bubbleOff(shown, levelAt.get(at) ?? levelLength));
  const run = off < 0.1 ? 'touches' : off < 0.4 ? 'past' : off < 0.7 ? 'half' : 'far';
  return `${bubble[run](high)} ${lifted(low, onScale(words, Math.abs(shown)))}`;
};

const string: Sayer = (words, { at, shown, lines }) => {
  const { spoken } = words;
  if (!at.startsWith('plane.'))
    return either(words, shown, { on: spoken.edgeOn, over: spoken.edgeOver, under: spoken.edgeUnder });
  const { side } = placeOf(at);
  const off = (side && lines[`string.${side}`]?.off) ?? gaugeBlock;
  const said = shown < none ? spoken.stringTouches : spoken.string(onScale(words, shown));
  return off > 0 ? `${said} ${spoken.blocks(spokenLength(words, off))}` : said;
};

const sight: Sayer = (words, { at, shown }) => {
  const { spoken, trade } = words;
  const ticks = Math.round(Math.abs(shown) / tools.eye.division);
  const toward = at.startsWith('plate.') ? spoken.out : trade.side.yard;
  if (ticks === 0) return spoken.sightOn;
  return shown > 0 ? spoken.sightOver(ticks, toward) : spoken.sightUnder(ticks, toward);
};

const sayers: Readonly<Record<ReadAt['tool'], Sayer>> = {
  eye: sight,
  tape: (words, { shown, from }) => {
    const at = onScale(words, shown);
    const { tape, tapeInch, tapeSum } = words.spoken;
    return from === 'inch' ? tapeInch(at) : from === 'last' ? tapeSum(at) : tape(at);
  },
  rule: (words, { shown }) =>
    shown < none ? words.spoken.ruleShut : words.spoken.rule(onScale(words, shown)),
  level,
  waterLevel: (words, { at, shown }) => {
    const { above, below, level: on, together } = words.spoken;
    const said = either(words, shown, { on, over: above, under: below });
    return at === waterStart ? `${together} ${said}` : said;
  },
  string,
  pattern: (words, { shown }) => {
    const { flush, past, short } = words.spoken;
    return either(words, shown, { on: flush, over: past, under: short });
  },
  square: (words, { shown }) => {
    const { noLight, lightBottom, lightTop } = words.spoken;
    return either(words, shown, { on: noLight, over: lightBottom, under: lightTop });
  },
  bob: (words, { shown, from }) => {
    const { swings, tip, tipOn } = words.spoken;
    const { end } = words.trade;
    const said = either(words, shown, {
      on: tipOn,
      over: (at) => tip(at, end.B),
      under: (at) => tip(at, end.A),
    });
    return from === 'still' ? said : `${swings} ${said}`;
  },
  straightedge: (words, { shown }) => {
    const { middleOn, middleOver, middleUnder } = words.spoken;
    return either(words, shown, { on: middleOn, over: middleOver, under: middleUnder });
  },
  storyPole: (words, { shown, from }) => {
    const { poleLeans, polePlumb, topOn, topOver, topUnder } = words.spoken;
    const said = either(words, shown, { on: topOn, over: topOver, under: topUnder });
    return `${from === 'plumb' ? polePlumb : poleLeans} ${said}`;
  },
};

/** A board as an eye goes over it, always the same parts in the same order: what is wrong has to be heard among them. */
const boardSaid = ({ spoken: { board } }: Messages, seen: string): string =>
  [
    seen === 'crownDown' ? board.hollow : board.edge,
    seen === 'twist' ? board.leans : board.ends,
    seen === 'split' ? board.crack : seen === 'knot' ? board.knot : board.notch,
    board.stamp(seen === 'lowGrade' ? gradeStamps.tooLow : gradeStamps.asOrdered),
    seen === 'otherBatch' ? board.gray : board.wood,
  ].join(' ');
