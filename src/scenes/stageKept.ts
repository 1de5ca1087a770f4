import { placeOf } from '../core/site/ids';
import type { Act } from '../present/model/actSeen';
import type { Shown } from '../present/model/scheme';
import type { Raster } from './ink/raster';
import type { JointSeen } from './motion/jointShow';
import type { Lifting } from './motion/lifted';
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
  /** What the main picture was drawn from, and what all of the stage was. */
  main: readonly unknown[];
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
  /** The ridge while it follows a held signal. */
  lifting: Lifting | undefined;
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

type Pictured = { readonly view: StageView; readonly kept: Kept; readonly size: Size };

/** Everything that puts a picture where it is, and its light. */
export const lieOf = ({ view, kept, size: { width, height, ratio } }: Pictured): readonly unknown[] => {
  const { top, right, bottom, left } = view.insets;
  return [view.theme, width, height, ratio, top, right, bottom, left, view.corner, kept.zoom];
};

/** What the main picture says or shows besides the moment: the overview is the same wherever the section stands. */
export const toldOn = ({ view, words, joint, reading, from, ...rest }: StageView): readonly unknown[] => {
  if (view === 'overview') return [words.ridge, words.eave, words.up, words.ticks];
  if (view === 'joint') return [joint, words.joint?.title, words.eachTick];
  return [words, joint, reading, stationOf({ view, words, ...rest }), from];
};

/** The section stands before the chosen rafter, else before the last one placed. */
export const stationOf = ({ station, selected, pose }: StageView): number => {
  if (station !== undefined) return station;
  const chosen = selected === undefined ? undefined : placeOf(selected).station;
  if (chosen !== undefined && /^(rafter|joist|collar)/.test(selected ?? '')) return chosen;
  const placed = Object.values(pose.rafters);
  return placed[placed.length - 1]?.station ?? 2;
};
