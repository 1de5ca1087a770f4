import { describe, expect, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import type { HandName } from '../../src/core/hands/hand';
import { replay } from '../../src/core/hands/opened';
import { judgeOrder } from '../../src/core/order/judged';
import { checksOf } from '../../src/core/score/checked';
import { scoreOf } from '../../src/core/score/scored';
import type { Attempt } from '../../src/core/site/attempt';
import { afterWork, marksOf, mostTold } from '../../src/present/afterWork';
import { deedText } from '../../src/present/deed';
import { framesOf, stripOf } from '../../src/present/strip';
import { catalogues } from '../../src/present/words/messages';
import { levelOf } from '../site/levels';

const jobs = ['garden-hut', 'pump-house'] as const;
const played = new Map<string, Attempt>();
const run = (hand: HandName, job: (typeof jobs)[number]): Attempt => {
  const key = `${hand} ${job}`;
  const attempt = played.get(key) ?? play(levelOf(job), hand, { seed: 11, mode: 'own' });
  played.set(key, attempt);
  return attempt;
};
const some: readonly HandName[] = [
  'expert',
  'competent',
  'naive-order',
  'takes-any',
  'refuses-all',
  'unsafe',
  'careless-fit',
  'quits',
  'beginner',
  'random',
  'idle',
];
const runs = some.flatMap((hand) => jobs.map((job) => [hand, job] as const));

const told = (attempt: Attempt) => {
  const { findings } = scoreOf(attempt);
  return { findings, talk: afterWork(attempt, findings) };
};

const firstActs = (attempt: Attempt, n: number): Attempt =>
  replay(
    attempt,
    attempt.steps.slice(attempt.found?.steps ?? 0, n).map(({ action }) => action),
  );

describe.each(runs)('the talk after a run of the hand %s at the %s', (hand, job) => {
  const attempt = run(hand, job);
  const { findings, talk } = told(attempt);
  const begun = attempt.found?.steps ?? 0;

  it('is about three things at most, each once, the dangers first and then the dearest', () => {
    expect(talk.costly.length).toBeLessThanOrEqual(mostTold);
    const keys = talk.costly.map(({ finding: { kind, code, at } }) =>
      kind === 'safety' ? `${code} ${at ?? ''}` : `${kind} ${code}`,
    );
    expect(new Set(keys).size).toBe(keys.length);
    const rank = talk.costly.map(({ finding }) => (finding.kind === 'safety' ? 1e6 : 0) + finding.minutes);
    expect(rank).toEqual([...rank].sort((a, b) => b - a));
  });

  it('leaves out nothing dearer than what it tells, and counts the same mistake together', () => {
    const sums = new Map<string, number>();
    for (const { kind, code, minutes } of findings)
      if (kind !== 'good' && kind !== 'safety' && !(attempt.site.down !== undefined && kind === 'state'))
        sums.set(`${kind} ${code}`, (sums.get(`${kind} ${code}`) ?? 0) + minutes);
    const plain = talk.costly.filter(({ finding }) => finding.kind !== 'safety');
    expect(plain.map(({ finding }) => finding.minutes)).toEqual(
      [...sums.values()].sort((a, b) => b - a).slice(0, plain.length),
    );
  });

  it('goes back to moments of the learner’s own run, and has words for each', () => {
    for (const { step } of [...talk.costly, ...(talk.good ? [talk.good] : [])]) {
      if (step === undefined) continue;
      expect(step).toBeGreaterThanOrEqual(begun);
      expect(step).toBeLessThan(attempt.steps.length);
      for (const words of Object.values(catalogues)) {
        const said = deedText(words, attempt.steps[step] as Attempt['steps'][number], 'feet');
        expect(said).not.toMatch(/undefined|^\W*$/);
      }
    }
  });

  it('praises what truly happened, and nothing that it blames', () => {
    const { good } = talk;
    if (!good) return;
    const { code } = good.finding;
    const checks = checksOf(attempt).filter(({ rule }) => rule === code);
    const verdicts = judgeOrder(attempt).filter(({ rule }) => rule === code);
    expect(checks.length + verdicts.length).toBeGreaterThan(0);
    expect(checks.every(({ credit }) => credit === 1)).toBe(true);
    expect(verdicts.every(({ lost }) => lost === 0)).toBe(true);
    expect(talk.costly.map(({ finding }) => finding.code)).not.toContain(code);
    if (good.step !== undefined) expect(attempt.steps[good.step]?.outcome.ok).toBe(true);
  });

  it('shows on the strip every state and every told moment, in the order they came', () => {
    const marks = marksOf(attempt, talk);
    const shots = stripOf(attempt);
    const frames = framesOf(
      attempt,
      marks.map(({ shows }) => shows),
    );
    const steps = frames.map((frame) => frame.steps);
    for (const { shows } of marks) expect(steps).toContain(shows);
    for (const shot of shots) expect(steps).toContain(shot.steps);
    expect(steps).toEqual([...new Set(steps)].sort((a, b) => a - b));
    expect([steps[0], steps.at(-1)]).toEqual([shots[0]?.steps, attempt.steps.length]);
    frames.forEach((frame, i) => {
      if (i > 0) expect(frame.at).toBeGreaterThan((frames[i - 1] as typeof frame).at);
    });
    expect(frames.at(-1)?.at).toBe(shots.length - 1);
  });

  it('outlines something that stands in the picture of its moment', () => {
    const marks = marksOf(attempt, talk);
    const frames = framesOf(
      attempt,
      marks.map(({ shows }) => shows),
    );
    for (const { told: one, shows } of marks) {
      const site = frames.find(({ steps }) => steps === shows)?.site;
      const { member, finding } = one;
      if (!site || member === undefined || finding.kind === 'safety' || finding.kind === 'state') continue;
      expect(member === 'ridge' ? site.ridge : site.members[member as 'ridge'], member).toBeDefined();
    }
  });
});

describe('a state on the strip', () => {
  it('is what the first acts make, also where something was taken back later', () => {
    const done = run('expert', 'garden-hut');
    const put = done.steps.findIndex(({ action }) => action.type === 'place');
    const acts = done.steps.slice(0, put + 40).map(({ action }) => action);
    const back = replay(done, [...acts, { type: 'undo', step: put }]);
    const frames = framesOf(back, [put + 1, put + 3]);
    expect(frames.find(({ steps }) => steps === put + 1)?.site).toBeUndefined();
    const known = frames.filter(({ site }) => site !== undefined);
    expect(known.length).toBeGreaterThan(2);
    for (const { steps, site } of known) expect(site).toEqual(firstActs(back, steps).site);
  });
});
