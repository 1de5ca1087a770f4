import { describe, expect, it } from 'vitest';
import { lengthOf, sub, type Vec3 } from '../../src/core/geometry/vector';
import { modes } from '../../src/core/level/mode';
import { loadsOf } from '../../src/core/site/loads';
import {
  keyPounds,
  labeled,
  loadLines,
  loadPathOf,
  roundPounds,
  type LoadArrow,
} from '../../src/present/loadPath';
import { offersTeaching } from '../../src/present/teaching';
import { catalogues } from '../../src/present/words/messages';
import { arrowWide, pixelsAPound } from '../../src/scenes/overview/drawLoads';
import { cleanActs, told, usual } from '../order/story';
import { trueLevel } from '../site/levels';
import { shedAfter, shedDone } from '../site/shedRun';

const hut = trueLevel('garden-hut');
const acts = cleanActs(hut, usual);
const done = told(hut, acts, { seed: 7 });
const pathOf = (selected: string) => {
  const path = loadPathOf(done, selected);
  if (!path) throw new Error('no path');
  return path;
};

describe('the load path as it is drawn', () => {
  it('of many pairs the chosen one is shown, of few all; nothing before anything is fastened', () => {
    expect(pathOf('rafter.yard.6').pairs.map(({ station }) => station)).toEqual([6]);
    const two = acts.findIndex((act) => act.type === 'tack' && act.joint.startsWith('heel:')) + 1;
    const begun = loadPathOf(told(hut, acts.slice(0, two + 2)), undefined);
    expect(begun?.pairs.length).toBeLessThan(4);
    expect(loadPathOf(told(hut, []), undefined)).toBeUndefined();
  });

  it('an arrow of a push points to its end of the member and of a pull away from it', () => {
    const middle: Vec3 = [72, 0, 0];
    const out = ({ from, to }: LoadArrow): number =>
      lengthOf(sub([0, to[1], 0], [0, middle[1], 0])) - lengthOf(sub([0, from[1], 0], [0, middle[1], 0]));
    const { arrows } = pathOf('rafter.street.4');
    const joist = arrows.filter(({ member }) => member === 'joist.4');
    expect(joist).toHaveLength(2);
    for (const arrow of joist) {
      expect(arrow.kind).toBe('pull');
      expect(out(arrow)).toBeLessThan(0);
    }
    const feet = arrows.filter(
      ({ member, kind, to }) => member.startsWith('rafter') && kind === 'push' && to[2] < 20,
    );
    expect(feet).toHaveLength(2);
    for (const arrow of feet) expect(out(arrow)).toBeGreaterThan(0);
  });

  it('is as wide as what it carries, to the printed scale', () => {
    const { arrows } = pathOf('rafter.street.4');
    const per = pixelsAPound(arrows);
    const most = Math.max(...arrows.map(({ pounds }) => pounds));
    for (const { pounds } of arrows.filter((arrow) => arrow.pounds > 2))
      expect(arrowWide(pounds, per) / arrowWide(most, per)).toBeCloseTo(pounds / most, 9);
    expect(keyPounds(most)).toBeLessThanOrEqual(most);
    expect(keyPounds(most) * 2.5).toBeGreaterThanOrEqual(most);
  });

  it.each(['en', 'es'] as const)(
    'says the same in words (%s): every figure on a chip stands in the list',
    (lang) => {
      const words = catalogues[lang];
      const path = pathOf('rafter.street.4');
      const list = loadLines(words, done, path).join(' ');
      for (const { label } of labeled(words, path.arrows))
        if (label !== '') expect(list).toContain(`${label.split(' ').slice(-2).join(' ')}`);
      const loads = loadsOf(done);
      if (!loads || loads === 'falls') throw new Error('falls');
      expect(list).toContain(`${roundPounds(loads.weight)} lb`);
    },
  );

  it('of a shed goes down at the low wall and at the stud behind the ledger, on one side alone', () => {
    const path = loadPathOf(shedDone, 'rafter.street.8');
    if (!path) throw new Error('no path');
    const downs = path.arrows.filter(({ kind }) => kind === 'down');
    expect(downs.map(({ member }) => member)).toEqual(['rafter.street.8', 'ledger:ridge.8']);
    const [low, high] = downs;
    const loads = loadsOf(shedDone);
    if (!loads || loads === 'falls') throw new Error('falls');
    expect(high?.pounds).toBe(loads.studs['ledger:ridge.8']);
    expect(high?.from[1]).toBe(shedDone.level.plan.ridge.thickness / 2);
    expect(low?.from[1]).toBeLessThan(-100);
    for (const lang of ['en', 'es'] as const) {
      const words = catalogues[lang];
      const list = loadLines(words, shedDone, path).join(' ');
      for (const { label } of labeled(words, path.arrows))
        expect(list).toContain(label.split(' ').slice(-2).join(' '));
      const all = Object.values(loads.studs).reduce((a, b) => a + b, 0);
      expect(list).toContain(`${roundPounds(all)} lb`);
    }
    const begun = shedDone.steps.findIndex(
      ({ action }) => action.type === 'tack' && action.joint.startsWith('heel:'),
    );
    const few = loadPathOf(shedAfter(begun + 6), undefined);
    // On its props, between which nothing loads it yet, it lifts at both ends.
    const ledger = few?.arrows.filter(({ member }) => member.startsWith('ledger:')) ?? [];
    expect(ledger.map(({ member, kind }) => [member, kind])).toEqual([
      ['ledger:ridge.1', 'pull'],
      ['ledger:ridge.14', 'pull'],
    ]);
    for (const { from, to } of ledger) expect(to[2]).toBeGreaterThan(from[2]);
  });

  it('is not offered where finding out is what is asked', () => {
    expect(modes.filter((mode) => !offersTeaching(mode))).toEqual(['check-off']);
  });
});
