import type { ToolId } from '../core/instruments/tool';
import type { Attempt } from '../core/site/attempt';

/** The drawing as panels know it: something that can be told what to show and tells what was picked. */
export type StageView = 'overview' | 'section' | 'side' | 'joint' | 'reading' | 'sheet';
export type StageCorner = 'yard' | 'street' | 'A' | 'B';

export type StageShow = {
  readonly attempt: Attempt;
  readonly view: StageView;
  readonly corner: StageCorner;
  readonly selected: string | undefined;
  readonly theme: 'day' | 'night';
  readonly lang: 'en' | 'es';
  readonly joint?: string;
  /** Nothing moves: what happens is shown as it ended. */
  readonly still: boolean;
  /** Shows how loads get down through the chosen pair, on the overview. */
  readonly loads?: boolean;
};

/** A part of the stage, CSS pixels from its upper left corner. */
export type StageBox = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

export type StagePort = {
  /** Resolves when it has been drawn. */
  readonly show: (show: StageShow) => Promise<void>;
  /** Where a member or an open place is on the drawing now, CSS pixels from its upper left corner. */
  readonly placeOf: (id: string) => { readonly x: number; readonly y: number } | undefined;
  /** How much of the work something laid over this box of the drawing would hide, CSS pixels; only to be compared. */
  readonly hides: (box: StageBox) => number;
  /** The member or open place drawn there, CSS pixels from the drawing's upper left corner. */
  readonly pickAt: (x: number, y: number) => string | undefined;
  /** Overview and sheet: scales about the middle, moves by CSS pixels, shows the whole again. */
  readonly zoomBy: (factor: number) => void;
  readonly panBy: (x: number, y: number) => void;
  readonly resetZoom: () => void;
  /** The hung ridge follows a held signal: so many inches over where it hangs; undefined once that is over. */
  readonly lift: (by: number | undefined) => void;
  /** Nothing where the bare deck was touched. */
  readonly onPick: (pick: (id: string | undefined) => void) => void;
  readonly destroy: () => void;
};

/** What main hands to the panels: how a drawing begins in a host, and small pictures drawn once. */
export type Drawings = {
  readonly stage: (host: HTMLElement) => Promise<StagePort>;
  readonly thumb: (canvas: HTMLCanvasElement, show: Omit<StageShow, 'view' | 'selected' | 'still'>) => void;
  /** The site as it stood, large and with its people, what is selected outlined. CSS pixels, and device pixels to one. */
  readonly standing: (
    show: Omit<StageShow, 'view' | 'joint' | 'still'>,
    size: { readonly width: number; readonly height: number; readonly ratio: number },
  ) => HTMLCanvasElement;
  readonly reading: (
    canvas: HTMLCanvasElement,
    show: {
      readonly attempt: Attempt;
      readonly tool: ToolId;
      readonly at: string;
      readonly from?: string;
      readonly shown: number | string;
      readonly theme: 'day' | 'night';
      readonly lang: 'en' | 'es';
    },
  ) => void;
};
