import { facesReady } from './ink/faces';
import type { Area } from './overview/fit';
import { startGame, type StageGame } from './stageGame';
import { createHands } from './stageHands';
import { createPainter, type Painter } from './stagePainter';
import { movable } from './stageLayout';
import type { StageView } from './stageView';

export type StageOptions = {
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
  /** The member or open place drawn there, CSS pixels from the stage's upper left corner. */
  readonly pickAt: (x: number, y: number) => string | undefined;
  /** How much of the work a box of the stage covers, CSS pixels; only to be compared. */
  readonly hides: (box: Area) => number;
  /** Back to the whole roof after zooming. */
  readonly resetZoom: () => void;
  /** Shows the hung ridge so many inches over where it hangs, while a signal is held; undefined once that is over. */
  readonly lift: (by: number | undefined) => void;
  readonly zoomBy: (factor: number) => void;
  /** Moves the picture, CSS pixels. */
  readonly panBy: (x: number, y: number) => void;
  /** To be called when the host changed size; also watched for by itself. */
  readonly resize: () => void;
  readonly usesCanvas: () => boolean;
  readonly destroy: () => void;
};

const mostRatio = 2;
const ratioNow = (): number => Math.min(mostRatio, Math.max(1, window.devicePixelRatio || 1));

type Size = { readonly width: number; readonly height: number; readonly ratio: number };

const sizeOf = (host: HTMLElement) => (): Size => ({
  width: Math.max(1, host.clientWidth),
  height: Math.max(1, host.clientHeight),
  ratio: ratioNow(),
});

/** What a stage is at the moment: the last view asked for, the engine once it runs, and whether it is over. */
type Now = {
  readonly painter: Painter;
  readonly size: () => Size;
  readonly listeners: Set<(id: string | undefined) => void>;
  last: StageView | undefined;
  game: Promise<StageGame>;
  running: StageGame | undefined;
  gone: boolean;
};

const again = ({ last, running, gone, painter }: Now): void => {
  if (!last || !running || gone) return;
  painter.paint(running.scene, last);
  running.wake();
};

const resized = (now: Now): void => {
  const { width, height, ratio } = now.size();
  if (now.running && !now.gone) now.running.resize(width, height, ratio);
  again(now);
};

const handsOn = (host: HTMLElement, now: Now): { readonly destroy: () => void } =>
  createHands(host, {
    tap: (x, y) => {
      const id = now.painter.pick(x, y);
      for (const call of now.listeners) call(id);
    },
    move: (by) => {
      if (!now.running || !movable(now.last?.view)) return;
      now.painter.nudge(now.running.scene, by);
      now.running.wake();
    },
    settle: () => {
      again(now);
    },
  });

/** Nobody waits longer for a frame, ms; a page that is not looked at gets none. Ours. */
const latestFrame = 120;

/** Once what the page says of an act has been painted: the drawing takes longer. */
const pagePainted = (): Promise<void> =>
  document.hidden
    ? Promise.resolve()
    : new Promise((done) => {
        const late = setTimeout(done, latestFrame);
        requestAnimationFrame(() => {
          clearTimeout(late);
          setTimeout(done);
        });
      });

const showOn =
  (now: Now): Stage['show'] =>
  async (view) => {
    now.last = view;
    now.running = await now.game;
    await facesReady();
    await pagePainted();
    // Another view may have been asked for while the engine, the fonts and the frame were coming.
    if (now.last === view) again(now);
  };

/** Where WebGL was taken away for good, the same drawing goes on without it; nothing of it is lost. */
const onceLost = (host: HTMLElement, now: Now): void => {
  const swap = async (old: StageGame): Promise<void> => {
    if (now.gone) return;
    now.running = undefined;
    now.game = startGame(host, now.size(), true);
    old.destroy();
    now.running = await now.game;
    now.painter.forget();
    again(now);
  };
  void now.game.then((started) => started.onLost(() => void swap(started)));
};

export const createStage = (host: HTMLElement, options: StageOptions = {}): Stage => {
  host.style.overflow = 'hidden';
  host.style.touchAction = 'none';
  const size = sizeOf(host);
  const painter = createPainter(size);
  const now: Now = {
    painter,
    size,
    listeners: new Set(),
    game: startGame(host, size(), options.canvasOnly === true),
    last: undefined,
    running: undefined,
    gone: false,
  };
  onceLost(host, now);
  const watch = new ResizeObserver(() => {
    if (now.running && now.last) resized(now);
  });
  watch.observe(host);
  const hands = handsOn(host, now);
  return {
    show: showOn(now),
    onPick: (call) => {
      now.listeners.add(call);
      return () => now.listeners.delete(call);
    },
    placeOf: painter.placeOf,
    pickAt: painter.pick,
    lift: (by) => {
      if (!now.running || now.gone) return;
      now.painter.lift(now.running.scene, by);
      now.running.wake();
    },
    hides: painter.hides,
    resetZoom: () => {
      painter.resetZoom();
      again(now);
    },
    zoomBy: (factor) => {
      painter.zoomBy(factor);
      again(now);
    },
    panBy: (x, y) => {
      if (now.running) painter.nudge(now.running.scene, { x, y, scale: 1, about: [0, 0] });
      again(now);
    },
    resize: () => {
      resized(now);
    },
    usesCanvas: () => now.running?.usesCanvas ?? false,
    destroy: () => {
      now.gone = true;
      watch.disconnect();
      hands.destroy();
      void now.game.then((started) => {
        started.destroy();
      });
    },
  };
};
