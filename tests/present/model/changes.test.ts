import { describe, expect, it } from 'vitest';
import { play } from '../../../src/core/hands/play';
import { lengthOf, sub, type Vec3 } from '../../../src/core/geometry/vector';
import { roofOf } from '../../../src/core/level/layout';
import type { Attempt } from '../../../src/core/site/attempt';
import { pose } from '../../../src/core/site/posed';
import { begin, take } from '../../../src/core/site/take';
import { jointSeenAt } from '../../../src/present/model/jointSeen';
import { onItsWay } from '../../../src/present/model/arrival';
import { between, changesOf, groupsOf } from '../../../src/present/model/changes';
import { movedSolid } from '../../../src/present/model/fallen';
import type { Shown } from '../../../src/present/model/scheme';
import type { Solid } from '../../../src/present/model/solid';
import { modelOf } from '../../../src/present/model/solidsOf';
import { levelOf } from '../../site/levels';

const shownOf = ({ level, seed, site }: Attempt): Shown => ({
  level,
  site,
  pose: pose({ level, seed, site }),
  figured: roofOf(level),
});

type Moment = { readonly attempt: Attempt; readonly shown: Shown; readonly solids: readonly Solid[] };

/** Every moment of an expert's run on the hut. */
const level = levelOf('garden-hut');
const moments: readonly Moment[] = (() => {
  let attempt = begin(level, 11, 'own');
  const at = (now: Attempt): Moment => {
    const shown = shownOf(now);
    return { attempt: now, shown, solids: modelOf(shown).solids };
  };
  return [
    at(attempt),
    ...play(level, 'expert', { seed: 11, mode: 'own' }).steps.map(({ action }) => {
      attempt = take(attempt, action);
      return at(attempt);
    }),
  ];
})();
const last = moments[moments.length - 1] as Moment;

const points = (solids: readonly Solid[]): readonly Vec3[] =>
  solids.flatMap(({ faces }) => faces.flatMap((face) => face.points));
const apart = (a: readonly Vec3[], b: readonly Vec3[]): number =>
  Math.max(...a.map((p, i) => lengthOf(sub(p, b[i] as Vec3))));

describe('what an act changes in the bodies', () => {
  it('is exactly what became a member, and what no longer is one', () => {
    let came = 0;
    moments.slice(1).forEach((now, i) => {
      const before = moments[i] as Moment;
      const changes = changesOf(before, now);
      const members = (m: Moment): readonly string[] => [...groupsOf(m.solids).keys()];
      for (const id of changes.came) expect(members(before)).not.toContain(id);
      for (const id of changes.gone) expect(members(now)).not.toContain(id);
      for (const id of changes.moved) expect(members(before)).toContain(id);
      came += changes.came.length;
    });
    expect(came).toBeGreaterThan(30);
  });

  it('is nothing where an act only reads or calls', () => {
    moments.slice(1).forEach((now, i) => {
      const { action } = now.attempt.steps[i] ?? {};
      if (action?.type !== 'read' && action?.type !== 'judge') return;
      expect(changesOf(moments[i] as Moment, now)).toEqual({ came: [], gone: [], moved: [] });
    });
  });
});

describe('a piece on its way', () => {
  const members = [...groupsOf(last.solids.filter(({ selectable }) => selectable))];

  it('comes home', () => {
    for (const [id, solids] of members) {
      const home = solids.map((solid) => movedSolid(solid, onItsWay(last.shown, id, 0)));
      expect(apart(points(home), points(solids)), id).toBe(0);
    }
  });

  it('starts away from home and keeps its shape all the way', () => {
    for (const [id, solids] of members)
      for (const left of [1, 0.6, 0.2]) {
        const [was, is] = [
          points(solids),
          points(solids.map((solid) => movedSolid(solid, onItsWay(last.shown, id, left)))),
        ];
        expect(apart(was, is), id).toBeGreaterThan(0.5);
        const span = (all: readonly Vec3[]): readonly number[] =>
          all.map((p) => lengthOf(sub(p, all[0] as Vec3)));
        span(was).forEach((far, i) => expect(span(is)[i]).toBeCloseTo(far, 9));
      }
  });

  it('keeps the heel of a rafter on its plate while the top is swung up from below', () => {
    for (const [id, rafter] of Object.entries(last.shown.pose.rafters)) {
      const { move } = onItsWay(last.shown, id, 1);
      const sign = rafter.side === 'street' ? -1 : 1;
      const heel: Vec3 = [rafter.x.heel, sign * rafter.heel.out, rafter.heel.z];
      expect(lengthOf(sub(move(heel), heel))).toBeLessThan(1e-9);
      const top: Vec3 = [rafter.x.ridge, sign * rafter.top.out, rafter.top.z];
      expect(move(top)[2]).toBeLessThan(top[2] - 12);
    }
  });
});

it('goes straight from one place to the other', () => {
  const from = last.solids.find(({ id }) => id === 'rafter.yard.2') as Solid;
  const to = movedSolid(from, onItsWay(last.shown, from.id, 0.7));
  expect(apart(points([between(from, to, 0)]), points([from]))).toBeLessThan(1e-9);
  expect(apart(points([between(from, to, 1)]), points([to]))).toBeLessThan(1e-9);
});

it('finds a place on the work for every joint that gets nails', () => {
  for (const { attempt, shown } of moments) {
    const { action } = attempt.steps[attempt.steps.length - 1] ?? {};
    if (action?.type !== 'tack' && action?.type !== 'nailOff' && action?.type !== 'draw') continue;
    if (/^(post|strap)/.test(action.joint)) continue;
    expect(jointSeenAt(shown, action.joint), action.joint).toBeDefined();
  }
});
