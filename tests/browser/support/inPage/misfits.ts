import type { Misfit } from '../misfit';
import { boxOf, hasArea, shared, slack, standsOut, type Box } from './box';
import { coverOf } from './covered';
import { reachOf } from './reach';
import { nameOf, targetsSeen, wordsSeen, type Words } from './seen';

/** Least text size on screen, CSS pixels, and that of a digit in a stacked fraction: the look's own rules. */
const leastText = 13;
const leastStacked = 12;

/** Least side of a target, CSS pixels: WCAG 2.2, 2.5.8. */
const leastTarget = 24;

/** Letters rarely fill the height that their line takes: this share of their size may be cut off unseen. Ours. */
const emptyLine = 0.2;

const px = (value: number): string => `${Math.round(value * 10) / 10} px`;

const sizeOf = (element: Element): number => parseFloat(getComputedStyle(element).fontSize);

const around = (lines: readonly Box[]): Box =>
  lines.reduce((all, line) => ({
    left: Math.min(all.left, line.left),
    top: Math.min(all.top, line.top),
    right: Math.max(all.right, line.right),
    bottom: Math.max(all.bottom, line.bottom),
  }));

const cutWords = ({ element, text, lines }: Words): readonly Misfit[] => {
  const { cut } = reachOf(element, around(lines), true);
  if (!cut || (cut.across <= slack && cut.down <= emptyLine * sizeOf(element))) return [];
  const why = `${px(cut.across)} across, ${px(cut.down)} down, by ${nameOf(cut.by).slice(0, 40)}`;
  return [{ kind: 'cut text', what: text.slice(0, 60), why }];
};

/** Words too long for their column that run on over something to press or type into. */
const spilledWords =
  (targets: readonly Element[]) =>
  ({ element, text, lines }: Words): readonly Misfit[] => {
    const column = boxOf(blockAround(element));
    const spilled = lines.filter((line) => standsOut(line, column).across > slack);
    const under = targets.find((target) => spilled.some((line) => hasArea(shared(line, boxOf(target)))));
    return under ? [{ kind: 'overlap', what: text.slice(0, 60), why: `over ${nameOf(under)}` }] : [];
  };

const blockAround = (element: Element): Element => {
  const inWords = ['inline', 'contents'].includes(getComputedStyle(element).display);
  return inWords && element.parentElement ? blockAround(element.parentElement) : element;
};

const smallWords = ({ element, text }: Words): readonly Misfit[] => {
  const least = element.closest('.frac') ? leastStacked : leastText;
  const size = sizeOf(element);
  return size < least ? [{ kind: 'small text', what: text.slice(0, 60), why: px(size) }] : [];
};

const coveredWords = ({ element, text }: Words): readonly Misfit[] => {
  const cover = coverOf(element);
  return cover ? [{ kind: 'covered', what: text.slice(0, 60), why: `by ${nameOf(cover)}` }] : [];
};

const lostTarget = (element: Element): readonly Misfit[] => {
  const { cut } = reachOf(element, boxOf(element), false);
  if (!cut) return [];
  const why = `${px(cut.across)} across, ${px(cut.down)} down, of ${nameOf(cut.by).slice(0, 40)}`;
  return [{ kind: 'out of reach', what: nameOf(element), why }];
};

const coveredTarget = (element: Element): readonly Misfit[] => {
  const cover = coverOf(element);
  return cover ? [{ kind: 'covered', what: nameOf(element), why: `by ${nameOf(cover)}` }] : [];
};

const smallTarget = (element: Element): readonly Misfit[] => {
  const { left, right, top, bottom } = boxOf(element.closest('label') ?? element);
  const inWords = getComputedStyle(element).display === 'inline';
  const least = Math.min(right - left, bottom - top);
  return least < leastTarget - slack && !inWords
    ? [{ kind: 'small target', what: nameOf(element), why: px(least) }]
    : [];
};

/** Two targets on one place. What stays put over a list that scrolls under it can be got out of the way. */
const overlaps = (targets: readonly Element[]): readonly Misfit[] => {
  const placed = targets.map((element) => ({ element, ...reachOf(element, boxOf(element), false) }));
  return placed.flatMap((a, i) =>
    placed.slice(i + 1).flatMap((b): readonly Misfit[] => {
      const related = a.element.contains(b.element) || b.element.contains(a.element);
      const slides = (a.pinned && b.scrolls) || (b.pinned && a.scrolls);
      const common = shared(a.showing, b.showing);
      if (related || slides || !hasArea(common)) return [];
      const why = `${nameOf(b.element)}: ${px(common.right - common.left)} by ${px(common.bottom - common.top)}`;
      return [{ kind: 'overlap', what: nameOf(a.element), why }];
    }),
  );
};

const sideways = (): readonly Misfit[] => {
  const { scrollWidth } = document.documentElement;
  const over = standsOut({ left: 0, top: 0, right: scrollWidth, bottom: 0 }, boxOf(document.documentElement));
  return scrollWidth > innerWidth + slack
    ? [{ kind: 'sideways', what: 'the page', why: `scrolls ${px(over.across)} sideways` }]
    : [];
};

/** Where everything that scrolls stands now. Returns how to put it back. */
const scrolledAs = (): (() => void) => {
  const placed = [...document.querySelectorAll('*')]
    .filter((one) => one.scrollHeight > one.clientHeight || one.scrollWidth > one.clientWidth)
    .map((element) => ({ element, left: element.scrollLeft, top: element.scrollTop }));
  return () => {
    for (const { element, left, top } of placed) element.scrollTo({ left, top, behavior: 'instant' });
  };
};

/** Everything on the page now that cannot be read, reached or hit. Looking scrolls the page, and puts it back. */
export const misfits = (): readonly Misfit[] => {
  const putBack = scrolledAs();
  const words = wordsSeen();
  const targets = targetsSeen();
  const found = [
    ...sideways(),
    ...words.flatMap(cutWords),
    ...words.flatMap(spilledWords(targets)),
    ...words.flatMap(smallWords),
    ...targets.flatMap(lostTarget),
    ...targets.flatMap(smallTarget),
    ...overlaps(targets),
    ...words.flatMap(coveredWords),
    ...targets.flatMap(coveredTarget),
  ];
  putBack();
  return found;
};
