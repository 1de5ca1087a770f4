import { describe, expect, test } from 'vitest';
import { dot, lengthOf, sub, type Vec3 } from '../../src/core/geometry/vector';
import { play } from '../../src/core/hands/play';
import { begin, take } from '../../src/core/site/take';
import { pose } from '../../src/core/site/posed';
import type { Attempt } from '../../src/core/site/attempt';
import { schemeOf, shownOf, type Shown } from '../../src/present/model/scheme';
import type { Solid } from '../../src/present/model/solid';
import { corners, onScreen } from '../../src/scenes/ink/camera';
import { fittedCamera } from '../../src/scenes/overview/fit';
import { boomRoom, boomSolids, hookOver, pinAt, slungAt } from '../../src/scenes/overview/machine';
import { levelOf } from '../site/levels';

/** The machine's boom, rope, hook and sling hang as such things hang. */

const shownAt = ({ level, seed, site }: Attempt): Shown => shownOf(level, pose({ level, seed, site }), site);

const pointsOf = (solids: readonly Solid[]): readonly Vec3[] =>
  solids.flatMap(({ faces }) => faces.flatMap(({ points }) => points));

const jobs = ['boathouse', 'hay-barn', 'sail-loft'] as const;

describe.each(jobs)('the machine at %s', (name) => {
  const level = levelOf(name);
  const acts = play(level, 'expert', { seed: 5, mode: 'own', wanted: { hang: 'machine' } }).steps.map(
    ({ action }) => action,
  );
  const upTo = (type: string): Attempt =>
    acts.slice(0, acts.findIndex((act) => act.type === type) + 1).reduce(take, begin(level, 5, 'own'));
  const isRidge = (act: (typeof acts)[number]): boolean => act.type === 'place' && act.member === 'ridge';
  const hung = acts.slice(0, acts.findIndex(isRidge) + 1).reduce(take, begin(level, 5, 'own'));
  const moments = { waiting: upTo('hookOn'), hung };

  test.each(['waiting', 'hung'] as const)('hangs its hook plumb, over the middle of the sling: %s', (at) => {
    const shown = shownAt(moments[at]);
    const slung = slungAt(shown)!;
    const pin = pinAt(slung);
    expect([pin[0], pin[1]]).toEqual([slung.hook[0], slung.hook[1]]);
    expect(slung.chokes).toHaveLength(2);
    const [a, b] = slung.chokes as [number, number];
    expect((a + b) / 2).toBeCloseTo(slung.hook[0], 9);
    // No leg lies flatter than 30 degrees: its pull would be more than the whole load.
    expect((slung.hook[2] - slung.z) / lengthOf([(b - a) / 2, 0, hookOver])).toBeGreaterThanOrEqual(0.5);
    for (const corner of corners) {
      const nearest = Math.min(...pointsOf(boomSolids(shown, corner)).map((p) => lengthOf(sub(p, pin))));
      expect(nearest).toBeLessThan(3.5);
    }
  });

  test.each(corners)('comes from behind and hides neither end of the ridge: %s', (corner) => {
    const shown = shownAt(moments.hung);
    const scheme = schemeOf(shown);
    const camera = fittedCamera({
      scheme,
      overhang: level.plan.overhang,
      hook: boomRoom,
      corner,
      area: { x: 0, y: 0, width: 880, height: 460 },
      ratio: 1,
    });
    const drawn = pointsOf(boomSolids(shown, corner));
    const pin = pinAt(slungAt(shown)!);
    expect(Math.max(...drawn.map((p) => dot(sub(p, pin), camera.away)))).toBeGreaterThan(60);
    const seen = boomSolids(shown, corner).flatMap(({ faces, fade }) =>
      faces.flatMap(({ points }) => points.filter(([, , z]) => z > fade!.gone)),
    );
    const { ridge } = shown.pose;
    for (const end of [ridge!.A, ridge!.B]) {
      const [x, y] = onScreen(camera, [end.x, end.y, end.z]);
      const nearest = Math.min(
        ...seen.map((p) => {
          const [u, v] = onScreen(camera, p);
          return Math.abs(u - x) < 30 ? y - v : Infinity;
        }),
      );
      expect(nearest).toBeGreaterThan(30);
    }
    for (const p of seen) expect(onScreen(camera, p)[1]).toBeGreaterThanOrEqual(0);
  });

  test('is gone once it has let go', () => {
    const shown = shownAt(upTo('letGo'));
    for (const corner of corners) expect(boomSolids(shown, corner)).toEqual([]);
  });
});
