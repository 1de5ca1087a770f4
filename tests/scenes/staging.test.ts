import { expect, test } from 'vitest';
import { play } from '../../src/core/hands/play';
import { begin, take } from '../../src/core/site/take';
import { pose } from '../../src/core/site/posed';
import { lastActOf } from '../../src/present/lastAct';
import { shownOf, type Shown } from '../../src/present/model/scheme';
import type { Solid } from '../../src/present/model/solid';
import { modelOf } from '../../src/present/model/solidsOf';
import { crewDrawn, workersOf } from '../../src/scenes/overview/crew';
import { levelOf } from '../site/levels';

type Reach = { readonly least: readonly number[]; readonly most: readonly number[] };

const reachOf = ({ faces }: Solid): Reach => {
  const points = faces.flatMap((face) => face.points);
  const along = (i: 0 | 1 | 2, of: typeof Math.min): number => of(...points.map((p) => p[i]));
  return {
    least: [along(0, Math.min), along(1, Math.min), along(2, Math.min)],
    most: [along(0, Math.max), along(1, Math.max), along(2, Math.max)],
  };
};

/** One lies on the other: its underside at the other's top, and over it. */
const liesOn = (upper: Reach, lower: Reach): boolean =>
  Math.abs((upper.least[2] ?? 0) - (lower.most[2] ?? 1)) < 0.01 &&
  [0, 1].every(
    (i) =>
      (upper.least[i] ?? 0) < (lower.most[i] ?? 0) + 0.01 && (lower.least[i] ?? 0) < (upper.most[i] ?? 0),
  );

/** Acts on the ground and the walls, before there is anything to walk on. */
const early = 66;

test('planks inside the walls lie on bearers at both ends and not too far apart, and those on the floor', () => {
  const level = levelOf('boathouse');
  const acts = play(level, 'expert', { seed: 7, mode: 'own' }).steps.slice(0, early);
  let at = begin(level, 7, 'own');
  let planks = 0;
  for (const { action } of acts) {
    at = take(at, action);
    const still = shownOf(level, pose({ level, seed: 7, site: at.site }), at.site);
    const shown: Shown = { ...still, lastAct: lastActOf(at) };
    const { solids } = modelOf(shown);
    const floor = reachOf(solids.find(({ id }) => id === 'floor')!);
    const workers = workersOf(shown, solids);
    const drawn = crewDrawn(shown, workers).solids;
    const low = (['lead', 'helper'] as const).filter((who) =>
      workers.workers.some((one) => one.who === who && one.posed?.surface.kind === 'staging'),
    );
    for (const who of low) {
      const bearers = drawn.filter(({ id }) => id.startsWith(`bearer.${who}.`)).map(reachOf);
      const boards = drawn.filter(({ id }) => id.startsWith(`plank.${who}.`)).map(reachOf);
      expect(boards.length).toBeGreaterThan(0);
      for (const bearer of bearers) expect(liesOn(bearer, floor)).toBe(true);
      for (const board of boards) {
        const under = bearers.filter((bearer) => liesOn(board, bearer));
        const xs = under
          .map(({ least, most }) => ((least[0] ?? 0) + (most[0] ?? 0)) / 2)
          .sort((a, b) => a - b);
        const stops = [board.least[0] ?? 0, ...xs, board.most[0] ?? 0];
        expect(xs.length).toBeGreaterThanOrEqual(2);
        for (const [i, x] of xs.entries()) expect(x - (stops[i] ?? 0)).toBeLessThanOrEqual(84);
        planks++;
      }
    }
  }
  expect(planks).toBeGreaterThan(0);
});
