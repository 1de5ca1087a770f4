import { add, sub, type Vec3 } from '../../core/geometry/vector';
import { signOf, type Side } from '../../core/roof/side';
import type { Fallen, RafterPose } from '../../core/site/pose';
import { placeOf } from '../../core/site/ids';
import type { Solid } from './solid';
import { acrossFoot, bareFloor, type Scheme, type Shown } from './scheme';

/**
 * A frame that came down, drawn as it lies: every piece moves as one and keeps its length. Which way it went and what came
 * loose first is the frame's own; it goes on until its ridge lies on what stops it, the floor or the ties.
 */

/** A turn and a move that take a piece from where it stood to where it lies. */
export type Motion = { readonly turn: (way: Vec3) => Vec3; readonly move: (at: Vec3) => Vec3 };

/** Cosine and sine of a turn. */
type Turn = { readonly c: number; readonly s: number };

/** Where pieces lie by id; undefined for what stays. */
export const fallenMotions = (shown: Shown, scheme: Scheme): ((id: string) => Motion | undefined) => {
  const { fallen, ridge } = shown.pose;
  if (!fallen || !ridge) return () => undefined;
  const site: Down = {
    shown,
    scheme,
    fallen,
    ridge: { y: (ridge.A.y + ridge.B.y) / 2, z: (ridge.A.z + ridge.B.z) / 2 },
    floor: scheme.floor ?? bareFloor,
  };
  return fallen.way === 'along' ? leantOver(site) : spread(site, landing(site));
};

type Down = {
  readonly shown: Shown;
  readonly scheme: Scheme;
  readonly fallen: Fallen;
  /** Where the middle of its top edge was. */
  readonly ridge: { readonly y: number; readonly z: number };
  readonly floor: number;
};

/** Thickness of a post that lies on the floor and carries what falls on it, inches. */
const postLies = 3.5;

/** Where the ridge's top edge comes to lie. */
const lowTop = ({ shown, floor }: Down): number =>
  floor +
  shown.level.plan.ridge.depth +
  (Object.keys(shown.site.members).some((id) => id.startsWith('post.')) ? postLies : 0);

const onto = (turn: (way: Vec3) => Vec3, pivot: Vec3, to: Vec3 = pivot): Motion => ({
  turn,
  move: (at) => add(to, turn(sub(at, pivot))),
});

const shifted = (by: Vec3): Motion => ({ turn: (way) => way, move: (at) => add(at, by) });

/** Tips the way x runs: up goes toward B by the sine. */
const tipX =
  ({ c, s }: Turn) =>
  ([x, y, z]: Vec3): Vec3 => [x * c + z * s, y, z * c - x * s];

/** Tips the way y runs: up goes toward the yard by the sine. */
const tipY =
  ({ c, s }: Turn) =>
  ([x, y, z]: Vec3): Vec3 => [x, y * c + z * s, z * c - y * s];

/** The row lies over like books: each pair about its heels, the ridge carried along level. */
const leantOver = (down: Down): ((id: string) => Motion | undefined) => {
  const { shown, scheme, fallen, ridge, floor } = down;
  const height = ridge.z;
  const c = Math.min(1, lowTop(down) / height);
  const turn: Turn = { c, s: fallen.toward * Math.sqrt(1 - c * c) };
  const about = (x: number, z: number): Motion => onto(tipX(turn), [x, 0, z]);
  return (id) => {
    const { station = 1 } = placeOf(id);
    const x = scheme.stations[station - 1] ?? 0;
    if (id === 'ridge') return shifted([height * turn.s, 0, height * (turn.c - 1)]);
    if (/^(rafter|collar|strap)\./.test(id))
      return about(shown.pose.rafters[id as 'rafter.yard.1']?.x.heel ?? x, 0);
    if (id.startsWith('brace.across.')) return about(scheme.braces[id.endsWith('A') ? 0 : 1], floor);
    return lying(down, id);
  };
};

/** Posts lie along the ridge, the brace along it lies over to a side. */
const lying = (down: Down, id: string): Motion | undefined => {
  const { scheme, fallen, floor, ridge } = down;
  if (id.startsWith('post.')) {
    const x = scheme.posts[(placeOf(id).station ?? 1) - 1] ?? 0;
    return onto(tipX({ c: 0, s: 1 }), [x, 0, floor], [x, 0, floor + postLies / 2]);
  }
  if (id.startsWith('brace.across.')) return acrossLies(down, id);
  return id.startsWith('brace.along.')
    ? onto(tipY({ c: 0, s: fallen.toward }), [0, ridge.y, floor], [0, ridge.y, floor + 1])
    : undefined;
};

