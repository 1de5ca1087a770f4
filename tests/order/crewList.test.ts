import { describe, expect, it } from 'vitest';
import { crewList } from '../../src/core/order/crew/crewList';
import { nextSteps } from '../../src/core/order/crew/planner';
import { viewOf } from '../../src/core/order/crew/view';
import { orderRules } from '../../src/core/order/rules';
import { ruleIds } from '../../src/core/order/stateRules';
import { begin, take } from '../../src/core/site/take';
import { jobOn, smallBeam } from '../site/beams';
import { levelOf, trueLevel } from '../site/levels';
import { cleanActs, told, type } from './story';
import { smallShed } from '../site/sheds';

const hut = trueLevel('garden-hut');
const clean = cleanActs(hut);
const upTo = (which: ReturnType<typeof type>) => told(hut, clean.slice(0, clean.findIndex(which)));
const stateOf = (attempt: ReturnType<typeof told>, code: string): readonly string[] =>
  crewList(attempt)
    .filter((row) => row.code === code)
    .map(({ state }) => state);

describe('the crew list', () => {
  it('begins with work on the ground and keeps the ridge for later', () => {
    const attempt = begin(hut, 1, 'list');
    const now = crewList(attempt)
      .filter(({ state }) => state === 'now')
      .map(({ code }) => code);
    expect(now).toEqual([
      'agree',
      'braceWalls',
      'proveWalls',
      'lookOver',
      'settleRidge',
      'tieWalls',
      'layOut',
      'makeReady',
    ]);
    expect(stateOf(attempt, 'landRidge')).toEqual(['later']);
  });

  it('says what a later job waits for, and which rule wants it so', () => {
    const ridge = crewList(begin(hut, 1, 'list')).find(({ code }) => code === 'landRidge');
    expect(ridge?.waitsFor).toContainEqual({ on: 'braceWalls', why: 'O1' });
    expect(ridge?.waitsFor).toContainEqual({ on: 'proveWalls', why: 'C1' });
  });

  it('opens the ridge once everything it waits for is done', () => {
    expect(stateOf(upTo(type('place', /"ridge"/)), 'landRidge')).toEqual(['now']);
  });

  it('stacks one side at a time when the crew chose so', () => {
    const half = upTo(type('place', /rafter\.(street|yard)\.4"/));
    expect([...stateOf(half, 'stack')].sort()).toEqual(['later', 'now']);
  });

  it('is done from top to bottom after a clean run', () => {
    expect(crewList(told(hut, clean)).filter(({ state }) => state !== 'done')).toEqual([]);
  });

  it('knows a point of no return for every order rule that a level can ask, and names only rules there are', () => {
    const rows = [hut, levelOf('ferry-shelter'), jobOn(smallBeam), smallShed].flatMap((level) =>
      crewList(begin(level, 1, 'list')),
    );
    const closed = new Set(rows.flatMap(({ closes }) => closes));
    for (const { id } of orderRules) expect(closed, id).toContain(id);
    for (const { serves, closes } of rows)
      for (const id of [...serves, ...closes]) expect(ruleIds).toContain(id);
  });
});

describe('the next steps', () => {
  it('can be done, all of them, at every moment of a clean run', () => {
    let attempt = begin(hut, 1, 'list');
    clean.forEach((act, i) => {
      if (i % 12 === 0)
        for (const { action } of nextSteps(attempt)) {
          const { seen } = viewOf(attempt);
          if (action.type !== 'read') expect(seen.would(action).ok, JSON.stringify(action)).toBe(true);
          else expect(seen.look(action)).toBeDefined();
        }
      attempt = take(attempt, act);
    });
    expect(nextSteps(attempt)).toEqual([]);
  });

  it('never say what a tool would show', () => {
    for (const { action } of nextSteps(begin(hut, 1, 'list'))) expect(action).not.toHaveProperty('said');
  });

  it('tack a rafter that is held by hand before anything else', () => {
    const held = upTo(type('tack', /"ridge:rafter\.(street|yard)\.1"/));
    const steps = nextSteps(held);
    expect(steps.length).toBeGreaterThan(0);
    expect(steps.every(({ action }) => action.type === 'tack')).toBe(true);
  });

  it('do not change when an attempt that went on elsewhere was looked at in between', () => {
    const early = upTo(type('place', /"ridge"/));
    const before = JSON.stringify(nextSteps(early));
    nextSteps(told(hut, clean));
    nextSteps(take(early, { type: 'takeOut', member: 'post.1' }));
    expect(JSON.stringify(nextSteps(early))).toBe(before);
  });
});
