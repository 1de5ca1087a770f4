import { describe, expect, it } from 'vitest';
import { measuredOn, type Feature } from '../../src/core/score/fit';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { ridgeHigh } from '../../src/core/site/posed';
import { take, would } from '../../src/core/site/take';
import { orderRules } from '../../src/core/order/rules';
import { scoreOf } from '../../src/core/score/scored';
import { cleanActs, slipsOf, told, type } from '../order/story';
import { trueLevel } from './levels';

/**
 * What breaking a rule and going on does to the work. O2, O6 and O7 have theirs in the lessons of the frame, O11 among the
 * tails; what is not simulated has to say so.
 */

const hut = trueLevel('garden-hut');
const clean = cleanActs(hut);
const slips = new Map(slipsOf(clean));
const base = told(hut, clean);

const worst = (attempt: Attempt, feature: Feature): number =>
  Math.max(...measuredOn(attempt).flatMap((one) => (one.feature === feature ? [Math.abs(one.off)] : [])));

const upTo = (acts: readonly Action[], which: (act: Action) => boolean): Attempt =>
  told(hut, acts.slice(0, acts.findIndex(which) + 1));

describe('a rule that is broken', () => {
  it.each([
    ['O3', 'layout', hut.tolerances.layout],
    ['O9', 'tie', hut.tolerances.tie],
  ] as const)('%s leaves the %s out of tolerance', (rule, feature, allowed) => {
    expect(worst(base, feature)).toBeLessThan(allowed);
    expect(worst(told(hut, slips.get(rule) ?? []), feature)).toBeGreaterThan(allowed);
  });

  it('O5: a nailed end pair does not move with the ridge, and its drawn nails split it sooner or later', () => {
    const early = upTo(slips.get('O5') ?? [], type('nailOff', /"ridge:rafter\.street\.1"/));
    const joint = 'ridge:rafter.street.1';
    let attempt = early;
    // One drawn joint in ten splits.
    for (let i = 0; i < 60 && !attempt.site.splits.includes('rafter.street.1'); i++) {
      attempt = take(attempt, { type: 'draw', joint, nails: 1 });
      attempt = take(attempt, { type: 'nailOff', joint });
    }
    expect(attempt.site.splits).toContain('rafter.street.1');
    expect(attempt.site.minutes - early.site.minutes).toBeGreaterThanOrEqual(2);
  });

  it('O8: a heel nailed before it is held to the string slides no more', () => {
    const acts = slips.get('O8') ?? [];
    const slide: Action = { type: 'shift', member: 'rafter.street.3', at: 'heel', by: 1 / 8 };
    const heel = type('nailOff', /"heel:rafter\.street\.3"/);
    const before = told(hut, acts.slice(0, acts.findIndex(heel)));
    expect(would(before, slide).ok).toBe(true);
    expect(would(upTo(acts, heel), slide).ok).toBe(false);
  });

  // 34 ft: with every heel home the posts come out and nothing stirs; on tacks the ridge goes down with them.
  it('O10: posts taken out from under tacks let the ridge down', () => {
    const barn = trueLevel('hay-barn');
    const acts = cleanActs(barn);
    const loweredAt = (step: number): number => {
      const before = told(barn, acts.slice(0, step));
      const clear = (['lead', 'helper'] as const).map((who): Action => ({
        type: 'stand',
        who,
        where: 'clear',
      }));
      const out = ([1, 2] as const).map((n): Action => ({ type: 'takeOut', member: `post.${n}` }));
      const after = [...clear, ...out].reduce<Attempt>(take, before);
      expect(after.site.members['post.1'] ?? after.site.members['post.2']).toBeUndefined();
      return (ridgeHigh(before)?.B ?? NaN) - (ridgeHigh(after)?.B ?? NaN);
    };
    const onTacks = loweredAt(acts.findIndex(type('nailOff', /"heel:rafter\.(street|yard)\.2"/)));
    const nailed = loweredAt(acts.findIndex(type('takeOut', /post/)));
    expect(onTacks).toBeGreaterThan(1 / 16);
    expect(nailed).toBeLessThan(onTacks / 2);
  });

  it('says so where nothing of it is simulated', () => {
    expect(orderRules.filter(({ shows }) => shows === 'frame').map(({ id }) => id)).toEqual(['O1', 'O4']);
    const { findings } = scoreOf(told(hut, slips.get('O1') ?? []));
    expect(findings.find(({ code }) => code === 'O1')?.costOnly).toBe(true);
  });
});
