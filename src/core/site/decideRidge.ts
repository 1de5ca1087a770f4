import { againstWall, lastStation, ridgeCarries, sidesOf } from '../level/layout';
import { spread } from '../level/draw';

import type { End } from '../roof/side';
import { loadConstant } from '../stock/lift';
import type { Of } from './action';
import type { Decision } from './attempt';
import { happen, refuse, stop } from './decision';
import { onPosts, ridgeWeight } from './decidePost';
import { fastened, held, ledgerNailed, loadHangs, middleLocked, nailedInFull } from './holding';
import { rafterId, type RafterId } from './ids';
import { balanced, endPost } from './planPosts';
import { pose, ridgeAside, ridgeHigh } from './posed';
import type { Standing } from './standing';
import type { RidgeState, SiteState } from './state';

/** Acts on the ridge and at the machine. */

/** What two people lift, pounds. */
export const twoPeople = 2 * loadConstant;

export const landRidge = (standing: Standing, { at }: Of<'place'>): Decision => {
  const { site, level } = standing;
  if (at === 'machine') {
    if (!level.machine || !site.sling) return refuse('notHooked');
    if (somebodyIn(site, 'path')) return stop('underTheLoad');
    return landed(standing, 'machine');
  }
  if (at === 'posts') return ontoPosts(standing);
  if (at !== 'hands') return refuse('noSuchPlace');
  if (site.ready.platform === undefined) return refuse('noPlatform');
  return ridgeWeight(standing) > twoPeople ? refuse('tooHeavyForTwo') : landed(standing, 'hands');
};

/** Somebody has to stand up there; under props there is a floor anyway. */
const ontoPosts = (standing: Standing): Decision => {
  const { site, level } = standing;
  if (!ridgeCarries(level))
    return site.members['post.1'] && site.members['post.2'] ? landed(standing, 'posts') : refuse('noPosts');
  if (!balanced(standing)) return refuse('postsMissing');
  return site.ready.platform === undefined ? refuse('noPlatform') : landed(standing, 'posts');
};

/** A machine and hands land it just under its height, since a last lift is easy and a push down is not; a machine that
 * finds the plan's own posts there lowers it onto them. */
const landed = (standing: Standing, on: RidgeState['on']): Decision => {
  const { seed, level } = standing;
  const range = level.asFound.ranges.landing;
  const under = (end: End): number =>
    snap(-range / 2 + spread({ seed, place: `ridge.${end}`, purpose: 'landing' }, range / 4));
  const aside = (end: End): number =>
    againstWall(level) ? 0 : snap(spread({ seed, place: `ridge.${end}`, purpose: 'aside' }, range / 2));
  const posts = onPosts(standing);
  const lowered = on === 'machine' && ridgeCarries(level) && balanced(standing);
  const high =
    on === 'posts' || lowered ? { A: snap(posts.A), B: snap(posts.B) } : { A: under('A'), B: under('B') };
  return happen({ type: 'ridgeLanded', on, high, aside: { A: aside('A'), B: aside('B') } });
};

const snap = (value: number): number => Math.round(value * 64) / 64;

const somebodyIn = ({ people }: SiteState, where: string): boolean =>
  people.lead === where || people.helper === where;

export const decideHookOn = (standing: Standing, { hitch, tagLine }: Of<'hookOn'>): Decision => {
  const { level, site } = standing;
  if (!level.machine) return refuse('noMachine');
  if (site.ridge) return refuse('alreadyThere');
  if (site.agreed.signals === undefined) return refuse('noSignals');
  if (hitch === 'one') return stop('onePointHitch');
  if (ridgeWeight(standing) > level.machine.chart) return refuse('overTheChart');
  return happen({ type: 'hookedOn', hitch, tagLine });
};

/** The most one signal moves the load, inches. Ours. */
const signalReach = 6;

export const decideSignal = (standing: Standing, { sign, by }: Of<'signal'>): Decision => {
  const { site, seed, level } = standing;
  if (!level.machine || !site.sling) return refuse('noMachine');
  if (sign === 'stop') return happen({ type: 'signalled', sign });
  if (somebodyIn(site, 'path')) return stop('underTheLoad');
  if (!site.ridge || sign === 'swing') return refuse('nothingHangs');
  if (!(by > 0 && by <= signalReach)) return refuse('beyondReach');
  if (pinned(standing, 'A') || pinned(standing, 'B')) return refuse('ridgeNailed');
  const drift = spread({ seed, place: `machine.${site.told}`, purpose: 'drift' }, level.machine.steady);
  const move = snap((sign === 'hoist' ? by : -by) + drift);
  return moved(site.ridge, { A: move, B: move });
};

