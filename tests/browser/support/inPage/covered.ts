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

/** Brings an element into view as a person would, then looks at what lies over it. */
export const coverOf = (element: Element, box: () => Box): Element | undefined => {
  if (getComputedStyle(element).pointerEvents === 'none') return undefined;
  element.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
  const now = box();
  return hasArea(boxOf(element)) && onScreen(now) ? coverAt(element, now) : undefined;
};
