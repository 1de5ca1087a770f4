import { describe, expect, test } from 'vitest';
import { lengthOf, sub, type Vec3 } from '../../../src/core/geometry/vector';
import { roofOf, stationsOf } from '../../../src/core/level/layout';
import type { Level } from '../../../src/core/level/level';
import type { Fallen } from '../../../src/core/site/pose';
import { initialSite } from '../../../src/core/site/initial';
import { placeOf, type RafterId } from '../../../src/core/site/ids';
import { pose } from '../../../src/core/site/posed';
import { requiredFor } from '../../../src/core/site/required';
import type { Placed, SiteState } from '../../../src/core/site/state';
import type { Shown } from '../../../src/present/model/scheme';
import type { Solid } from '../../../src/present/model/solid';
import { modelOf } from '../../../src/present/model/solidsOf';
import { trueLevel } from '../../site/levels';

const barn = trueLevel('hay-barn');

/** Every member of the barn where it was figured, with posts and braces, on joists and sheets. */
const whole = (level: Level): SiteState => {
  const stations = stationsOf(level);
  const members: Record<string, Placed> = { ridge: { x: 0 } };
  for (const id of requiredFor(level, { agreed: {}, members: {} }).members) {
    const x = stations[(placeOf(id).station ?? 1) - 1] ?? 0;
    members[id] = id.startsWith('rafter')
      ? { x, board: 'board.1' }
      : { x: id.startsWith('block') ? x + 0.75 : 0 };
  }
  for (const id of ['post.1', 'post.2', 'brace.across.A', 'brace.across.B', 'brace.along.1'])
    members[id] = { x: 0 };
  return {
    ...initialSite,
    members,
    ready: { ...initialSite.ready, platform: 'joists' },
    ridge: { on: 'posts', high: { A: 0, B: 0 }, aside: { A: 0, B: 0 } },
  };
};

const site = whole(barn);
const upright: Shown = {
  level: barn,
  site,
  pose: pose({ level: barn, seed: 5, site }),
  figured: roofOf(barn),
};
const fell = (fallen: Fallen): Shown => ({ ...upright, pose: { ...upright.pose, fallen } });

const ways: readonly Fallen[] = (['along', 'sideways', 'downward'] as const).flatMap((way) =>
  ([1, -1] as const).map((toward) => ({ way, toward, loose: 'ridge:rafter.yard.9' as const })),
);

const pointsOf = (solids: readonly Solid[]): readonly Vec3[] =>
  solids.flatMap(({ faces }) => faces.flatMap(({ points }) => points));
const bodiesOf = (shown: Shown, id: string): readonly Solid[] =>
  modelOf(shown).solids.filter((solid) => solid.id === id);
const middle = (points: readonly Vec3[], axis: 0 | 1 | 2): number =>
  points.reduce((sum, point) => sum + (point[axis] ?? 0), 0) / points.length;

describe.each(ways)('a frame that fell $way, $toward', (fallen) => {
  const down = fell(fallen);

  test('every piece keeps its size: distances between its corners are what they were', () => {
    const before = modelOf(upright).solids;
    const after = modelOf(down).solids;
    expect(after).toHaveLength(before.length);
    after.forEach((solid, at) => {
      const was = pointsOf([before[at] as Solid]);
      const is = pointsOf([solid]);
      const [from, to] = [was[0] as Vec3, is[0] as Vec3];
      is.forEach((point, i) => {
        expect(lengthOf(sub(point, to)), solid.id).toBeCloseTo(lengthOf(sub(was[i] as Vec3, from)), 9);
      });
    });
  });

  test('the ridge lies within a board of the floor, where it stood over six feet up', () => {
    const tops = (shown: Shown) => Math.max(...pointsOf(bodiesOf(shown, 'ridge')).map(([, , z]) => z));
    expect(tops(upright)).toBeGreaterThan(72);
    expect(tops(down)).toBeLessThan(24);
    expect(Math.min(...pointsOf(bodiesOf(down, 'ridge')).map(([, , z]) => z))).toBeGreaterThan(7);
  });

  test('nothing that fell stands up any more', () => {
    const high = modelOf(down).solids.filter(({ id }) => /^(ridge|rafter|collar|strap|post|brace)/.test(id));
    expect(high.length).toBeGreaterThan(40);
    for (const solid of high)
      expect(Math.max(...pointsOf([solid]).map(([, , z]) => z)), solid.id).toBeLessThan(30);
  });

  test('walls, joists, plates and blocks stay where they were', () => {
    const stays = ({ id, role }: Solid): boolean => /^(block|joist|plate)/.test(id) || role === 'wall';
    const of = (shown: Shown) => modelOf(shown).solids.filter(stays);
    expect(of(down).length).toBeGreaterThan(20);
    expect(of(down)).toEqual(of(upright));
  });

  test('the joint that let go is circled where it lies now', () => {
    const at = modelOf(down).loose as Vec3;
    const near = pointsOf(bodiesOf(down, 'rafter.yard.9')).map((point) => lengthOf(sub(point, at)));
    expect(Math.min(...near)).toBeLessThan(8);
  });
});

describe('which way', () => {
  test('along: every rafter leans the way the row went, by the same turn, and the ridge moves with their tops', () => {
    for (const toward of [1, -1] as const) {
      const shown = fell({ way: 'along', toward, loose: undefined });
      const moved = (id: string): number =>
        middle(pointsOf(bodiesOf(shown, id)), 0) - middle(pointsOf(bodiesOf(upright, id)), 0);
      expect(Math.sign(moved('ridge'))).toBe(toward);
      expect(moved('rafter.yard.2')).toBeCloseTo(moved('rafter.street.15'), 1);
      expect(Math.abs(moved('ridge'))).toBeGreaterThan(Math.abs(moved('rafter.yard.2')));
    }
  });

  test('sideways: to the yard is the mirror picture of to the street', () => {
    const yard = fell({ way: 'sideways', toward: 1, loose: undefined });
    const street = fell({ way: 'sideways', toward: -1, loose: undefined });
    for (let station = 1; station <= 18; station++) {
      const one = pointsOf(bodiesOf(yard, `rafter.yard.${String(station)}`));
      const other = pointsOf(bodiesOf(street, `rafter.street.${String(station)}`));
      for (const axis of [0, 2] as const) expect(middle(one, axis)).toBeCloseTo(middle(other, axis), 6);
      expect(middle(one, 1)).toBeCloseTo(-middle(other, 1), 6);
    }
    expect(middle(pointsOf(bodiesOf(yard, 'ridge')), 1)).toBeGreaterThan(12);
  });

  test('downward: both sides slide out alike, and the ridge stays in the middle', () => {
    const shown = fell({ way: 'downward', toward: 1, loose: undefined });
    const out = (id: RafterId): number => Math.abs(middle(pointsOf(bodiesOf(shown, id)), 1));
    const was = (id: RafterId): number => Math.abs(middle(pointsOf(bodiesOf(upright, id)), 1));
    expect(out('rafter.yard.4')).toBeCloseTo(out('rafter.street.4'), 6);
    expect(out('rafter.yard.4')).toBeGreaterThan(was('rafter.yard.4'));
    expect(middle(pointsOf(bodiesOf(shown, 'ridge')), 1)).toBeCloseTo(0, 6);
  });

  test('while it stands nothing is circled', () => {
    expect(modelOf(upright).loose).toBeUndefined();
  });
});