/** A brace across swings about its foot, its head let go, and lies along the ridge on the yard's side of it. */
const acrossLies = ({ scheme, floor, ridge }: Down, id: string): Motion => {
  const x = scheme.braces[id.endsWith('A') ? 0 : 1];
  const level = acrossFoot - ridge.y;
  const up = ridge.z - floor;
  const far = Math.sqrt(level * level + up * up);
  const upright = tipY({ c: up / far, s: level / far });
  const over = tipX({ c: 0, s: id.endsWith('A') ? 1 : -1 });
  return onto((way) => over(upright(way)), [x, acrossFoot, floor], [x, acrossFoot, floor + 1.75]);
};

type Landing = { readonly y: number; readonly top: number; readonly hinge: Side | undefined };

/** Sideways the ridge swings on the rafters it leaves behind, downward it drops between both sides. */
const landing = (down: Down): Landing => {
  const { fallen, ridge, shown } = down;
  const top = lowTop(down);
  const hinge: Side = fallen.toward === 1 ? 'street' : 'yard';
  const behind = Object.values(shown.pose.rafters).find((rafter) => rafter.side === hinge);
  if (fallen.way === 'downward' || !behind) return { y: ridge.y, top, hinge: undefined };
  const { across, level } = reachOf(behind, top);
  return { y: ridge.y + fallen.toward * (level - across), top, hinge };
};

/** From the plate's outer edge to the top of the plumb cut: level, up, straight, and level once its top is so low. */
const reachOf = ({ heel, top }: RafterPose, low: number) => {
  const across = heel.out - top.out;
  const up = top.z;
  const far = Math.sqrt(across * across + up * up);
  return { across, up, far, level: Math.sqrt(Math.max(0, far * far - low * low)) };
};

const spread = (down: Down, { y, top, hinge }: Landing): ((id: string) => Motion | undefined) => {
  const { shown, ridge } = down;
  const withRidge = shifted([0, y - ridge.y, top - ridge.z]);
  return (id) => {
    if (id === 'ridge' || id.startsWith('strap.')) return withRidge;
    const rafter = shown.pose.rafters[id as 'rafter.yard.1'];
    if (rafter) return rafter.side === hinge ? swung(rafter, top) : slid(down, rafter, { y, top });
    if (id.startsWith('collar.')) return collarLies(down, { y, top, hinge }, id) ?? withRidge;
    return lying(down, id);
  };
};

/** A collar stays on the rafter that swings over; where none does it drops with the ridge. */
const collarLies = ({ shown }: Down, { top, hinge }: Landing, id: string): Motion | undefined => {
  const rafter = hinge && shown.pose.rafters[`rafter.${hinge}.${placeOf(id).station ?? 1}`];
  return rafter && swung(rafter, top);
};

/** About its own heel, until its top is down. */
const swung = (rafter: RafterPose, top: number): Motion => {
  const { across, up, far, level } = reachOf(rafter, top);
  const sign = signOf(rafter.side);
  const turn = { c: (across * level + up * top) / (far * far), s: (up * level - across * top) / (far * far) };
  return onto(tipY({ c: turn.c, s: -sign * turn.s }), [0, sign * rafter.heel.out, 0]);
};

/** Its heel off the plate and out: the top goes with the ridge, the lower edge lies over the plate's inner corner. */
const slid = (
  { shown, scheme }: Down,
  rafter: RafterPose,
  { y, top }: Pick<Landing, 'y' | 'top'>,
): Motion => {
  const sign = signOf(rafter.side);
  const { plate, ridge, rafter: stock } = shown.level.plan;
  const across = rafter.heel.out - rafter.top.out;
  const fall = rafter.top.z - rafter.heel.z;
  const far = Math.sqrt(across * across + fall * fall);
  const out = sign * y + ridge.thickness / 2;
  const run = Math.max(1, scheme.half - plate.width - out);
  const edge = Math.sqrt(run * run + top * top);
  const off = Math.min(0.95, stock.depth / edge);
  const over = Math.sqrt(1 - off * off);
  // Down along the rafter as it lies: the way to the plate's corner, turned up by what its own depth takes.
  const down = { c: (run * over + top * off) / edge, s: (top * over - run * off) / edge };
  const was = { c: across / far, s: fall / far };
  const turn = { c: was.c * down.c + was.s * down.s, s: was.s * down.c - was.c * down.s };
  const pivot: Vec3 = [0, sign * rafter.top.out, rafter.top.z];
  return onto(tipY({ c: turn.c, s: -sign * turn.s }), pivot, [0, sign * out, top]);
};

/** A body, moved and turned with everything it is drawn from. */
export const movedSolid = (solid: Solid, { turn, move }: Motion): Solid => ({
  ...solid,
  faces: solid.faces.map((face) => ({ ...face, points: face.points.map(move), normal: turn(face.normal) })),
  edges: solid.edges.map(({ a, b, n1, n2 }) => ({ a: move(a), b: move(b), n1: turn(n1), n2: turn(n2) })),
  frame: {
    origin: move(solid.frame.origin),
    along: turn(solid.frame.along),
    across: turn(solid.frame.across),
    through: turn(solid.frame.through),
  },
});
