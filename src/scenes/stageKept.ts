import type { Act } from '../present/model/actSeen';
import type { Shown } from '../present/model/scheme';
import type { Raster } from './ink/raster';
import type { JointSeen } from './motion/jointShow';
import type { OnStage } from './motion/showAct';
import type { Sheet } from './measured/sheet';
import type { ThirdAngle } from './measured/thirdAngle';
import type { Overview, Staged } from './overview/drawOverview';
import type { Area } from './overview/fit';
import type { StageLayout } from './stageLayout';
import type { StageView } from './stageView';

/** What the stage remembers of what it drew. */

export type Size = { readonly width: number; readonly height: number; readonly ratio: number };
export type Zoom = { readonly scale: number; readonly x: number; readonly y: number };
export type Moved = {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly about: readonly [number, number];
};

export type Kept = {
  deck: string;
  key: readonly unknown[];
  chosen: readonly unknown[];
  staged:
    | {
        readonly site: unknown;
        readonly pose: unknown;
        readonly act: unknown;
        readonly corner: string;
        readonly what: Staged;
      }
    | undefined;
  overview: Overview | undefined;
  sheet: Sheet | undefined;
  /** What the sheet that hangs was drawn from. */
  sheetKey: readonly unknown[];
  /** The sheet of three views, while it is what hangs. */
  third: ThirdAngle | undefined;
  sheetAt: { readonly x: number; readonly y: number };
  view: StageView | undefined;
  layout: StageLayout | undefined;
  zoom: Zoom;
  /** How the other views were left. */
  zooms: Map<StageView['view'], Zoom>;
  drawn: Zoom;
  corner: string;
  /** The moment on the overview, for what happens next to be shown. */
  onStage: OnStage | undefined;
  /** The last thing done before what is on the stage. */
  act: Act | undefined;
  /** The joint in the close-up, while there is one. */
  joint: JointSeen | undefined;
  /** Rasters of the picture before, needed as long as its act is being shown. */
  spare: Raster[];
  /** Rasters of lights that are out: the next overview is compared with them. */
  dimmed: Raster[];
};

export const whole: Zoom = { scale: 1, x: 0, y: 0 };
const zoomRange = { least: 0.8, most: 5 };

export const shownOf = ({ level, site, pose, figured, lastAct }: StageView): Shown => ({
  level,
  site,
  pose,
  figured,
  lastAct,
});

export const scaled = ({ x, y, width, height }: Area, ratio: number): Area => ({
  x: x * ratio,
  y: y * ratio,
  width: width * ratio,
  height: height * ratio,
});

export const zoomed = (zoom: Zoom, { x, y, scale, about }: Moved): Zoom => {
  const next = Math.min(zoomRange.most, Math.max(zoomRange.least, zoom.scale * scale));
  const k = next / zoom.scale;
  return {
    scale: next,
    x: about[0] + (zoom.x - about[0]) * k + x,
    y: about[1] + (zoom.y - about[1]) * k + y,
  };
};
