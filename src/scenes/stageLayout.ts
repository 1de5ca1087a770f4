import type { Area } from './overview/fit';

export type ViewName = 'overview' | 'sheet' | 'section' | 'side' | 'joint' | 'reading';

/** Views that a hand may move and scale. */
export const movable = (view: ViewName | undefined): boolean => view === 'overview' || view === 'sheet';

/** CSS pixels at each edge that lie under something else: rail, sheet, caption, header. */
export type Insets = {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
};

/** Where each drawing lies on the stage, CSS pixels. `linked` is the band of working views under the overview. */
export type StageLayout = {
  readonly main: Area;
  readonly linked: Area | undefined;
  readonly linkedViews: readonly ('section' | 'side')[];
};

/** From the look's tokens: linked views stand 186 high; with the rail and the sheet beside it a wide page leaves the stage 860; one linked view from 700, CSS pixels. */
const linkedHeight = 186;
const wideFrom = 860;
const middleFrom = 700;
/** The overview keeps at least this much height or the linked views go, CSS pixels; ours. */
const leastOverview = 300;

export type Layed = {
  readonly width: number;
  readonly height: number;
  readonly insets: Insets;
  readonly view: ViewName;
};

export const layoutOf = ({ width, height, insets, view }: Layed): StageLayout => {
  const x = insets.left;
  const y = insets.top;
  const w = Math.max(80, width - insets.left - insets.right);
  const h = Math.max(80, height - insets.top - insets.bottom);
  const whole: StageLayout = { main: { x, y, width: w, height: h }, linked: undefined, linkedViews: [] };
  if (view !== 'overview' || width < middleFrom || h - linkedHeight < leastOverview) return whole;
  return {
    main: { x, y, width: w, height: h - linkedHeight },
    linked: { x, y: y + h - linkedHeight, width: w, height: linkedHeight },
    linkedViews: width >= wideFrom ? ['section', 'side'] : ['side'],
  };
};