const moved = (ridge: RidgeState, up: Readonly<Record<End, number>>): Decision =>
  happen(
    { type: 'signalled', sign: up.A < 0 ? 'lower' : 'hoist' },
    { type: 'ridgeMoved', high: { A: ridge.high.A + up.A, B: ridge.high.B + up.B }, aside: ridge.aside },
  );

/** The end pair there is nailed home, or a ledger anywhere: it does not move any more without drawing nails. */
const pinned = (standing: Standing, end: End): boolean => {
  if (ledgerNailed(standing)) return true;
  const station = end === 'A' ? 1 : lastStation(standing);
  const ids: readonly RafterId[] = sidesOf(standing.level).map((side) => rafterId(side, station));
  return ids.some(
    (id) => nailedInFull(standing.site, `ridge:${id}`) && nailedInFull(standing.site, `heel:${id}`),
  );
};

/** The most a ridge is jacked, let down or pushed over in one go, inches. Ours. */
const pushReach = 4;

export const decideRaise = (standing: Standing, { end, by }: Of<'raise'>): Decision => {
  const { site } = standing;
  if (!site.ridge) return refuse('noRidge');
  const at: readonly End[] = end === 'both' ? ['A', 'B'] : [end];
  if (loadHangs(site) && !at.every((e) => site.members[endPost(standing.level, e)]))
    return stop('raiseUnderLoad');
  if (!(Math.abs(by) <= pushReach) || by === 0) return refuse('beyondReach');
  if (at.some((e) => pinned(standing, e))) return refuse('ridgeNailed');
  const up = (e: End): number => (at.includes(e) ? by : 0);
  const high = ridgeHigh(standing) ?? site.ridge.high;
  const to = { A: high.A + up('A'), B: high.B + up('B') };
  return happen({ type: 'ridgeMoved', high: to, aside: ridgeAside(standing) ?? site.ridge.aside });
};

/** `shift` moves the ridge sideways at its ends or its middle (yard is +) or a rafter's heel along the plate (toward B is +). */
export const decideShift = (standing: Standing, { member, at, by }: Of<'shift'>): Decision => {
  const { site } = standing;
  if (!(Math.abs(by) <= pushReach) || by === 0) return refuse('beyondReach');
  if (member === 'ridge') return shiftRidge(standing, { at, by });
  if (!member.startsWith('rafter.') || !site.members[member]) return refuse('noSuchPiece');
  const id = member as RafterId;
  if (nailedInFull(site, `heel:${id}`)) return refuse('nailedThere');
  return happen({ type: 'heelMoved', member, by, why: 'shift' });
};

const shiftRidge = (standing: Standing, { at, by }: Pick<Of<'shift'>, 'at' | 'by'>): Decision => {
  const ridge = standing.site.ridge;
  if (!ridge || at === 'heel') return refuse('noRidge');
  if (againstWall(standing.level)) return refuse('wallBehind');
  if (at === 'mid') return pushMiddle(standing, by);
  const ends: readonly End[] = at === 'both' ? ['A', 'B'] : [at];
  if (ends.some((end) => pinned(standing, end))) return refuse('ridgeNailed');
  const over = (end: End): number => (ends.includes(end) ? by : 0);
  const from = ridgeAside(standing) ?? ridge.aside;
  const aside = { A: from.A + over('A'), B: from.B + over('B') };
  return happen({ type: 'ridgeMoved', high: ridgeHigh(standing) ?? ridge.high, aside });
};

/** Pushed from where it stands, and held there by hand until a pair locks it. */
const pushMiddle = (standing: Standing, by: number): Decision => {
  if (middleLocked(standing)) return refuse('ridgeLocked');
  const { A, B } = (standing.site.ridge as RidgeState).aside;
  return happen({ type: 'ridgePushed', to: snap((pose(standing).ridge?.mid.y ?? 0) + by - (A + B) / 2) });
};

/** With anybody near, a machine that lets go too soon is stopped; with all clear it is done, and the frame decides. */
export const decideLetGo = (standing: Standing): Decision => {
  const { site } = standing;
  if (!site.sling) return refuse('notHooked');
  const near = site.people.lead !== 'clear' || site.people.helper !== 'clear';
  if (near || (!held(standing) && standing.site.ridge === undefined)) return stop('letGoTooSoon');
  return happen({ type: 'unhooked' });
};

/** A rafter stands at the ridge with nothing but a hand holding it there. */
export const heldByHand = (site: SiteState, id: RafterId): boolean =>
  site.members[id] !== undefined && !fastened(site, `ridge:${id}`);
