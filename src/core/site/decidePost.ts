import { spread } from '../level/draw';
import { postX, ridgeCarries, roofOf } from '../level/layout';
import { weightOf } from '../stock/lumber';
import type { Of } from './action';
import { aftermath } from './aftermath';
import type { Decision } from './attempt';
import { happen, refuse, stop } from './decision';
import type { PostId } from './ids';
import { fittedOff, laidOn, postIds, stayingPosts } from './planPosts';
import { figuredTop, ridgeHigh, ridgeLine } from './posed';
import { ownLie } from './ridgeLies';
import type { Standing } from './standing';
import type { Placed } from './state';

/** Posts under the ridge, number 1 nearest end A. */

/** Height of a post's head above the plates when the ridge is to lie where it was figured, inches. */
export const figuredPost = ({ level }: Pick<Standing, 'level'>): number =>
  figuredTop(level) - level.plan.ridge.depth;

/** Nobody sets a post more than this away from its figure by mistake; beyond it the ridge would not lie on it. Inches, ours. */
const postReach = 6;

/** `height` 0: cut to fit under the ridge as it stands. */
export const decideSetPost = (standing: Standing, { at, height, fixed }: Of<'setPost'>): Decision => {
  const { site } = standing;
  const { level } = standing;
  const member: PostId = `post.${at}`;
  const stays = stayingPosts(level).includes(member);
  if (!postIds(level).includes(member)) return refuse('noSuchPlace');
  if (!stays && !floored(standing)) return refuse('noFloor');
  if (site.ridge) return height === 0 ? fitted(standing, { at, fixed }) : refuse('ridgeInTheWay');
  const known = site.members[member];
  if (stays && known && known.how !== 'both')
    return happen({ type: 'postSet', member, fixed: withBoth(known, fixed), off: known.off ?? 0 });
  if (known) return refuse('alreadyThere');
  if (!(Math.abs(height - figuredPost(standing)) <= postReach)) return refuse('wrongHeight');
  return happen({ type: 'postSet', member, fixed, off: height - figuredPost(standing) });
};

/** A post set under a ridge that is up takes it where it is. */
const fitted = (standing: Standing, { at, fixed }: Pick<Of<'setPost'>, 'at' | 'fixed'>): Decision => {
  const member: PostId = `post.${at}`;
  const known = standing.site.members[member];
  const stays = ridgeCarries(standing.level);
  if (known)
    return happen({
      type: 'postSet',
      member,
      fixed: stays ? withBoth(known, fixed) : fixed,
      off: known.off ?? 0,
    });
  const high = ridgeHigh(standing);
  const off = stays ? underRidge(standing, postX(standing.level, at)) : 0;
  return happen({ type: 'postSet', member, fixed, off, ...(high ? { high } : {}) });
};

type Fixed = Of<'setPost'>['fixed'];

/** What was fixed stays so: head and foot one after the other are both. */
const withBoth = ({ how }: Placed, fixed: Fixed): Fixed =>
  how === undefined || how === fixed ? fixed : 'both';

/** Of a post of the plan, cut to the ridge as it hangs or sags there. */
const underRidge = (standing: Standing, x: number): number => {
  const { length } = standing.level.plan;
  const [a, here, b] = ridgeLine(standing, [0, x, length]).map(({ z }) => z);
  if (a === undefined || here === undefined || b === undefined) return 0;
  const line = a + ((b - a) * x) / length + ownLie(standing, x / length).up;
  return fittedOff(standing, x, here - line);
};

/** A post needs joists or a platform under its foot. */
const floored = ({ site }: Standing): boolean =>
  site.ready.platform !== undefined || site.members['joist.1'] !== undefined;

/** How far the ridge stands above its figured height on the posts set for it, with the floor's unevenness under them. */
export const onPosts = (standing: Standing): { readonly A: number; readonly B: number } => {
  const { site, seed, level } = standing;
  if (ridgeCarries(level)) return laidOn(standing);
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
