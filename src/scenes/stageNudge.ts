import { zoomed, type Kept, type Moved } from './stageKept';
import type { StageScene } from './stageScene';

/** While a hand is on it the picture is only moved; it is drawn sharp when the hand lets go. */
export const nudge = (scene: StageScene, kept: Kept, { by, ratio }: { by: Moved; ratio: number }): void => {
  const { drawn, layout } = kept;
  if (!layout) return;
  const { x, y } = layout.main;
  kept.zoom = zoomed(kept.zoom, { ...by, about: [by.about[0] - x, by.about[1] - y] });
  const k = kept.zoom.scale / drawn.scale;
  scene.nudge({
    x: (x + kept.zoom.x - drawn.x * k) * ratio,
    y: (y + kept.zoom.y - drawn.y * k) * ratio,
    scale: k,
  });
};
