import { describe, expect, it } from 'vitest';
import { ownJob } from '../../src/content/ownJob';
import { fileOf } from '../../src/content/draft/roofDraft';
import { sampleOf } from '../../src/content/draft/samples';
import { replay } from '../../src/core/hands/opened';
import { play } from '../../src/core/hands/play';
import { scoreOf, toStandard } from '../../src/core/score/scored';
import { parOf } from '../../src/session/provedJob';
import { levelOf } from '../../src/session/ownJobs';
import { shedFile } from '../site/sheds';

/** Sheds on a ledger played by crew hands: they show that formulas behave, and say nothing about people. */

const small = { span: "8'", length: "12'" };

describe('a shed of somebody’s own', () => {
  it.each(['none', 'grown', 'walls', 'dried', 'mixed'])(
    'is framed to standard by the expert on other seeds, trouble %s',
    (trouble) => {
      const file = shedFile({ ...small, 'site.trouble': trouble });
      const par = parOf(file, () => undefined);
      if (!par.ok) throw new Error(JSON.stringify(par.complaints));
      const level = levelOf({ file, par: par.value })!;
      for (const seed of [2, 3, 4, 5]) {
        const attempt = play(level, 'expert', { seed, mode: 'own' });
        expect(toStandard(scoreOf(attempt)), `seed ${seed}`).toBe(true);
        const again = replay(
          { level, seed, mode: 'own' },
          attempt.steps.map(({ action }) => action),
        );
        expect(scoreOf(again)).toEqual(scoreOf(attempt));
      }
    },
  );

  it('tells the hands apart: whoever checks and keeps the order does better', () => {
    const file = shedFile(small);
    const par = parOf(file, () => undefined);
    if (!par.ok) throw new Error('no par');
    const level = levelOf({ file, par: par.value })!;
    const mean = (hand: Parameters<typeof play>[1]): number => {
      const totals = [11, 12, 13].map((seed) => scoreOf(play(level, hand, { seed, mode: 'own' })).total);
      return totals.reduce((sum, one) => sum + one, 0) / totals.length;
    };
    const expert = mean('expert');
    expect(expert).toBeGreaterThan(90);
    for (const hand of ['skips-checks', 'naive-order', 'careless-fit', 'takes-any'] as const)
      expect(mean(hand), hand).toBeLessThan(expert - 10);
    expect(mean('idle')).toBe(0);
    expect(mean('random')).toBeLessThan(20);
  });

  it('is not offered on a high wall or between walls, where nobody nails a ledger', () => {
    for (const style of ['shedHigh', 'shedBetween'] as const) {
      const read = ownJob(fileOf(sampleOf(style)));
      expect(read.ok, style).toBe(false);
    }
  });

  it('takes no machine: a ledger is lifted by hand or onto props', () => {
    const read = ownJob(shedFile({ 'site.machine': 'yes' }));
    expect(read.ok && read.value.methods.hang).not.toContain('machine');
  });
});
