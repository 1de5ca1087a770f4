import { describe, expect, test } from 'vitest';
import { play } from '../../src/core/hands/play';
import { roofOf } from '../../src/core/level/layout';
import type { Action, Spot } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { pose } from '../../src/core/site/posed';
import { begin, take } from '../../src/core/site/take';
import { lastActOf, sameWork } from '../../src/present/lastAct';
import { crewAtWork } from '../../src/present/model/crewAtWork';
import { modelOf } from '../../src/present/model/solidsOf';
import type { CrewAtWork } from '../../src/present/model/task';
import { levelOf } from '../site/levels';

const seed = 7;
const hut = levelOf('garden-hut');
const acts = play(hut, 'expert', { seed, mode: 'own' }).steps.map(({ action }) => action);

const after = (some: readonly Action[], level = hut): Attempt => some.reduce(take, begin(level, seed, 'own'));

const atWork = (attempt: Attempt): CrewAtWork => {
  const { level, site } = attempt;
  const shown = {
    level,
    site,
    pose: pose({ level, seed, site }),
    figured: roofOf(level),
    lastAct: lastActOf(attempt),
  };
  return crewAtWork(shown, modelOf(shown).solids);
};

/** The run through the first act that this matches. */
const through = (match: (act: Action) => boolean): readonly Action[] => {
  const i = acts.findIndex(match);
  if (i < 0) throw new Error('the run never does this');
  return acts.slice(0, i + 1);
};

const tacked = (joint: string) => through((act) => act.type === 'tack' && act.joint === joint);

describe('who does what', () => {
  test('nothing done yet: they talk it over', () => {
    const { lead, helper } = atWork(after([]));
    expect([lead.doing, helper.doing]).toEqual(['talk', 'talk']);
  });

  test('a width is taped by one at either wall', () => {
    const { lead, helper, things } = atWork(
      after(through((act) => act.type === 'read' && act.at === 'width.mid')),
    );
    expect([lead.tool, helper.doing]).toEqual(['tape', 'steady']);
    expect(lead.works?.[1]).toBeLessThan(-60);
    expect(helper.works?.[1]).toBeGreaterThan(60);
    expect(things.map(({ kind }) => kind)).toEqual(['tape']);
  });

  test('boards are looked at on the sawhorses', () => {
    const { lead, things } = atWork(after(through((act) => act.type === 'read' && act.tool === 'pattern')));
    expect(lead.works?.[0]).toBeLessThan(0);
    expect(things.filter(({ kind }) => kind === 'horse')).toHaveLength(2);
  });

  test('a ridge in hands is held at both ends, and goes on being held where no pair holds it', () => {
    const up = atWork(after(through((act) => act.type === 'place' && act.member === 'ridge')));
    const ends = [up.lead, up.helper].map(({ works }) => works?.[0] ?? 0);
    expect(Math.abs((ends[0] ?? 0) - (ends[1] ?? 0))).toBeGreaterThan(hut.plan.length * 0.7);
    const { lead, helper } = atWork(after(tacked('heel:rafter.street.1')));
    const [nailing, holding] = lead.doing === 'nail' ? [lead, helper] : [helper, lead];
    expect(nailing.tool).toBe('hammer');
    expect(holding.doing).toBe('steady');
    expect(holding.works?.[0]).toBeGreaterThan(hut.plan.length * 0.8);
  });

  test('later the lead nails at the ridge and the helper at the heel, each where the rafter is', () => {
    const ridge = atWork(after(tacked('ridge:rafter.street.4')));
    expect([ridge.lead.doing, ridge.helper.doing]).toEqual(['nail', 'steady']);
    const heel = atWork(after(tacked('heel:rafter.street.4')));
    expect([heel.lead.doing, heel.helper.doing]).toEqual(['steady', 'nail']);
    expect(ridge.lead.works?.[2]).toBeGreaterThan((heel.helper.works?.[2] ?? 0) + 30);
  });

  test('full count is nailed with the nailer, nails are drawn with the puller', () => {
    const nailed = through((act) => act.type === 'nailOff');
    const last = nailed.at(-1);
    if (last?.type !== 'nailOff') throw new Error('unreachable');
    const tool = ({ lead, helper }: CrewAtWork) => lead.tool ?? helper.tool;
    expect(tool(atWork(after(nailed)))).toBe('nailer');
    expect(tool(atWork(after([...nailed, { type: 'draw', joint: last.joint, nails: 1 }])))).toBe('puller');
  });

  test.each(['clear', 'beside', 'platform', 'ladder'] as const)(
    'who is told to stand %s stands there',
    (where: Spot) => {
      const told = [...tacked('ridge:rafter.street.4'), { type: 'stand', who: 'helper', where } as const];
      expect(atWork(after(told)).helper.where).toEqual({ on: 'spot', spot: where });
    },
  );

  test('an undo brings them down', () => {
    const done = tacked('ridge:rafter.street.4');
    const back = after([...done, { type: 'undo', step: done.length - 1 }]);
    expect(atWork(back).lead.doing).not.toBe('nail');
  });
});

describe('at the machine', () => {
  const boathouse = levelOf('boathouse');
  const hung = play(boathouse, 'expert', { seed, mode: 'own', wanted: { hang: 'machine' } }).steps.map(
    ({ action }) => action,
  );
  const lifted = hung.slice(0, 1 + hung.findIndex((act) => act.type === 'place' && act.member === 'ridge'));

  test.each(['hoist', 'lower', 'stop'] as const)(
    'the lead gives the sign to %s, the helper has the tag line',
    (sign) => {
      const { lead, helper } = atWork(
        after([...lifted, { type: 'signal', sign, by: sign === 'stop' ? 0 : 0.25 }], boathouse),
      );
      expect([lead.doing, lead.sign]).toEqual(['signal', sign]);
      expect(helper.doing).toBe('guide');
    },
  );
});

describe('the last act that stands', () => {
  test('skips what was refused and what was taken back', () => {
    const [one, two] = [acts[0], acts[1]] as [Action, Action];
    const run = after([one, two]);
    expect(lastActOf(run)).toEqual(two);
    const refused = take(run, { type: 'letGo' });
    expect(refused.steps.at(-1)?.outcome.ok).toBe(false);
    expect(lastActOf(refused)).toEqual(two);
    expect(
      lastActOf({ steps: run.steps.map((step, i) => (i === 1 ? { ...step, undone: true } : step)) }),
    ).toEqual(one);
  });

  test('of a job carried on is its last station', () => {
    const carried = through((act) => act.type === 'carryOn');
    expect(lastActOf(after(carried))).toEqual({ type: 'setTie', kind: 'joist', station: 9 });
  });

  test('what was said moves nobody, another place does', () => {
    const read = { type: 'read', tool: 'tape', at: 'width.A', said: 144 } as const;
    expect(sameWork(read, { ...read, said: 143 })).toBe(true);
    expect(sameWork(read, { ...read, at: 'width.B' })).toBe(false);
  });
});
