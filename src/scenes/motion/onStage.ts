import type { StageScene } from '../stageScene';
import type { Performance } from './performance';

/** Plays a performance on the stage's layers. */

/** The picture before gives way to the scene in so long, ms; ours. */
const giveWay = 150;

export type Playing = {
  readonly scene: StageScene;
  /** The picture it ends with. */
  readonly end: HTMLCanvasElement;
  readonly before: HTMLCanvasElement;
  /** Where the pictures lie on the stage, device pixels. */
  readonly at: { readonly x: number; readonly y: number };
};

export const playOn = (
  { scene, end, before, at }: Playing,
  { length, scene: under, frame }: Performance,
): void => {
  scene.put('before', before, at);
  scene.put('main', under ?? end, at);
  scene.see('main', 0);
  scene.run(
    length,
    (t) => {
      const passed = t * length;
      scene.see('main', Math.min(1, passed / giveWay));
      scene.see('before', Math.max(0, Math.min(1, 2 - passed / giveWay)));
      const parts = frame(t);
      scene.put('moving', parts[0]?.canvas, moved(at, parts[0]?.at));
      scene.put('over', parts[1]?.canvas, moved(at, parts[1]?.at));
    },
    () => {
      scene.put('before', undefined);
      scene.put('moving', undefined);
      scene.put('over', undefined);
      scene.put('main', end, at);
    },
  );
};

type At = Playing['at'];

const moved = (at: At, by: At | undefined): At => ({ x: at.x + (by?.x ?? 0), y: at.y + (by?.y ?? 0) });
