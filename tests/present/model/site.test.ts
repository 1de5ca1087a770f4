import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/core/geometry/vector';
import { roofOf, stationsOf } from '../../../src/core/level/layout';
import type { Level } from '../../../src/core/level/level';
import { initialSite } from '../../../src/core/site/initial';
import { placeOf } from '../../../src/core/site/ids';
import { pose } from '../../../src/core/site/posed';
import { requiredFor } from '../../../src/core/site/required';
import type { Placed, SiteState } from '../../../src/core/site/state';
import { openSpotsOf } from '../../../src/present/model/openSpots';
import { edgesOfRafter, faceBehind, rafterOutline } from '../../../src/present/model/rafterShape';
import { schemeOf, type Shown } from '../../../src/present/model/scheme';
import { modelOf } from '../../../src/present/model/solidsOf';
import type { Solid } from '../../../src/present/model/solid';
import { trueLevel } from '../../site/levels';

const seed = 5;
const hut = trueLevel('garden-hut');

const built = (level: Level, ridge: Partial<NonNullable<SiteState['ridge']>> = {}): SiteState => {
  const members: Record<string, Placed> = { ridge: { x: 0 } };
  const stations = stationsOf(level);
  for (const id of requiredFor(level, { agreed: {}, members: {} }).members) {
    const x = stations[(placeOf(id).station ?? 1) - 1] ?? 0;
    if (id.startsWith('rafter')) members[id] = { x, board: 'board.1' };
    else if (id.startsWith('block')) members[id] = { x: x + 0.75 };
    else members[id] = { x: 0 };
  }
  return {
    ...initialSite,
    members,
    ridge: { on: 'posts', high: { A: 0, B: 0 }, aside: { A: 0, B: 0 }, ...ridge },
  };
};

const shown = (level: Level, site: SiteState): Shown => ({
  level,
  site,
  pose: pose({ level, seed, site }),
  figured: roofOf(level),
});

const pointsOf = (solid: Solid): readonly Vec3[] => solid.faces.flatMap(({ points }) => points);
const named = (of: Shown, id: string): readonly Solid[] =>
  modelOf(of).solids.filter((solid) => solid.id === id);

describe('bodies of the site', () => {
  test('every member that stands has a body, and can be picked', () => {
    const of = shown(hut, built(hut));
    const bodies = new Set(
      modelOf(of)
        .solids.filter(({ selectable }) => selectable)
        .map(({ id }) => id),
    );
    for (const id of Object.keys(of.site.members)) expect(bodies, id).toContain(id);
  });

  test('an empty site has no member, and every rafter place is open', () => {
    const of = shown(hut, initialSite);
    expect(modelOf(of).solids.filter(({ role }) => role === 'rafter')).toHaveLength(0);
    const spots = openSpotsOf(of).map(({ id }) => id);
    expect(spots).toContain('rafter.yard.5');
    expect(spots).toContain('block.street.1');
    expect(openSpotsOf(shown(hut, built(hut))).map(({ id }) => id)).not.toContain('rafter.yard.5');
  });

  test('a true rafter is the figured one: top at the ridge, seat on the plate, tail out at the overhang', () => {
    const of = shown(hut, built(hut));
    const [rafter] = named(of, 'rafter.yard.4');
    const points = pointsOf(rafter as Solid);
    const { top, common, half } = schemeOf(of);
    expect(Math.max(...points.map((p) => p[2]))).toBeCloseTo(top, 6);
    expect(Math.max(...points.map((p) => p[1]))).toBeCloseTo(half + hut.plan.overhang, 6);
    const seat = points.filter((p) => Math.abs(p[2]) < 1e-6).map((p) => p[1]);
    expect(Math.max(...seat)).toBeCloseTo(half, 6);
    expect(Math.max(...seat) - Math.min(...seat)).toBeCloseTo(common.seat, 6);
    const xs = points.map((p) => p[0]);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(1.5, 9);
  });

  test('what is out of true shows: a ridge half an inch high lifts every seat or opens every heel', () => {
    const site = built(hut, { high: { A: 0.5, B: 0.5 } });
    const of = shown(hut, site);
    const pose4 = of.pose.rafters['rafter.yard.4'];
    if (!pose4) throw new Error('rafter.yard.4 does not stand');
    expect(pose4.gaps.seat + pose4.gaps.heelCut).toBeGreaterThan(0.1);
    const outline = rafterOutline({
      id: 'r',
      rafter: pose4,
      scheme: schemeOf(of),
      thickness: 1.5,
      seatTrim: 0,
      overhang: hut.plan.overhang,
    });
    const corner = outline[2] ?? [0, 0];
    expect(corner[1]).toBeCloseTo(pose4.gaps.seat, 6);
    expect(corner[0] - schemeOf(of).half).toBeCloseTo(pose4.gaps.heelCut, 6);
  });

  test('gaps at the plumb cut are drawn as wide as they are', () => {
    const of = shown(hut, built(hut));
    const rafter = of.pose.rafters['rafter.street.3'];
    if (!rafter) throw new Error('rafter.street.3 does not stand');
    const open = { ...rafter, gaps: { ...rafter.gaps, plumbTop: 0, plumbBottom: 0.2 } };
    const outline = rafterOutline({
      id: 'r',
      rafter: open,
      scheme: schemeOf(of),
      thickness: 1.5,
      seatTrim: 0,
      overhang: 12,
    });
    const byRidge = [...outline].sort((a, b) => a[0] - b[0]).slice(0, 2);
    const [high, low] =
      byRidge[0]![1] > byRidge[1]![1] ? [byRidge[0]!, byRidge[1]!] : [byRidge[1]!, byRidge[0]!];
    expect(high[0] - faceBehind(open)).toBeCloseTo(0, 9);
    expect(low[0] - faceBehind(open)).toBeCloseTo(0.2, 9);
    const { under } = edgesOfRafter(open, schemeOf(of).common.plumbCutLength);
    expect(low[1]).toBeCloseTo(under(low[0]), 9);
  });

  test('a ridge that is low at B is drawn tilted', () => {
    const of = shown(hut, built(hut, { high: { A: 0, B: -2 } }));
    const points = pointsOf(named(of, 'ridge')[0] as Solid);
    const topAt = (x: number): number =>
      Math.max(...points.filter((p) => Math.abs(p[0] - x) < 1).map((p) => p[2]));
    expect(topAt(0) - topAt(hut.plan.length)).toBeCloseTo(2, 6);
  });

  test('marks wait on plates and ridge only where no rafter stands', () => {
    const full = built(hut);
    const { 'rafter.yard.5': _gone, ...members } = full.members;
    const marks = { 'plate.yard': stationsOf(hut), ridge: stationsOf(hut) };
    const of = shown(hut, { ...full, members, marks });
    const waiting = new Set(
      modelOf(of)
        .strokes.filter(({ kind }) => kind === 'mark')
        .map(({ id }) => id),
    );
    expect([...waiting].sort()).toEqual(['mark.plate.yard.5', 'mark.ridge.yard.5']);
  });

  test('a string stands a gauge block over the two end rafters', () => {
    const of = shown(hut, { ...built(hut), lines: { 'string.street': { off: 0.75, pulls: 1 } } });
    const [string] = modelOf(of).strokes.filter(({ kind }) => kind === 'string');
    const heel = of.pose.rafters['rafter.street.1']?.heel;
    expect(string?.a[2]).toBeGreaterThan((heel?.z ?? 0) + 0.75);
    expect(string?.a[1]).toBeCloseTo(-(heel?.out ?? 0), 9);
  });
});
