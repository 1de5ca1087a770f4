import { boxOf, hasArea, type Box } from './box';

/** Whether something else is painted over a place where an element should be seen. */

const clear = /^(transparent|rgba\(.*,\s*0\))$/;

const paints = (element: Element): boolean => {
  const { backgroundColor, backgroundImage, opacity } = getComputedStyle(element);
  if (opacity === '0') return false;
  if (/^(canvas|img|video|svg|button|input|select)$/i.test(element.tagName)) return true;
  return !clear.test(backgroundColor) || backgroundImage !== 'none';
};

const family = (a: Element, b: Element): boolean => a.contains(b) || b.contains(a);

/** The element painted over the middle of a box of `element`; undefined when the element itself is on top there. */
const coverAt = (element: Element, { left, top, right, bottom }: Box): Element | undefined => {
  const over = document.elementsFromPoint((left + right) / 2, (top + bottom) / 2);
  const own = over.findIndex((one) => family(one, element) && !one.contains(document.body));
  if (own < 0) return undefined;
  return over.slice(0, own).find(paints);
};

const onScreen = ({ left, top, right, bottom }: Box): boolean => {
  const x = (left + right) / 2;
  const y = (top + bottom) / 2;
  return x >= 0 && y >= 0 && x < innerWidth && y < innerHeight;
};

const cuts = /hidden|clip/;

/** Scrolling into view also shifts boxes that a person cannot scroll: those are put back. */
const bringIntoView = (element: Element): void => {
  element.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
  for (let one = element.parentElement; one; one = one.parentElement) {
    const { overflowX, overflowY } = getComputedStyle(one);
    if (cuts.test(overflowX)) one.scrollLeft = 0;
    if (cuts.test(overflowY)) one.scrollTop = 0;
  }
};

/** Brings an element into view as a person would, then looks at what lies over it. */
export const coverOf = (element: Element): Element | undefined => {
  if (getComputedStyle(element).pointerEvents === 'none') return undefined;
  bringIntoView(element);
  const now = boxOf(element);
  return hasArea(now) && onScreen(now) ? coverAt(element, now) : undefined;
};
