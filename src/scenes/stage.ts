import type { FiguredRoof } from '../core/roof/figured';
import type { Level } from '../core/level/level';
import type { Pose } from '../core/site/pose';
import type { SiteState } from '../core/site/state';
import type { Corner } from './ink/camera';
import type { Theme } from './ink/palette';
import type { ReadingPicture } from './instruments/readingPicture';
import { startGame, type StageGame } from './stageGame';
import { createHands } from './stageHands';
import { createPainter, type Painter } from './stagePainter';
import type { Insets, ViewName } from './stageLayout';
import type { DrawingWords } from './overview/words';

/** All that the stage needs to draw a moment. Give the same objects again for what did not change: it compares them. */
export type StageView = {
  readonly level: Level;
  readonly site: SiteState;
  readonly pose: Pose;
  readonly figured: FiguredRoof;
  readonly view: ViewName;
  readonly corner: Corner;
  readonly selected: string | undefined;
  readonly theme: Theme;
  readonly words: DrawingWords;
  /** For view 'joint': a joint id such as `ridge:rafter.street.4`. */
  readonly joint?: string;
  /** For view 'reading'. */
  readonly reading?: ReadingPicture;
  readonly insets: Insets;
  /** Station the section stands before; else the selected rafter's, else the last one placed. */
  readonly station?: number;
  /** Side the side view is seen from; street when absent. */
  readonly from?: 'street' | 'yard';
};

export type StageOptions = {
  /** Cross-fades become cuts. */
  readonly reducedMotion: boolean;
  /** Draw with a 2D canvas even where WebGL is there. */
  readonly canvasOnly?: boolean;
};

/** The drawing of the site, in whatever element it is given. It knows no words of its own and touches nothing outside. */
export type Stage = {
  /** Shows a moment. Resolves when it has been drawn. */
  readonly show: (view: StageView) => Promise<void>;
  /** Called with a member id, an open place's id (same names), or undefined for the bare deck. Returns how to stop. */
  readonly onPick: (call: (id: string | undefined) => void) => () => void;
  /** Where a member or open place is on the stage now, CSS pixels from its upper left corner: for tags and labels. */
  readonly placeOf: (id: string) => { readonly x: number; readonly y: number } | undefined;
  /** Back to the whole roof after zooming. */
  readonly resetZoom: () => void;
  readonly zoomBy: (factor: number) => void;
  /** To be called when the host changed size; also watched for by itself. */
  readonly resize: () => void;
  readonly usesCanvas: () => boolean;
  readonly destroy: () => void;
};

const mostRatio = 2;
const ratioNow = (): number => Math.min(mostRatio, Math.max(1, window.devicePixelRatio || 1));

export const createStage = (host: HTMLElement, options: StageOptions): Stage => {
  host.style.overflow = 'hidden';
  host.style.touchAction = 'none';
  const listeners = new Set<(id: string | undefined) => void>();
  const size = (): { width: number; height: number; ratio: number } => ({
    width: Math.max(1, host.clientWidth),
    height: Math.max(1, host.clientHeight),
    ratio: ratioNow(),
  });
  let gone = false;
  let last: StageView | undefined;
  const game: Promise<StageGame> = startGame(host, size(), options.canvasOnly === true);
  const painter: Painter = createPainter(size, options.reducedMotion);
  let running: StageGame | undefined;

  const show = async (view: StageView): Promise<void> => {
    last = view;
    running = await game;
    await fontsReady();
    if (gone || last !== view) return;
    painter.paint(running.scene, view);
    running.wake();
  };
  const again = (): void => {
    if (last && running && !gone) {
      painter.paint(running.scene, last);
      running.wake();
    }
  };
  const resize = (): void => {
    const { width, height, ratio } = size();
    if (running && !gone) running.resize(width, height, ratio);
    again();
  };
  const watch = new ResizeObserver(() => {
    if (running && last) resize();
  });
  watch.observe(host);
  const hands = createHands(host, {
    tap: (x, y) => {
      const id = painter.pick(x, y);
      for (const call of listeners) call(id);
    },
    move: (by) => {
      if (!running || !last || last.view !== 'overview') return;
      painter.nudge(running.scene, by);
      running.wake();
    },
    settle: again,
  });
  return {
    show,
    onPick: (call) => {
      listeners.add(call);
      return () => listeners.delete(call);
    },
    placeOf: painter.placeOf,
    resetZoom: () => {
      painter.resetZoom();
      again();
    },
    zoomBy: (factor) => {
      painter.zoomBy(factor);
      again();
    },
    resize,
    usesCanvas: () => running?.usesCanvas ?? false,
    destroy: () => {
      gone = true;
      watch.disconnect();
      hands.destroy();
      void game.then((started) => {
        started.destroy();
      });
    },
  };
};

/** Drawings letter in this face; without it they fall back and are drawn anyway. Waits at most this long, ms. */
const fontPatience = 1500;
const faces = ['500 14px', '600 16px', '700 22px'].map((font) => `${font} "Barlow Condensed"`);

const fontsReady = async (): Promise<void> => {
  const loads = Promise.all(faces.map((face) => document.fonts.load(face))).catch(() => undefined);
  await Promise.race([loads, new Promise((done) => setTimeout(done, fontPatience))]);
};
