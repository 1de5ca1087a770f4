import type { Vec3 } from '../../core/geometry/vector';
import { signOf } from '../../core/roof/side';
import { partsOfJoint, type RafterId } from '../../core/site/ids';
import { fallenMotions, movedSolid } from './fallen';
import { roofSolids } from './roofSolids';
import { scenery } from './scenery';
import { bareFloor, schemeOf, type Scheme, type Shown } from './scheme';
import type { Solid, Stroke } from './solid';
import { strokesOf } from './strokes';
import { supportSolids } from './supportSolids';
import { tieSolids } from './tieSolids';
import { wallSolids } from './wallSolids';

/** Bodies and lines of the site as it stands. Everything any view draws comes from here. */
export type Model = {
  readonly solids: readonly Solid[];
  readonly strokes: readonly Stroke[];
  /** Where it came loose, once it came down: circled in chalk. */
  readonly loose?: Vec3;
};

export const modelOf = (shown: Shown): Model => {
  const scheme = schemeOf(shown);
  const solids = [
    ...wallSolids(shown, scheme),
    ...tieSolids(shown, scheme),
    ...scenery(shown, scheme),
    ...supportSolids(shown, scheme),
    ...roofSolids(shown, scheme),
  ];
  const strokes = strokesOf(shown, scheme);
  return shown.pose.fallen ? lyingDown(shown, scheme, { solids, strokes }) : { solids, strokes };
};

/** The same after it came down: what lies, lies; lines on what moved are gone with it. */
const lyingDown = (shown: Shown, scheme: Scheme, { solids, strokes }: Model): Model => {
  const motionOf = fallenMotions(shown, scheme);
  const at = looseAt(shown, motionOf);
  return {
    solids: solids.map((solid) => {
      const motion = onFloor(scheme, solid) ? undefined : motionOf(solid.id);
      return motion ? movedSolid(solid, motion) : solid;
    }),
    strokes: strokes.filter(({ id }) => !/^(chalk|string|tail|mark\.ridge)\./.test(id)),
    ...(at ? { loose: at } : {}),
  };
};

/** Cleats and pads stay where they are nailed. */
const onFloor = ({ floor = bareFloor }: Scheme, { role, faces }: Solid): boolean =>
  (role === 'brace' || role === 'post') &&
  faces.every(({ points }) => points.every(([, , z]) => z <= floor + cleatHigh));
/** Higher than a cleat or pad of 2-inch lumber laid flat, lower than anything that stands, inches. */
const cleatHigh = 2;

const looseAt = ({ pose }: Shown, motionOf: ReturnType<typeof fallenMotions>): Vec3 | undefined => {
  const joint = pose.fallen?.loose;
  if (!joint) return undefined;
  const { kind, member } = partsOfJoint(joint);
  const rafter = pose.rafters[member as RafterId];
  if (!rafter) return undefined;
  const sign = signOf(rafter.side);
  const at: Vec3 =
    kind === 'ridge'
      ? [rafter.x.ridge, sign * rafter.top.out, rafter.top.z - 3]
      : [rafter.x.heel, sign * rafter.heel.out, rafter.heel.z - 3];
  return motionOf(member)?.move(at) ?? at;
};
