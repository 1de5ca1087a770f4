import { describe, expect, it } from 'vitest';
import { opened } from '../../src/core/hands/opened';
import { crewStep } from '../../src/core/hands/crewStep';
import { scoreOf } from '../../src/core/score/scored';
import { isOver } from '../../src/core/site/state';
import { take } from '../../src/core/site/take';
import { courseFiles, loadLevel } from '../../src/tt/levelFiles';

/** All but the largest: it takes as long as the others together. */
const files = courseFiles().filter((file) => !file.endsWith('hay-barn.json'));
/** More steps than any of these jobs needs. */
const enough = 1000;
const patient = 60_000;

describe('the crew that is watched', { timeout: patient }, () => {
  it.each(files)('does %s from start to end with nothing to find fault with', (file) => {
    const level = loadLevel(file);
    if (!level.ok) throw new Error(file);
    let attempt = opened(level.value, 7, 'watch');
    for (let i = 0; i < enough && !isOver(attempt.site); i++) {
      const next = crewStep(attempt);
      if (!next) break;
      attempt = take(attempt, next.action);
    }
    expect(attempt.site.handedOver).toBe(true);
    const { findings, total, done } = scoreOf(attempt);
    expect(done).toBe(1);
    expect(total).toBeGreaterThan(95);
    expect(
      findings.filter(({ kind }) => ['order', 'safety', 'check', 'eye', 'state'].includes(kind)),
    ).toEqual([]);
    expect(attempt.steps.every(({ outcome }) => outcome.ok)).toBe(true);
  });
});
