import { againstWall, stationsOf } from '../level/layout';
import type { Level } from '../level/level';
import { asksForTails } from '../level/method';
import { ends } from '../roof/side';
import type { Attempt } from '../site/attempt';
import { middleLocked } from '../site/holding';
import { tools } from '../instruments/rows';
import { rafterId, type BlockId, type RafterId } from '../site/ids';
import { pose, ridgeAside, ridgeHigh } from '../site/posed';
import type { RafterPose } from '../site/pose';
import { offPlane, ridgeBowed } from '../site/readings/string';
import type { Standing } from '../site/standing';
import { tailOff } from '../site/tails';
import type { Placed } from '../site/state';

/** One thing measured on the finished work: how far it is off, what is tolerated, both in inches. */
export type Measured = {
  readonly feature: Feature;
  readonly at: string;
  readonly off: number;
  readonly allowed: number;
};

export type Feature =
  | 'level'
  | 'height'
  | 'centre'
  | 'straight'
  | 'plane'
  | 'plumbCut'
  | 'seat'
  | 'layout'
  | 'block'
  | 'tie'
  | 'tail';

/** How much each kind of feature counts, however many there are of it. Ours, to be tuned with the rules version. */
export const featureWeights: Readonly<Record<Feature, number>> = {
  level: 1.5,
  height: 1.5,
  centre: 1.5,
  straight: 1,
  plane: 1,
  plumbCut: 1,
  seat: 1.5,
  layout: 2,
  block: 0.5,
  tie: 0.5,
  tail: 1,
};

/** How far a tail may end off a straight eave, inches. Ours. */
const tailAllowed = 1 / 8;

/** Finest division on any tool of the level, inches: nobody is asked for better. */
const division = tools.rule.division;

/** Quality lost from a true fit to its tolerance, and from there on for every tolerance more. Steep, or wild work would score. */
const within = 0.2;
const beyond = 1.6;

/** 1 on the spot, 0.8 at the tolerance, 0 at one and a half times the tolerance. Half a division is given. */
export const quality = ({ off, allowed }: Pick<Measured, 'off' | 'allowed'>): number => {
  const r = Math.max(0, Math.abs(off) - division / 2) / allowed;
  return r <= 1 ? 1 - within * r : Math.max(0, 1 - within - beyond * (r - 1));
};

/** Weighted mean quality of everything that stands; undefined when nothing does. */
export const fitOf = (standing: Built): number | undefined => {
  const all = measuredOn(standing);
  const kinds = [...new Set(all.map(({ feature }) => feature))];
  if (kinds.length === 0) return undefined;
  const means = kinds.map((kind) => {
    const own = all.filter(({ feature }) => feature === kind).map(quality);
    return { weight: featureWeights[kind], mean: own.reduce((a, b) => a + b, 0) / own.length };
  });
  const total = means.reduce((sum, { weight }) => sum + weight, 0);
  return means.reduce((sum, { weight, mean }) => sum + weight * mean, 0) / total;
};

/** Everything to measure on what the learner built; what stood before is the crew's. */
export const measuredOn = (standing: Built): readonly Measured[] => {
  const crews = standing.found?.site;
  const all = [
    ...(crews?.ridge ? [] : onRidge(standing)),
    ...(crews && middleLocked({ ...standing, site: crews }) ? [] : straightOn(standing)),
    ...onRafters(standing),
    ...onBlocks(standing),
    ...onTies(standing),
  ];
  return all.filter(({ at }) => at === 'ridge' || crews?.members[at as RafterId] === undefined);
};

/** A site, and what of it the crew had done before the learner came. */
type Built = Standing & Pick<Attempt, 'found'>;

const onRidge = (standing: Standing): readonly Measured[] => {
  const [high, aside] = [ridgeHigh(standing), ridgeAside(standing)];
  if (!high || !aside) return [];
  const { tolerances, plan } = standing.level;
  return [
    {
      feature: 'level',
      at: 'ridge',
      off: high.A - high.B,
      allowed: (tolerances.ridgeLevelIn10ft * plan.length) / 120,
    },
    ...ends.map((end) => ({
      feature: 'height' as const,
      at: `ridge.${end}`,
      off: high[end],
      allowed: tolerances.ridgeHeight,
    })),
    ...(againstWall(standing.level) ? [] : ends).map((end) => ({
      feature: 'centre' as const,
      at: `ridge.${end}`,
      off: aside[end],
      allowed: tolerances.ridgeCentre,
    })),
  ];
};

