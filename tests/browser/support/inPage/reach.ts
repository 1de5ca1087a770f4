import { boxOf, shared, slack, standsOut, type Box } from './box';

/** How a box fares on its way out through everything that may cut or scroll it. */
export type Reach = {
  /** What cuts it for good, and by how many pixels across and down. */
  readonly cut?: { readonly by: Element; readonly across: number; readonly down: number };
  /** What of it shows as things are scrolled now. */
  readonly showing: Box;
  /** Whether something it stands in can be scrolled. */
  readonly scrolls: boolean;
  /** Whether it, or something it stands in, stays put while the rest is scrolled. */
  readonly pinned: boolean;
};

const cuts = (overflow: string): boolean => overflow === 'hidden' || overflow === 'clip';
const scrolls = (overflow: string): boolean => overflow === 'auto' || overflow === 'scroll';

const screenBox = (): Box => ({ left: 0, top: 0, right: innerWidth, bottom: innerHeight });

/** What a scrolling element can bring into view, as a box on the screen. The page's own box already moves as it scrolls. */
const withinReach = (element: Element): Box => {
  const page = element === document.documentElement;
  const left = boxOf(element).left - (page ? 0 : element.scrollLeft);
  const top = boxOf(element).top - (page ? 0 : element.scrollTop);
  return { left, top, right: left + element.scrollWidth, bottom: top + element.scrollHeight };
};

type Way = Reach & { readonly box: Box };

const axes = [
  { low: 'left', high: 'right', out: 'across', overflow: 'overflowX' },
  { low: 'top', high: 'bottom', out: 'down', overflow: 'overflowY' },
] as const;

/** Through one ancestor: each axis on its own, since a list may scroll down and cut across. */
const through = (way: Way, element: Element): Way => {
  const style = getComputedStyle(element);
  const frame = boxOf(element);
  let { box, cut, scrolls: scrolled } = way;
  for (const { low, high, out, overflow } of axes) {
    const limit = cuts(style[overflow]) ? frame : scrolls(style[overflow]) ? withinReach(element) : undefined;
    if (!limit) continue;
    const over = standsOut(box, limit)[out];
    if (over > slack) cut ??= { by: element, across: 0, down: 0, [out]: over };
    if (scrolls(style[overflow])) {
      scrolled ||= limit[high] - limit[low] > frame[high] - frame[low] + slack;
      box = { ...box, [low]: frame[low], [high]: frame[high] };
    }
  }
  const clips = style.overflowX !== 'visible' || style.overflowY !== 'visible';
  return {
    box,
    showing: clips ? shared(way.showing, frame) : way.showing,
    scrolls: scrolled,
    pinned: way.pinned || style.position === 'sticky',
    ...(cut ? { cut } : {}),
  };
};

/** The page itself cuts what is left of or above its origin, and everything outside when it cannot be scrolled. */
const throughPage = (way: Way, fixed: boolean): Reach => {
  const root = document.documentElement;
  const held =
    fixed || cuts(getComputedStyle(root).overflowY) || cuts(getComputedStyle(document.body).overflowY);
  const over = standsOut(way.box, held ? screenBox() : withinReach(root));
  const outside = over.across > slack || over.down > slack;
  const cut = way.cut ?? (outside ? { by: root, ...over } : undefined);
  return {
    showing: shared(way.showing, screenBox()),
    scrolls: way.scrolls || (!held && root.scrollHeight > innerHeight + slack),
    pinned: way.pinned || fixed,
    ...(cut ? { cut } : {}),
  };
};

/** Follows a box of an element outward. `own` says whether the element's own edges count, as they do for its words. */
export const reachOf = (element: Element, box: Box, own: boolean): Reach => {
  let way: Way = {
    box,
    showing: box,
    scrolls: false,
    pinned: getComputedStyle(element).position === 'sticky',
  };
  let escapes = false;
  for (let one: Element | null = element; one && one !== document.body; one = one.parentElement) {
    const { position, display, transform } = getComputedStyle(one);
    const holds = !escapes || position !== 'static' || transform !== 'none';
    const boxless = display === 'inline' || display === 'contents';
    if (holds && !boxless && (own || one !== element)) way = through(way, one);
    if (position === 'fixed') return throughPage(way, true);
    if (holds) escapes = position === 'absolute';
  }
  return throughPage(way, false);
};
