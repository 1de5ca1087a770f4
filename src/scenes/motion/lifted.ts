import { add } from '../../core/geometry/vector';
import type { Shown } from '../../present/model/scheme';
import type { Solid } from '../../present/model/solid';
import { movedSolid } from '../../present/model/fallen';
import { onScreen } from '../ink/camera';
import { palettes, type Theme } from '../ink/palette';
import { inkOn, sheetOf } from '../ink/pencil';
import { drawGear } from '../overview/gear';
import type { Overview, Staged } from '../overview/drawOverview';
import type { StageScene } from '../stageScene';
import { drawInTheAir, type Air } from './inTheAir';

/** The hung ridge as it follows a signal that is being held: up and down over the scene without it. */

export type Lifting = {
  readonly air: Air;
  /** The ridge and the end of the boom. */
  readonly hung: readonly Solid[];
  readonly plate: HTMLCanvasElement;
  readonly gear: HTMLCanvasElement;
  /** Device pixels up the picture for an inch up the building. */
  readonly up: number;
  readonly at: { readonly x: number; readonly y: number };
};

export type Lifted = {
  readonly shown: Shown;
  readonly staged: Staged;
  /** The picture without the ridge and what it hangs on. */
  readonly plate: Overview;
  readonly at: Lifting['at'];
  readonly theme: Theme;
  readonly ratio: number;
};

export const liftingOf = ({ shown, staged, plate, at, theme, ratio }: Lifted): Lifting => {
  const { camera, canvas, raster } = plate;
  const gear = sheetOf(canvas.width, canvas.height);
  drawGear({ ink: inkOn(gear), raster, camera, palette: palettes[theme], ratio }, shown, staged.crew.tagHand);
  return {
    air: {
      scene: { raster, ids: new Set(), behind: undefined },
      camera,
      picture: canvas,
      theme,
      ratio,
      lights: staged.lights,
    },
    hung: [...staged.model.solids.filter(({ id }) => id === 'ridge'), ...staged.boom],
    plate: canvas,
    gear,
    up: onScreen(camera, [0, 0, 0])[1] - onScreen(camera, [0, 0, 1])[1],
    at,
  };
};

/** Shows it so many inches over where it hung. */
export const showLifted = (
  scene: StageScene,
  { air, hung, plate, gear, up, at }: Lifting,
  by: number,
): void => {
  const bodies = hung.map((solid) =>
    movedSolid(solid, { turn: (way) => way, move: (p) => add(p, [0, 0, by]) }),
  );
  const drawn = drawInTheAir(air, bodies);
  scene.put('main', plate, at);
  scene.put('moving', drawn?.canvas, { x: at.x + (drawn?.at.x ?? 0), y: at.y + (drawn?.at.y ?? 0) });
  scene.put('over', gear, { x: at.x, y: Math.round(at.y - by * up) });
};
