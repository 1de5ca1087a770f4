import { spread } from '../level/draw';
import { roofOf } from '../level/layout';
import { weightOf } from '../stock/lumber';
import type { Of } from './action';
import { aftermath } from './aftermath';
import type { Decision } from './attempt';
import { happen, refuse, stop } from './decision';
import type { PostId } from './ids';
import { figuredTop, ridgeHigh } from './posed';
import type { Standing } from './standing';

/** Posts under the ridge: number 1 near end A, number 2 near end B. */

/** Height of a post's head above the plates when the ridge is to lie where it was figured, inches. */
export const figuredPost = ({ level }: Pick<Standing, 'level'>): number =>
  figuredTop(level) - level.plan.ridge.depth;

/** Nobody sets a post more than this away from its figure by mistake; beyond it the ridge would not lie on it. Inches, ours. */
const postReach = 6;

/** `height` 0: cut to fit under the ridge as it stands. */
export const decideSetPost = (standing: Standing, { at, height, fixed }: Of<'setPost'>): Decision => {
  const { site } = standing;
  const member: PostId = `post.${at}`;
  if (at !== 1 && at !== 2) return refuse('noSuchPlace');
  if (!floored(standing)) return refuse('noFloor');
  if (site.ridge) return height === 0 ? fitted(standing, member, fixed) : refuse('ridgeInTheWay');
  if (site.members[member]) return refuse('alreadyThere');
  if (!(Math.abs(height - figuredPost(standing)) <= postReach)) return refuse('wrongHeight');
  return happen({ type: 'postSet', member, fixed, off: height - figuredPost(standing) });
};

/** A post set under a ridge that is up takes it where it is. */
const fitted = (standing: Standing, member: PostId, fixed: Of<'setPost'>['fixed']): Decision => {
  const known = standing.site.members[member];
  if (known) return happen({ type: 'postSet', member, fixed, off: known.off ?? 0 });
  const high = ridgeHigh(standing);
  return happen({ type: 'postSet', member, fixed, off: 0, ...(high ? { high } : {}) });
};

/** A post needs joists or a platform under its foot. */
const floored = ({ site }: Standing): boolean =>
  site.ready.platform !== undefined || site.members['joist.1'] !== undefined;

/** How far the ridge stands above its figured height on the posts set for it, with the floor's unevenness under them. */
export const onPosts = (standing: Standing): { readonly A: number; readonly B: number } => {
  const { site, seed, level } = standing;
  const high = (n: 1 | 2): number =>
    (site.members[`post.${n}`]?.off ?? 0) +
    spread({ seed, place: `post.${n}`, purpose: 'floor' }, level.asFound.ranges.landing / 3);
  return { A: high(1), B: high(2) };
};

/** Without its posts the ridge must hang on what is nailed; somebody under it is stopped first. */
export const takeOutPost = (standing: Standing, member: PostId): Decision => {
  const out = { type: 'takenOut', member } as const;
  const falls = aftermath(standing, [out]).some(({ type }) => type === 'cameDown');
  const { lead, helper } = standing.site.people;
  return falls && (lead !== 'clear' || helper !== 'clear') ? stop('propWithSomeoneUnder') : happen(out);
};

/** Weight of the ridge, pounds: a machine's chart and two people's backs are held against it. */
export const ridgeWeight = ({ level }: Pick<Standing, 'level'>): number =>
  weightOf({ ...level.plan.ridge, length: roofOf(level).ridges[0]?.length ?? 0 });
