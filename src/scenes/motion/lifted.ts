import { fastened } from '../../core/site/holding';
import type { RafterId } from '../../core/site/ids';
import type { Place, Pose } from '../../core/site/pose';
import { roofSolids } from '../../present/model/roofSolids';
import { schemeOf, type Shown } from '../../present/model/scheme';
import type { Solid } from '../../present/model/solid';
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
  readonly shown: Shown;
  readonly plate: HTMLCanvasElement;
  readonly gear: HTMLCanvasElement;
  /** Device pixels up the picture for an inch up the building. */
  readonly up: number;
  readonly at: { readonly x: number; readonly y: number };
};

export type Lifted = {
  readonly shown: Shown;
  readonly staged: Staged;
  /** The picture without what hangs and what it hangs on. */
  readonly plate: Overview;
  readonly at: Lifting['at'];
  readonly theme: Theme;
  readonly ratio: number;
};

export const liftingOf = ({ shown, staged, plate, at, theme, ratio }: Lifted): Lifting => {
  const { camera, canvas, raster } = plate;
  const air: Air = {
    scene: { raster, ids: new Set(), behind: undefined },
    camera,
    picture: canvas,
    theme,
    ratio,
    lights: staged.lights,
  };
  // The boom goes up and down as it is, so it is drawn once, with the gear that hangs from it.
  const gear = sheetOf(canvas.width, canvas.height);
  const ink = inkOn(gear);
  const boom = drawInTheAir(air, staged.boom);
  if (boom) ink.drawImage(boom.canvas, boom.at.x, boom.at.y);
  drawGear({ ink, raster, camera, palette: palettes[theme], ratio }, shown, staged.crew.tagHand);
  return {
    air,
    shown,
    plate: canvas,
    gear,
    up: onScreen(camera, [0, 0, 0])[1] - onScreen(camera, [0, 0, 1])[1],
    at,
  };
};

/** The ridge and every rafter that is fastened to it. */
export const hangsTogether = ({ site, pose }: Shown): ReadonlySet<string> =>
  new Set(['ridge', ...raftersOn({ site, pose })]);

const raftersOn = ({ site, pose }: Pick<Shown, 'site' | 'pose'>): readonly RafterId[] =>
  (Object.keys(pose.rafters) as RafterId[]).filter((id) => fastened(site, `ridge:${id}`));

/** What hangs so many inches over where it hung: heels stay, and the ridge ends of rafters go with the ridge. */
export const liftedBy = (shown: Shown, by: number): Shown => {
  const { pose } = shown;
  const up = (place: Place): Place => ({ ...place, z: place.z + by });
  const on = new Set<string>(raftersOn(shown));
  const turned = Object.entries(pose.rafters).map(([id, rafter]) => {
    if (!on.has(id)) return [id, rafter] as const;
    return [id, { ...rafter, top: { ...rafter.top, z: rafter.top.z + by } }] as const;
  });
  const ridge: Pose['ridge'] = pose.ridge && {
    A: up(pose.ridge.A),
    mid: up(pose.ridge.mid),
    B: up(pose.ridge.B),
  };
  return { ...shown, pose: { ...pose, ridge, rafters: Object.fromEntries(turned) } };
};

const bodiesAt = (shown: Shown, by: number): readonly Solid[] => {
  const lifted = liftedBy(shown, by);
  const ids = hangsTogether(shown);
  return roofSolids(lifted, schemeOf(lifted)).filter(({ id }) => ids.has(id));
};

/** Shows it so many inches over where it hung. */
export const showLifted = (
  scene: StageScene,
  { air, shown, plate, gear, up, at }: Lifting,
  by: number,
): void => {
  const bodies = bodiesAt(shown, by);
  const drawn = drawInTheAir(air, bodies);
  scene.put('main', plate, at);
  scene.put('moving', drawn?.canvas, { x: at.x + (drawn?.at.x ?? 0), y: at.y + (drawn?.at.y ?? 0) });
  scene.put('over', gear, { x: at.x, y: Math.round(at.y - by * up) });
};
