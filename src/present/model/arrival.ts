import { add, sub, type Vec3 } from '../../core/geometry/vector';
import { signOf } from '../../core/roof/side';
import { placeOf, type RafterId } from '../../core/site/ids';
import type { Shown } from './scheme';
import type { Motion } from './fallen';

/** How a piece is brought to its place, and carried off again: the way hands or the machine would take it. */

/** Sine of the turn a rafter starts from: about 25 degrees flatter than it will lie. Ours, by eye. */
const rafterLow = 0.42;
/** A post is walked upright from about 30 degrees. Ours, by eye. */
const postLeans = 0.5;

/** How far from its place a piece starts, inches; ours, by eye. */
const starts: readonly (readonly [RegExp, Vec3])[] = [
  [/^joist\./, [0, 0, 22]],
  [/^block\./, [0, 0, 12]],
  [/^collar\./, [0, 0, -26]],
  [/^strap\./, [0, 0, 9]],
  [/^brace\./, [0, 0, 14]],
];
const ridgeStarts = { machine: 44, hands: -22, posts: 14 } as const;

/** Where a piece is when so much of its way is left, 1 at the start of it, 0 at home. */
export const onItsWay = (shown: Shown, id: string, left: number): Motion => {
  if (left <= 0) return still;
  if (id === 'ridge') return lifted([0, 0, ridgeStarts[shown.site.ridge?.on ?? 'posts']], left);
  if (id.startsWith('rafter.')) return swungUp(shown, id as RafterId, left);
  if (id.startsWith('post.')) return stoodUp(shown, id, left);
  const from = starts.find(([kind]) => kind.test(id))?.[1] ?? [0, 0, 10];
  return lifted(from, left);
};

const still: Motion = { turn: (way) => way, move: (at) => at };

const lifted = ([x, y, z]: Vec3, left: number): Motion => {
  const by: Vec3 = [x * left, y * left, z * left];
  return { turn: (way) => way, move: (at) => add(at, by) };
};

/** A turn in the plane across the ridge about a line along it. */
const across = (sine: number, pivot: Vec3): Motion => {
  const cosine = Math.sqrt(1 - sine * sine);
  const turn = ([x, y, z]: Vec3): Vec3 => [x, y * cosine + z * sine, z * cosine - y * sine];
  return { turn, move: (at) => add(pivot, turn(sub(at, pivot))) };
};

/** The heel is set on the plate and the top swung up to the ridge. */
const swungUp = ({ pose }: Shown, id: RafterId, left: number): Motion => {
  const rafter = pose.rafters[id];
  if (!rafter) return lifted([0, 0, 14], left);
  const sign = signOf(rafter.side);
  return across(-sign * rafterLow * left, [0, sign * rafter.heel.out, rafter.heel.z]);
};

/** A post is tipped up from the floor, its foot first. */
const stoodUp = ({ pose }: Shown, id: string, left: number): Motion => {
  const way = (placeOf(id).station ?? 1) % 2 === 1 ? 1 : -1;
  return across(way * postLeans * left, [0, pose.ridge?.mid.y ?? 0, 0]);
};
