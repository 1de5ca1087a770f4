import { describe, expect, it } from 'vitest';
import { stationsOf, upperStations } from '../../src/core/level/layout';
import { framed } from '../../src/core/site/framed';
import type { MemberId } from '../../src/core/site/ids';
import { pose } from '../../src/core/site/posed';
import { begin, take } from '../../src/core/site/take';
import type { Attempt } from '../../src/core/site/attempt';
import type { Pose } from '../../src/core/site/pose';
import { cleanActs, type, usual } from '../order/story';
import { unbalanced } from './balanced';
import { levelOf, trueLevel } from './levels';

/** Blocks, straps and split sticks in whole attempts. */

const patience = 60_000;
const level = levelOf('garden-hut');
const acts = cleanActs(level, { ...usual, upper: 'straps' });

/** The farthest that anything has moved from one pose to another, inches. */
const farthest = (from: Pose, to: Pose): number => {
  const places = ({ ridge, rafters }: Pose): readonly number[] => [
    ...(['A', 'mid', 'B'] as const).flatMap((at) => Object.values(ridge?.[at] ?? {})),
    ...Object.values(rafters).flatMap(({ x, top, heel }) => [
      x.heel,
      x.ridge,
      ...Object.values({ ...top }),
      heel.out,
      heel.z,
    ]),
  ];
  const [a, b] = [places(from), places(to)];
  return a.reduce((most, one, i) => Math.max(most, Math.abs(one - (b[i] as number))), 0);
};

describe('a clean hut with straps', { timeout: patience }, () => {
  let attempt = begin(level, 1, 'own');
  const moves: number[] = [];
  for (const act of acts) {
    const before: Attempt = attempt;
    attempt = take(attempt, act);
    if (type('nailOff', /block|strap/)(act)) moves.push(farthest(pose(before), pose(attempt)));
  }

  it('has every block and strap in its frame, and rests on its weight', () => {
    const bays = stationsOf(level).length - 1;
    const { gable, settled } = framed(attempt) ?? {};
    expect(gable?.blocks).toHaveLength(bays * 4);
    expect(gable?.straps).toHaveLength(upperStations(level).length);
    expect(settled?.falls).toBeUndefined();
    if (settled) expect(Math.abs(unbalanced(settled))).toBeLessThan(1e-9);
  });

  it('hardly moves when one is nailed: it holds what is there as it stands', () => {
    expect(moves.length).toBeGreaterThan(10);
    expect(Math.max(...moves)).toBeLessThan(1 / 64);
  });
});

describe('a split stick', { timeout: patience }, () => {
  /** The boathouse's ridge let go on end pairs with one tack a joint, none or all of its four rafters split. */
  const letGo = (splits: readonly MemberId[]) => {
    const boathouse = trueLevel('boathouse');
    let attempt = begin(boathouse, 1, 'own');
    for (const act of cleanActs(boathouse, usual)) {
      if (type('place', /rafter\.(street|yard)\.6"/)(act)) break;
      attempt = take(attempt, act);
    }
    const { site } = attempt;
    const joints = Object.fromEntries(
      Object.keys(site.joints)
        .filter((joint) => /^(ridge|heel):/.test(joint))
        .map((joint) => [joint, { nails: 0, tacks: 1 }]),
    );
    const members = { ...site.members };
    for (const id of ['post.1', 'post.2'] as const) delete members[id];
    return framed({ ...attempt, site: { ...site, joints, members, splits } });
  };

  it('lets go at half of what a sound one holds', () => {
    const ends = ['rafter.street.1', 'rafter.yard.1', 'rafter.street.11', 'rafter.yard.11'] as const;
    const [sound, split] = [letGo([]), letGo(ends)];
    expect(sound?.settled.gave).toEqual([]);
    expect(split?.settled.gave.length).toBeGreaterThan(0);
  });
});
