import { describe, expect, it } from 'vitest';
import type { Level } from '../../src/core/level/level';
import { scoreOf } from '../../src/core/score/scored';
import type { Action } from '../../src/core/site/action';
import { dangers } from '../../src/core/site/dangers/rows';
import type { DangerId } from '../../src/core/site/dangers/danger';
import { cleanActs, told, type, usual } from '../order/story';
import { trueLevel } from '../site/levels';

const hut = trueLevel('garden-hut');
const boathouse = trueLevel('boathouse');
const posted = cleanActs(hut);
const lifted = cleanActs(boathouse, { ...usual, hang: 'machine' });

/** The acts up to, and not with, the first one of a kind. */
const before = (acts: readonly Action[], which: ReturnType<typeof type>): readonly Action[] =>
  acts.slice(0, acts.findIndex(which));
const after = (acts: readonly Action[], which: ReturnType<typeof type>): readonly Action[] =>
  acts.slice(0, acts.findIndex(which) + 1);

type Danger = { readonly level: Level; readonly so: readonly Action[]; readonly act: Action };

/** One way into each danger the site knows. */
const ways: Readonly<Record<DangerId, Danger>> = {
  topPlate: { level: hut, so: [], act: { type: 'stand', who: 'helper', where: 'plate' } },
  tiedToUnbuilt: { level: hut, so: [], act: { type: 'makeReady', what: 'anchor', at: 'ridge' } },
  handBehind: {
    level: hut,
    so: [
      ...after(posted, type('place', /"ridge"/)),
      { type: 'place', member: 'rafter.street.1', at: 'mark' },
      { type: 'place', member: 'rafter.yard.1', at: 'mark' },
    ],
    act: { type: 'tack', joint: 'ridge:rafter.yard.1', nails: 2 },
  },
  bumpTrigger: {
    level: hut,
    so: before(posted, type('nailOff')).filter((act) => !type('makeReady', /gear/)(act)),
    act: { type: 'nailOff', joint: 'ridge:rafter.street.1' },
  },
  propWithSomeoneUnder: {
    level: hut,
    so: [...after(posted, type('place', /"ridge"/)), { type: 'stand', who: 'lead', where: 'platform' }],
    act: { type: 'takeOut', member: 'post.1' },
  },
  onePointHitch: {
    level: boathouse,
    so: before(lifted, type('hookOn')),
    act: { type: 'hookOn', hitch: 'one', tagLine: true },
  },
  underTheLoad: {
    level: boathouse,
    so: after(lifted, type('place', /"ridge"/)),
    act: { type: 'stand', who: 'helper', where: 'path' },
  },
  raiseUnderLoad: {
    level: boathouse,
    so: after(lifted, type('place', /"ridge"/)),
    act: { type: 'raise', end: 'A', by: 0.25 },
  },
  letGoTooSoon: {
    level: boathouse,
    so: [...before(lifted, type('letGo')), { type: 'stand', who: 'lead', where: 'beside' }],
    act: { type: 'letGo' },
  },
};

describe('dangers', () => {
  it.each(Object.entries(ways))(
    '%s is stopped, kept in the record, and caps the total',
    (id, { level, so, act }) => {
      const row = dangers.find((danger) => danger.id === id);
      const attempt = told(level, [...so, act]);
      expect(attempt.steps.at(-1)?.outcome).toEqual({ ok: false, why: id, stop: true });
      expect(attempt.site.stops.map(({ danger }) => danger)).toEqual([id]);
      const { cap, findings } = scoreOf(attempt);
      expect(cap).toBe(row?.cap);
      expect(findings.find(({ kind }) => kind === 'safety')).toMatchObject({
        code: row?.rule,
        at: id,
        step: attempt.steps.length - 1,
      });
    },
  );

  it('cover every row there is', () => {
    expect(Object.keys(ways).sort()).toEqual(dangers.map(({ id }) => id).sort());
  });

  it.each([
    [49, { type: 'stand', who: 'helper', where: 'plate' }],
    [49, { type: 'makeReady', what: 'anchor', at: 'load' }],
  ] as const)('cap at %i what is otherwise a clean run, which goes on', (cap, act) => {
    const clean = scoreOf(told(hut, posted));
    const stopped = told(hut, [act, ...posted]);
    const score = scoreOf(stopped);
    expect(stopped.site.handedOver).toBe(true);
    expect(score.total).toBe(cap);
    expect(score.pass).toBe(false);
    expect(score.parts).toEqual(clean.parts);
    expect(clean.pass).toBe(true);
  });

  it('a serious one caps at 69', () => {
    const { so, act } = ways.bumpTrigger;
    const gear: Action = { type: 'makeReady', what: 'gear', at: 'site' };
    const rest = posted.slice(posted.findIndex(type('nailOff')));
    const score = scoreOf(told(hut, [...so, act, gear, ...rest]));
    expect(score.total).toBe(69);
    expect(score.pass).toBe(false);
  });

  it('with everybody clear it is done, and the ridge comes down: the run ends at 49 at most', () => {
    const { so, act } = ways.propWithSomeoneUnder;
    const clear = [...so.slice(0, -1), act];
    const attempt = told(hut, [...clear, { type: 'handOver' }]);
    expect(attempt.site.down).toBe('nothingCarriesTheRidge');
    expect(attempt.site.handedOver).toBe(false);
    const { cap, findings } = scoreOf(attempt);
    expect(cap).toBe(49);
    expect(findings[0]).toMatchObject({ code: 'cameDown', kind: 'safety' });
  });

  it('no clean run, lifted or posted, meets any', () => {
    expect(told(hut, posted).site.stops).toEqual([]);
    expect(told(boathouse, lifted).site.stops).toEqual([]);
  });
});
