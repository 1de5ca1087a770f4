import { describe, expect, it } from 'vitest';
import { attemptFile } from '../../src/content/attemptFile';
import { siteDigest } from '../../src/content/canonical';
import { opened, replay } from '../../src/core/hands/opened';
import { play } from '../../src/core/hands/play';
import { nextSteps } from '../../src/core/order/crew/planner';
import { scoreOf } from '../../src/core/score/scored';
import { measuredOn } from '../../src/core/score/fit';
import { openItems } from '../../src/core/site/punch';
import { take, would } from '../../src/core/site/take';
import { levelOf } from '../site/levels';

/** A level that is part of a job: the crew came first, and others go on after. */

const drills = ['pump-house', 'seed-store', 'sail-loft', 'wood-store'].map((id) => levelOf(id));

describe.each(drills)('$id', (level) => {
  const start = opened(level, 3, 'own');

  it('begins on a site on which something was done, and all of it well', () => {
    expect(start.steps.length).toBeGreaterThan(20);
    expect(start.found?.steps).toBe(start.steps.length);
    expect(start.steps.every(({ outcome }) => outcome.ok)).toBe(true);
    expect(start.site.stops).toEqual([]);
    expect(start.site.down).toBeUndefined();
    expect(start.site.handedOver).toBe(false);
  });

  it('is found the same whenever it is opened on a seed, and not the same on another', () => {
    const again = opened(levelOf(level.id), 3, 'own');
    expect(siteDigest(again.site)).toBe(siteDigest(start.site));
    const other = opened(level, 4, 'own');
    expect(siteDigest(other.site)).not.toBe(siteDigest(start.site));
  });

  it('gives nothing for what the crew did', () => {
    const { total, done, parts, minutes, findings } = scoreOf(play(level, 'idle', { seed: 3 }));
    expect({ total, done, order: parts.order, eye: parts.eye }).toEqual({
      total: 0,
      done: 0,
      order: undefined,
      eye: undefined,
    });
    // Handing over, which is all it does.
    expect(minutes.used).toBe(2);
    expect(findings.filter(({ kind }) => kind === 'order' || kind === 'good')).toEqual([]);
    expect(measuredOn(start).filter(({ at }) => start.site.members[at as 'ridge'])).toEqual(
      measuredOn(start).filter(({ feature }) => feature === 'straight'),
    );
  });

  it('is handed over when its part is done, with nothing open, and all of it scored', () => {
    const run = play(level, 'expert', { seed: 3 });
    expect(run.site.handedOver).toBe(true);
    expect(openItems(run)).toEqual([]);
    const { done, total, sound } = scoreOf(run);
    expect({ done, sound }).toEqual({ done: 1, sound: true });
    expect(total).toBeGreaterThan(95);
  });

  it('lets nobody take back what the crew did', () => {
    expect(would(start, { type: 'undo', step: 0 })).toEqual({ ok: false, why: 'nothingToUndo' });
  });

  it('keeps only the acts of the learner, and comes out the same from them', () => {
    const run = play(level, 'competent', { seed: 3, mode: 'own' });
    const { actions } = attemptFile(run, scoreOf(run));
    expect(actions).toHaveLength(run.steps.length - start.steps.length);
    const told = replay({ level, seed: 3, mode: 'own' }, actions);
    expect(siteDigest(told.site)).toBe(siteDigest(run.site));
    expect(scoreOf(told)).toEqual(scoreOf(run));
  });

  it('takes back an own act and stands as it did before', () => {
    const first = nextSteps(start).find(({ action }) => action.type !== 'read')?.action;
    if (!first || first.type === 'read') throw new Error('nothing to do');
    const did = take(start, first);
    const back = take(did, { type: 'undo', step: start.steps.length });
    expect(did.site).not.toEqual(start.site);
    expect(back.site).toEqual(start.site);
  });
});

describe('a level about the whole job', () => {
  it('begins with nothing done', () => {
    const start = opened(levelOf('garden-hut'), 3, 'own');
    expect(start.steps).toEqual([]);
    expect(start.found).toBeUndefined();
  });
});
