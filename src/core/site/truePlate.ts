import { plateHeight, plateLine, racked } from '../level/asFound';
import { plateSpots, type PlateSpot } from '../level/planted';
import { againstWall, stationsOf } from '../level/layout';
import type { Side } from '../roof/side';
import type { PlatePose } from './pose';
import type { Standing } from './standing';
import type { SiteState } from './state';

/** Where one eave plate's top outer edge is, mends included: the same pose for as long as nobody mends a wall. */
export const platePose = (standing: Standing, side: Side): PlatePose => {
  const { level, seed, site } = standing;
  const last = posed.get(site.mends);
  if (last?.level === level && last.seed === seed) return last[side];
  const poses = { level, seed, street: poseOf(standing, 'street'), yard: poseOf(standing, 'yard') };
  posed.set(site.mends, poses);
  return poses[side];
};
type Posed = Pick<Standing, 'level' | 'seed'> & Readonly<Record<Side, PlatePose>>;
const posed = new WeakMap<SiteState['mends'], Posed>();

const poseOf = (standing: Standing, side: Side): PlatePose => ({
  A: spotPose(standing, side, 'A'),
  mid: spotPose(standing, side, 'mid'),
  B: spotPose(standing, side, 'B'),
});

const spotPose = (standing: Standing, side: Side, at: PlateSpot): { x: number; y: number; z: number } => {
  const { level, site } = standing;
  if (side === 'yard' && againstWall(level)) return wallLine(standing, at);
  const mend = site.mends[`plate.${side}.${at}`] ?? { up: 0, out: 0 };
  const out = level.plan.span / 2 + plateLine(standing, { side, at }) + mend.out;
  const length = level.plan.length;
  const along = at === 'A' ? 0 : at === 'B' ? length : length / 2;
  return {
    x: along + (side === 'yard' ? racked(standing) : 0),
    y: side === 'yard' ? out : -out,
    z: plateHeight(standing, { side, at }) + mend.up,
  };
};

/** Where a ledger goes there is a wall instead of a plate: its face, true to the plan, level with the plate across. */
const wallLine = (standing: Standing, at: PlateSpot): ReturnType<typeof spotPose> => {
  const street = spotPose(standing, 'street', at);
  return {
    x: street.x + racked(standing),
    y: standing.level.plan.ridge.thickness / 2,
    z: street.z,
  };
};

/** How high a place on a plate is over where the water level starts, at street A. */
export const heightFromStart = (standing: Standing, side: Side, at: PlateSpot): number =>
  spotPose(standing, side, at).z - spotPose(standing, 'street', 'A').z;

/** Height of the plate and its outer face's distance from the centre line, at x along it: straight between the three spots. */
export const plateAt = (plate: PlatePose, x: number): { readonly z: number; readonly out: number } => {
  const [from, to] = x <= plate.mid.x ? [plate.A, plate.mid] : [plate.mid, plate.B];
  const t = Math.min(1, Math.max(0, (x - from.x) / (to.x - from.x)));
  return { z: from.z + (to.z - from.z) * t, out: Math.abs(from.y + (to.y - from.y) * t) };
};

/** Every spot of both plates, in walking order. */
export const plateWalk = plateSpots;

/** x of a station's centre as figured, 0 when there is no such station. */
export const figuredX = ({ level }: Pick<Standing, 'level'>, station: number): number =>
  stationsOf(level)[station - 1] ?? 0;
