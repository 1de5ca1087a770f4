import { boxOf, hasArea, type Box } from './box';

/** What of the page is meant to be seen and used right now. */

const targets = [
  'button',
  'a[href]',
  'input:not([type="hidden"])',
  'select',
  'textarea',
  'summary',
  '[role="button"]',
  '[role="tab"]',
  '[role="radio"]',
  '[role="checkbox"]',
  '[role="switch"]',
  '[role="slider"]',
  '[role="menuitem"]',
].join(',');

/** Words for ears only are shrunk to a speck: every ancestor must leave room. */
const shrunk = (element: Element): boolean => {
  for (let one: Element | null = element; one && one !== document.body; one = one.parentElement) {
    const { overflowX, clipPath, display } = getComputedStyle(one);
    if (display === 'inline' || display === 'contents') continue;
    const { left, top, right, bottom } = boxOf(one);
    if (overflowX !== 'visible' && (right - left <= 1 || bottom - top <= 1)) return true;
    if (clipPath === 'inset(50%)') return true;
  }
  return false;
};

export const isSeen = (element: Element): boolean =>
  element.checkVisibility({ opacityProperty: true, visibilityProperty: true, contentVisibilityAuto: true }) &&
  !shrunk(element);

/** While something asks for an answer, or lies over the rest until one looks elsewhere, only that counts; else the whole page. */
const asking = (): Element =>
  [...document.querySelectorAll('dialog[open], [aria-modal="true"], .roofWords:focus-within')]
    .filter(isSeen)
    .at(-1) ?? document.body;

/** A run of words on the screen: the element it is written in, and the lines it takes. */
export type Words = { readonly element: Element; readonly text: string; readonly lines: readonly Box[] };

const wordsOf = (node: Text): Words | undefined => {
  const element = node.parentElement;
  const text = node.data.trim();
  if (!element || text === '' || element.closest('script, style, noscript, template, select'))
    return undefined;
  if (!isSeen(element)) return undefined;
  const range = document.createRange();
  range.selectNodeContents(node);
  return { element, text, lines: [...range.getClientRects()].filter((line) => hasArea(line)) };
};

/** Every run of words that is meant to be seen. */
export const wordsSeen = (): readonly Words[] => {
  const walker = document.createTreeWalker(asking(), NodeFilter.SHOW_TEXT);
  const found: Words[] = [];
  while (walker.nextNode()) {
    const words = wordsOf(walker.currentNode as Text);
    if (words && words.lines.length > 0) found.push(words);
  }
  return found;
};

/** Everything that can be pressed or typed into. */
export const targetsSeen = (): readonly Element[] =>
  [...asking().querySelectorAll(targets)].filter((element) => isSeen(element) && hasArea(boxOf(element)));

/** A name by which a person finds it: what it says, else what it is. */
export const nameOf = (element: Element): string => {
  const said = element.getAttribute('aria-label') ?? element.textContent.trim().replace(/\s+/g, ' ');
  const tag = element.tagName.toLowerCase();
  const mark = element.id ? `#${element.id}` : [...element.classList].map((one) => `.${one}`).join('');
  return `${tag}${mark}${said === '' ? '' : ` “${said.slice(0, 50)}”`}`;
};
