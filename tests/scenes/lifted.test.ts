import { expect, test } from 'vitest';
import { play } from '../../src/core/hands/play';
import { fastened } from '../../src/core/site/holding';
import type { RafterId } from '../../src/core/site/ids';
import { pose } from '../../src/core/site/posed';
import { begin, take } from '../../src/core/site/take';
import { schemeOf, shownOf, type Shown } from '../../src/present/model/scheme';
import { roofSolids } from '../../src/present/model/roofSolids';
import { hangsTogether, liftedBy } from '../../src/scenes/motion/lifted';
import { slungAt } from '../../src/scenes/overview/machine';
import { levelOf } from '../site/levels';

/** A rafter stands at the hung ridge with its plumb cut tacked, another by hand alone. */
const tacked = (): Shown => {
  const level = levelOf('boathouse');
  const acts = play(level, 'expert', { seed: 7, mode: 'own', wanted: { hang: 'machine' } }).steps.map(
    ({ action }) => action,
  );
  const isSecond = (act: (typeof acts)[number]): boolean =>
    act.type === 'place' && act.member === 'rafter.yard.1';
  const { site } = acts.slice(0, acts.findIndex(isSecond) + 1).reduce(take, begin(level, 7, 'own'));
  return shownOf(level, pose({ level, seed: 7, site }), site);
};

test.each([-6, -0.5, 1 / 16, 3, 6])(
  'what is fastened to the ridge goes with it by %f, and nothing else',
  (by) => {
    const shown = tacked();
    const lifted = liftedBy(shown, by);
    const ids = Object.keys(shown.pose.rafters) as RafterId[];
    const on = ids.filter((id) => fastened(shown.site, `ridge:${id}`));
    expect(on.length).toBeGreaterThan(0);
    expect(on.length).toBeLessThan(ids.length);
    expect([...hangsTogether(shown)].sort()).toEqual([...on, 'ridge'].sort());
    for (const id of ids) {
      const [was, is] = [shown.pose.rafters[id]!, lifted.pose.rafters[id]!];
      expect(is.heel).toEqual(was.heel);
      expect(is.top.out).toBe(was.top.out);
      expect(is.top.z - was.top.z).toBeCloseTo(on.includes(id) ? by : 0, 9);
    }
    expect((lifted.pose.ridge?.mid.z ?? 0) - (shown.pose.ridge?.mid.z ?? 0)).toBeCloseTo(by, 9);
    expect(slungAt(lifted)!.hook[2] - slungAt(shown)!.hook[2]).toBeCloseTo(by, 9);
    const names = (of: Shown): readonly string[] => roofSolids(of, schemeOf(of)).map(({ id }) => id);
    expect(names(lifted)).toEqual(names(shown));
  },
);
