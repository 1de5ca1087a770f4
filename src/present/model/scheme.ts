import { againstWall, postPlaces, roofOf, sidesOf } from '../../core/level/layout';
import type { Level } from '../../core/level/level';
import type { CommonRafter, FiguredRoof } from '../../core/roof/figured';
import type { Side } from '../../core/roof/side';
import { gradient } from '../../core/units/slope';
import type { Action } from '../../core/site/action';
import type { Pose } from '../../core/site/pose';
import type { SiteState } from '../../core/site/state';

/** All that is needed to say where bodies are. */
export type Shown = {
  readonly level: Level;
  readonly pose: Pose;
  readonly site: SiteState;
  readonly figured: FiguredRoof;
  /** The last act that stands: what the people are at. Views without people leave it out. */
  readonly lastAct?: Action | undefined;
};

/** Figured measures the drawing keeps coming back to, inches. */
export type Scheme = {
  readonly half: number;
  /** y where the building ends toward the yard: outside of the plate, or the face of the wall behind a ledger. */
  readonly yard: number;
  /** y of the middle of the staging: under the ridge, or before a ledger. */
  readonly lane: number;
  /** Those that are built. */
  readonly sides: readonly Side[];
  readonly length: number;
  readonly m: number;
  readonly common: CommonRafter;
  readonly top: number;
  readonly stations: readonly number[];
  /** From end A to end B. */
  readonly posts: readonly number[];
  /** Middle of a bay near end A and near end B: where braces across stand, and where the one along begins. */
  readonly braces: readonly [number, number];
  readonly alongs: readonly [number, number];
  /** Top of what the crew walks on, when there is something. */
  readonly floor: number | undefined;
  readonly tieDepth: number;
};

/** Where a post stands when there is nothing to walk on: on the joists' line. Inches. */
export const bareFloor = 0;
/** How far from the middle, toward the yard, the foot of a brace across stands, inches; ours. */
export const acrossFoot = 36;

/** Thickness of the sheets laid to walk on, inches. Common practice, no source. */
export const sheetThickness = 0.75;
/** A sheathed wall's sheet, inches. Common practice, no source. */
export const wallSheet = 0.5;
/** One plate's thickness, inches: dressed size of 2-inch lumber. */
export const plateThickness = 1.5;

export const schemeOf = ({ level, site, figured }: Shown): Scheme => {
  const common = figured.commonRafters[0] as CommonRafter;
  const { stations } = figured.layout;
  const bay = (n: number): number => ((stations[n - 1] ?? 0) + (stations[n] ?? 0)) / 2;
  const last = stations.length - 1;
  const tieDepth = level.plan.rafter.depth;
  const joists = Object.keys(site.members).some((id) => id.startsWith('joist.'));
  const platform = site.ready.platform !== undefined;
  const floor = platform ? tieDepth + sheetThickness : joists ? tieDepth : undefined;
  return {
    half: level.plan.span / 2,
    yard: againstWall(level) ? level.plan.ridge.thickness / 2 : level.plan.span / 2,
    lane: againstWall(level) ? -stagingOut : 0,
    sides: sidesOf(level),
    length: level.plan.length,
    m: gradient(level.plan.slope),
    common,
    top: figured.ridges[0]?.topHeight ?? 0,
    stations,
    posts: postPlaces(level),
    braces: [bay(Math.min(3, last)), bay(Math.max(1, last - 2))],
    alongs: [bay(Math.min(2, last)), bay(Math.max(1, last - 1))],
    floor,
    tieDepth,
  };
};

/** Middle of the staging before a ledger, so that nobody stands with a heel over its edge. Inches; ours. */
const stagingOut = 30;

/** The same with the roof figured from the level. */
export const shownOf = (level: Level, pose: Pose, site: SiteState): Shown => ({
  level,
  pose,
  site,
  figured: roofOf(level),
});
