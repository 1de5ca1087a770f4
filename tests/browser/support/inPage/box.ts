/** A rectangle on the screen, CSS pixels from the upper left of what is seen. */
export type Box = {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

/** Half-pixel edges and rounding are no fault. Ours. */
export const slack = 1;

export const boxOf = (element: Element): Box => element.getBoundingClientRect();

/** The part that both cover; upside down when there is none. */
export const shared = (a: Box, b: Box): Box => ({
  left: Math.max(a.left, b.left),
  top: Math.max(a.top, b.top),
  right: Math.min(a.right, b.right),
  bottom: Math.min(a.bottom, b.bottom),
});

export const hasArea = ({ left, top, right, bottom }: Box, over = slack): boolean =>
  right - left > over && bottom - top > over;

/** How far a box stands out of another, across and down; nothing below the slack. */
export const standsOut = (box: Box, of: Box): { readonly across: number; readonly down: number } => ({
  across: Math.max(of.left - box.left, box.right - of.right, 0),
  down: Math.max(of.top - box.top, box.bottom - of.bottom, 0),
});