/** A ledger is as straight as its wall. */
const straightOn = (standing: Standing): readonly Measured[] => {
  if (againstWall(standing.level)) return [];
  const off = ridgeBowed(standing);
  const allowed = standing.level.tolerances.ridgeStraight;
  return standing.site.ridge ? [{ feature: 'straight', at: 'ridge', off: off ?? 0, allowed }] : [];
};

const onRafters = (standing: Standing): readonly Measured[] => {
  const rafters = Object.entries(pose(standing).rafters) as [RafterId, RafterPose][];
  const stations = [...new Set(rafters.map(([, { station }]) => station))];
  return [
    ...rafters.flatMap(([id, rafter]) => onRafter(standing, { id, rafter })),
    ...stations.flatMap((n) =>
      onPair(
        standing.level,
        rafters.map(([, rafter]) => rafter).filter(({ station }) => station === n),
      ),
    ),
  ];
};

/** A rafter dips out of the plane at its heel, or in its middle where its crown hangs down. */
const onRafter = (
  standing: Standing,
  { id, rafter }: { readonly id: RafterId; readonly rafter: RafterPose },
): readonly Measured[] => {
  const { side, station, crown, x } = rafter;
  const heel = Math.abs(offPlane(standing, side, station) ?? 0);
  return [
    { feature: 'plane', at: id, off: Math.max(heel, -crown), allowed: standing.level.tolerances.plane },
    {
      feature: 'layout',
      at: id,
      off: x.heel - (stationsOf(standing.level)[station - 1] ?? 0),
      allowed: layoutAllowed(standing.level, station),
    },
    ...(asksForTails(standing.level.methods)
      ? [{ feature: 'tail' as const, at: id, off: tailOff(standing, rafter), allowed: tailAllowed }]
      : []),
  ];
};

/** Mates hold each other up: a pair bears as well as the worse of the two does. */
const onPair = ({ tolerances }: Level, pair: readonly RafterPose[]): readonly Measured[] => {
  const worst = (gap: (rafter: RafterPose) => number): RafterPose =>
    pair.reduce((a, b) => (gap(b) > gap(a) ? b : a));
  const cut = ({ gaps }: RafterPose): number => Math.max(gaps.plumbTop, gaps.plumbBottom);
  const seat = ({ gaps }: RafterPose): number => Math.max(gaps.seat, gaps.heelCut);
  const idOf = ({ side, station }: RafterPose): RafterId => rafterId(side, station);
  const [byCut, bySeat] = [worst(cut), worst(seat)];
  return [
    { feature: 'plumbCut', at: idOf(byCut), off: cut(byCut), allowed: tolerances.plumbCut },
    { feature: 'seat', at: idOf(bySeat), off: seat(bySeat), allowed: tolerances.seat },
  ];
};

/** Layout is held to an eighth within 10 ft of the datum and to twice that beyond (Handbook of Construction Tolerances by way of a trade journal, read). */
const layoutAllowed = (level: Level, station: number): number =>
  (stationsOf(level)[station - 1] ?? 0) > 120 ? 2 * level.tolerances.layout : level.tolerances.layout;

const onBlocks = (standing: Standing): readonly Measured[] =>
  Object.entries(pose(standing).blocks).map(([id, block]) => ({
    feature: 'block',
    at: id as BlockId,
    off: block.gap,
    allowed: standing.level.tolerances.block,
  }));

const onTies = ({ site, level }: Standing): readonly Measured[] =>
  (Object.entries(site.members) as [string, Placed][])
    .filter(([id]) => id.startsWith('collar.'))
    .map(([at, { off }]) => ({ feature: 'tie', at, off: off ?? 0, allowed: level.tolerances.tie }));
