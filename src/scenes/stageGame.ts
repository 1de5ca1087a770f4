import { AUTO, CANVAS, Core, Game, Renderer, Scale } from 'phaser';
import { StageScene } from './stageScene';

/** The engine behind the stage: one canvas, no input, no sound, asleep unless something changed. */
export type StageGame = {
  readonly scene: StageScene;
  /** Draws once, and keeps drawing only while something moves. */
  readonly wake: () => void;
  readonly resize: (width: number, height: number, ratio: number) => void;
  readonly usesCanvas: boolean;
  /** Called once when WebGL was taken away and did not come back: another game has to draw. */
  readonly onLost: (call: () => void) => void;
  readonly destroy: () => void;
};

export type GameSize = { readonly width: number; readonly height: number; readonly ratio: number };

/** Frames drawn after a change before the loop sleeps: one shows it, one more lets late uploads through. */
const settling = 2;

/** What browsers take away they usually give back at once; after this long nobody waits any more, ms. Ours. */
const patience = 1500;

/** Draws with WebGL where that works, else with a 2D canvas, which loses nothing: the layers are canvases already. */
export const startGame = (host: HTMLElement, size: GameSize, canvasOnly: boolean): Promise<StageGame> =>
  begun(host, size, canvasOnly ? CANVAS : AUTO).catch((error: unknown) => {
    // It said it could and then did not, as when too many pages draw at once.
    if (canvasOnly) throw error;
    return begun(host, size, CANVAS);
  });

const begun = (host: HTMLElement, size: GameSize, type: number): Promise<StageGame> =>
  new Promise((resolve) => {
    const scene = new StageScene(() => {
      resolve(ready(game, scene));
    });
    const game: Game = new Game({
      type,
      parent: host,
      width: Math.round(size.width * size.ratio),
      height: Math.round(size.height * size.ratio),
      scale: { mode: Scale.NONE, zoom: 1 / size.ratio },
      transparent: false,
      backgroundColor: '#d9cdb3',
      banner: false,
      audio: { noAudio: true },
      input: { mouse: false, touch: false, keyboard: false, gamepad: false },
      autoFocus: false,
      disableContextMenu: false,
      scene: [scene],
      render: { antialias: true, roundPixels: true, powerPreference: 'low-power' },
    });
  });

const ready = (game: Game, scene: StageScene): StageGame => {
  let left = settling;
  const wake = (): void => {
    left = settling;
    // Nobody looks: it is drawn when somebody does.
    if (!document.hidden && !game.loop.running) game.loop.wake();
  };
  game.events.on(Core.Events.POST_RENDER, () => {
    if (scene.busy()) left = settling;
    else if (--left <= 0) game.loop.sleep();
  });
  const onVisible = (): void => {
    if (!document.hidden) wake();
  };
  document.addEventListener('visibilitychange', onVisible);
  return {
    scene,
    wake,
    usesCanvas: game.renderer.type === CANVAS,
    onLost: (call) => watchContext(game, { restored: wake, lost: call }),
    resize: (width, height, ratio) => {
      game.scale.resize(Math.round(width * ratio), Math.round(height * ratio));
      // After it: only a new zoom makes the engine give the canvas its size on the page, where that is one to one.
      game.scale.setZoom(1 / ratio);
      wake();
    },
    destroy: () => {
      document.removeEventListener('visibilitychange', onVisible);
      game.destroy(true);
      game.loop.wake();
    },
  };
};

/** A drawing on WebGL can be taken away at any time: by the machine waking up, by its driver, by other pages. */
const watchContext = (
  { renderer, events }: Game,
  { restored, lost }: { readonly restored: () => void; readonly lost: () => void },
): void => {
  if (renderer.type === CANVAS) return;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  renderer.on(Renderer.Events.LOSE_WEBGL, () => {
    clearTimeout(waiting);
    waiting = setTimeout(lost, patience);
  });
  renderer.on(Renderer.Events.RESTORE_WEBGL, () => {
    clearTimeout(waiting);
    restored();
  });
  events.once(Core.Events.DESTROY, () => clearTimeout(waiting));
};
