import { liftingOf, showLifted } from './motion/lifted';
import type { Overview } from './overview/drawOverview';
import { shownOf, type Kept, type Size } from './stageKept';
import type { StageScene } from './stageScene';

/** The hung ridge on the stage while a signal is held. */

export type Lift = {
  readonly by: number;
  readonly size: Size;
  /** The picture without the ridge and what it hangs on. */
  readonly plate: () => Overview;
};

/** The ridge at the place a held signal has brought it to. What it hangs over is drawn once, when it begins to move. */
export const lift = (scene: StageScene, kept: Kept, { by, size, plate }: Lift): void => {
  const { view, layout, staged } = kept;
  if (!view || !layout || !staged || !kept.overview || !view.site.ridge) return;
  kept.lifting ??= liftingOf({
    shown: shownOf(view),
    staged: staged.what,
    plate: plate(),
    at: { x: layout.main.x * size.ratio, y: layout.main.y * size.ratio },
    theme: view.theme,
    ratio: size.ratio,
  });
  scene.cutShort();
  showLifted(scene, kept.lifting, by);
};

/** The picture as it was, before the next one comes over it without a show: the ridge has been seen to move. */
export const setDown = (scene: StageScene, kept: Kept): void => {
  if (!kept.lifting || !kept.overview) return;
  const { at } = kept.lifting;
  kept.lifting = undefined;
  kept.onStage = undefined;
  scene.put('moving', undefined);
  scene.put('over', undefined);
  scene.put('main', kept.overview.canvas, at);
};
