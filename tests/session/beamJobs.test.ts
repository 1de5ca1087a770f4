import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import type { HandName } from '../../src/core/hands/hand';
import { modesOf } from '../../src/core/level/level';
import { scoreOf, toStandard } from '../../src/core/score/scored';
import { levelOf } from '../../src/session/ownJobs';
import { parOf, type Par } from '../../src/session/provedJob';
import { beamFile, jobOn, smallBeam } from '../site/beams';

/** A crew's own roof becomes a job once the expert hand has framed it. */

const patience = 300_000;
const gableFile = JSON.parse(readFileSync('levels/examples/gable.json', 'utf8')) as object;
const quiet = (): void => undefined;

const proved = (file: unknown): Par => {
  const par = parOf(file, quiet);
  if (!par.ok) throw new Error(JSON.stringify(par.complaints));
  return par.value;
};

describe('an own roof', { timeout: patience }, () => {
  it.each([
    ['a plain gable', gableFile, ['hand', 'posts']],
    ['a gable on a ridge beam', beamFile, ['posts']],
    ['one with a machine', { ...smallBeam, site: { machine: true } }, ['machine', 'posts']],
  ] as const)('%s is a job in every way of hanging that is offered', (_, file, ways) => {
    const par = proved(file);
    expect(Object.keys(par).sort()).toEqual([...ways]);
    const level = levelOf({ file, par });
    expect([...(level?.methods.hang ?? [])].sort()).toEqual([...ways]);
    expect(level && modesOf(level)).not.toContain('check-off');
  });

  it('of another kind is figured only', () => {
    for (const name of ['hip', 'gable-wing', 'gable-standing', 'stepped-on-posts']) {
      const file: unknown = JSON.parse(readFileSync(`levels/examples/${name}.json`, 'utf8'));
      expect(parOf(file, quiet).ok, name).toBe(false);
    }
  });
});

const run = (hand: HandName, seed: number, hang: 'posts' | 'machine') =>
  play(level, hand, { seed, mode: 'own', wanted: { hang } });
const level = jobOn({ ...smallBeam, site: { machine: true } });
const ways = ['posts', 'machine'] as const;

describe('hands on a ridge beam', { timeout: patience }, () => {
  it.each(ways)('by %s the expert frames it on every site, in order and without danger', (hang) => {
    for (let seed = 1; seed <= 10; seed++) {
      const attempt = run('expert', seed, hang);
      const score = scoreOf(attempt);
      const wrong = score.findings.filter(({ kind }) => kind === 'order' || kind === 'safety');
      expect(wrong, `${seed}`).toEqual([]);
      expect([attempt.site.handedOver, toStandard(score)], `${seed}`).toEqual([true, true]);
    }
  });

  it.each(ways)('by %s beginners and random hands run it, and nobody of them frames it', (hang) => {
    for (const hand of ['beginner', 'random'] as const)
      for (let seed = 1; seed <= 3; seed++) {
        const attempt = run(hand, seed, hang);
        expect(attempt.steps.length, `${hand} ${seed}`).toBeGreaterThan(50);
        expect(toStandard(scoreOf(attempt)), `${hand} ${seed}`).toBe(false);
      }
  });
});
