import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/core/geometry/vector';
import { meetingAt } from '../../src/core/mechanics/jointForces';
import type { GableParts } from '../../src/core/mechanics/gableParts';
import { settle, type Settled } from '../../src/core/mechanics/settle';
import { settledGable, wholeGable } from '../mechanics/testGable';
import { framed } from '../../src/core/site/framed';
import { loadsOf } from '../../src/core/site/loads';
import { pairLoads } from '../../src/core/site/pairLoads';
import { stationsOf } from '../../src/core/level/layout';
import { inch } from '../../src/core/units/inch';
import { cleanActs, told, usual } from '../order/story';
import { levelOf, trueLevel } from './levels';

const hut = trueLevel('garden-hut');
const acts = cleanActs(hut, usual);
const done = told(hut, acts);

const sumOf = (forces: Iterable<Vec3>): Vec3 => {
  let all: Vec3 = [0, 0, 0];
  for (const f of forces) all = [all[0] + f[0], all[1] + f[1], all[2] + f[2]];
  return all;
};

/** The worst joint of rafters: what is left over of all that meets there, as a part of the largest force at it. */
const worstJoint = (settled: Settled, rafters: GableParts['rafters'], lean: boolean): number =>
  [...rafters.values()]
    .flatMap(({ heel, top }) => [heel, top])
    .reduce((worst, node) => {
      const met = [...meetingAt(settled, node)].filter(([name]) => lean || name !== 'lean');
      const forces = met.map(([, force]) => force);
      const most = Math.max(...forces.map((force) => Math.hypot(...force)));
      return Math.max(worst, Math.hypot(...sumOf(forces)) / most);
    }, 0);

describe('the load path of a pair', () => {
  it('all that meets at a heel or a plumb cut comes to nothing, on true and on crooked sites, half built and done', () => {
    for (const [level, seed] of [
      [hut, 1],
      [levelOf('garden-hut'), 7],
      [levelOf('boathouse'), 3],
    ] as const) {
      const own = cleanActs(level, usual);
      for (const share of [0.6, 1]) {
        const frame = framed(told(level, own.slice(0, Math.round(own.length * share)), { seed }));
        if (!frame || frame.settled.falls) throw new Error('nothing stands');
        const { rafters } = frame.parts;
        expect(rafters.size).toBeGreaterThan(3);
        expect(worstJoint(settle(frame.parts.frame, { firstOrder: true }), rafters, false)).toBeLessThan(
          1e-6,
        );
        // What leaning adds is in the moves alone: a hundredth of what meets there.
        expect(worstJoint(frame.settled, rafters, true)).toBeLessThan(0.02);
      }
    }
  });

  it('what all pairs set down on the walls, with posts and hands, is all that weighs', () => {
    for (const attempt of [told(hut, acts.slice(0, Math.round(acts.length * 0.7))), done]) {
      const loads = loadsOf(attempt);
      if (!loads || loads === 'falls') throw new Error('nothing stands');
      const down = stationsOf(hut).flatMap((_, i) =>
        Object.values(pairLoads(attempt, i + 1)?.rafters ?? {}).map((one) => one.down),
      );
      const held = Object.values(loads.supports);
      const all = [...down, ...held].reduce((a, b) => a + b, 0);
      expect(all / loads.weight).toBeCloseTo(1, 9);
    }
  });

  it('both sides of a row made at one time carry alike, mirrored', () => {
    const { parts, settled } = settledGable(wholeGable(8));
    for (const [i, street] of parts.rows.street.entries()) {
      const yard = parts.rows.yard[i];
      if (!street || !yard) throw new Error('no pair');
      for (const end of ['heel', 'top'] as const) {
        const [one, other] = [street, yard].map((rafter) =>
          meetingAt(settled, rafter[end]).get(rafter.rafter[end].joint),
        );
        if (!one || !other) throw new Error('no joint');
        expect([one[0], -one[1], one[2]]).toEqual(other.map((part) => expect.closeTo(part, 6)));
      }
    }
  });

  it('pushes more at the foot than at the ridge, by its weight along the slope; ties pull', () => {
    const pair = pairLoads(done, 4);
    const { street } = pair?.rafters ?? {};
    if (!pair || !street) throw new Error('no pair');
    expect(street.atHeel.along).toBeGreaterThan(street.atTop.along);
    expect(street.atTop.along).toBeGreaterThan(0);
    expect(pair.ties.find(({ member }) => member === 'joist.4')?.pull).toBeGreaterThan(0);
    expect(street.down).toBeGreaterThan(0);
  });

  it('twice as heavy lumber, twice the load', () => {
    const plan = hut.plan;
    const heavy = {
      ...hut,
      plan: { ...plan, rafter: { ...plan.rafter, thickness: inch(2 * plan.rafter.thickness) } },
    };
    const [light, twice] = [loadsOf(done), loadsOf({ ...done, level: heavy })];
    if (!light || light === 'falls' || !twice || twice === 'falls') throw new Error('falls');
    expect(twice.weight).toBeGreaterThan(1.5 * light.weight);
    const [a, b] = [pairLoads(done, 5), pairLoads({ ...done, level: heavy }, 5)];
    const downs = [a, b].map((pair) => pair?.rafters.street?.down ?? 0) as [number, number];
    expect(downs[1] / downs[0]).toBeCloseTo(twice.weight / light.weight, 0);
  });
});
