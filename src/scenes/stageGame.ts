import { AUTO, CANVAS, Core, Game, Scale } from 'phaser';
import { StageScene } from './stageScene';

/** The engine behind the stage: one canvas, no input, no sound, asleep unless something changed. */
export type StageGame = {
  readonly scene: StageScene;
  /** Draws once, and keeps drawing only while something moves. */
  readonly wake: () => void;
  readonly resize: (width: number, height: number, ratio: number) => void;
  readonly usesCanvas: boolean;
  readonly destroy: () => void;
};

export type GameSize = { readonly width: number; readonly height: number; readonly ratio: number };

/** Frames drawn after a change before the loop sleeps: one shows it, one more lets late uploads through. */
const settling = 2;

export const startGame = (host: HTMLElement, size: GameSize, canvasOnly: boolean): Promise<StageGame> =>
  new Promise((resolve) => {
    const scene = new StageScene(() => {
      resolve(ready(game, scene));
    });
    const game: Game = new Game({
      type: canvasOnly ? CANVAS : AUTO,
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
    if (!game.loop.running) game.loop.wake();
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
    resize: (width, height, ratio) => {
      game.scale.setZoom(1 / ratio);
      game.scale.resize(Math.round(width * ratio), Math.round(height * ratio));
      // The engine leaves the size before this one on the element where a pixel is a pixel.
      game.canvas.style.width = `${width}px`;
      game.canvas.style.height = `${height}px`;
      wake();
    },
    destroy: () => {
      document.removeEventListener('visibilitychange', onVisible);
      game.destroy(true);
      game.loop.wake();
    },
  };
};
