import { describe, expect, it } from 'vitest';
import { ownJob } from '../../src/content/ownJob';
import { troubles } from '../../src/content/roofSchemaParts';
import { play } from '../../src/core/hands/play';
import { ridgeTruth } from '../../src/core/level/asFound';
import type { Level } from '../../src/core/level/level';
import { lookedAt } from '../../src/core/score/eye';
import { scoreOf, toStandard } from '../../src/core/score/scored';
import type { Attempt } from '../../src/core/site/attempt';

/** Jobs on own roofs with what likely goes wrong there: the expert frames each to standard and meets what was planted. */

const gable = {
  format: 'tack-and-true/roof@1',
  kind: 'gable',
  overhang: 14,
  spacing: 24,
  plate: { width: 5.5 },
  seat: 3.5,
};
const hut = {
  ...gable,
  slope: { rise: 8, run: 12 },
  span: "10'",
  length: "12'",
  rafter: { thickness: 1.5, depth: 5.5 },
  ridge: { thickness: 1.5, depth: 7.25 },
};
const wide = {
  ...gable,
  slope: { rise: 4, run: 12 },
  span: "30'",
  length: "14'",
  rafter: { thickness: 1.5, depth: 7.25 },
  ridge: { thickness: 1.5, depth: 9.25 },
};
/** Its ridge sags so far between two props that its ends stand up. */
const long = {
  ...gable,
  slope: { rise: 10, run: 12 },
  span: "14'",
  length: "40'",
  rafter: { thickness: 1.5, depth: 5.5 },
  ridge: { thickness: 3.5, depth: 9.25 },
};
const beam = {
  ...hut,
  slope: { rise: 6, run: 12 },
  span: "16'",
  length: "20'",
  ridge: { thickness: 3.5, depth: 9.25 },
  joists: false,
  collars: false,
  posts: { at: [1.75, "10'", 238.25], below: 97 },
};

type Trouble = (typeof troubles)[number];
type Hang = 'hand' | 'posts';

const jobOn = (roof: object, trouble: Trouble): Level => {
  const job = ownJob({ ...roof, site: { trouble } });
  if (!job.ok) throw new Error(JSON.stringify(job.complaints));
  return job.value;
};

const framed = (level: Level, seed: number, hang: Hang): Attempt => {
  const attempt = play(level, 'expert', { seed, mode: 'own', wanted: { hang } });
  const par = { [hang]: Math.round(attempt.site.minutes) };
  const { total, parts, findings } = scoreOf({ ...attempt, level: { ...level, par } });
  const said = JSON.stringify({ total, parts, findings: findings.slice(0, 4) });
  expect(attempt.site.handedOver, said).toBe(true);
  expect(toStandard(scoreOf({ ...attempt, level: { ...level, par } })), said).toBe(true);
  return attempt;
};

/** What was planted and not called by its name. A steep cut shows when its rafter hangs: not on a board that was spare. */
const unmet = (attempt: Attempt): readonly string[] => {
  const used = new Set(
    attempt.steps.flatMap(({ action }) =>
      'board' in action && action.board ? [action.board as string] : [],
    ),
  );
  return lookedAt(attempt)
    .filter(({ fault, right }) => fault !== undefined && !right)
    .filter(({ subject, fault }) => fault?.fault !== 'plumbCutSteep' || used.has(subject))
    .map(({ subject, fault }) => `${subject} ${fault?.fault}`);
};

/** A bow that a string tells: strung, and pushed. */
const bowMet = (attempt: Attempt): boolean =>
  Math.abs(ridgeTruth(attempt).bow) < 1 / 4 ||
  (attempt.site.readings.some(({ tool, at }) => tool === 'string' && at === 'ridge.straight') &&
    attempt.steps.some(({ action }) => action.type === 'shift' && action.at === 'mid'));

const met = (roof: object, trouble: Trouble, [hang, seed]: readonly [Hang, number]): void => {
  const attempt = framed(jobOn(roof, trouble), seed, hang);
  expect(unmet(attempt)).toEqual([]);
  expect(bowMet(attempt)).toBe(true);
};

describe('an own roof', { timeout: 120_000 }, () => {
  it.each(troubles)('with %s as its trouble is framed to standard, small or on a beam', (trouble) => {
    met(hut, trouble, ['hand', 1]);
    met(beam, trouble, ['posts', 1]);
  });

  it.each([3, 6])('that is short has its bowed ridge strung and pushed, seed %i', (seed) => {
    met(hut, 'bowed', ['hand', seed]);
  });

  it.each([
    ['dried', 5],
    ['walls', 3],
  ] as const)('that is low and wide has an end that sinks taped again: %s', (trouble, seed) => {
    met(wide, trouble, ['hand', seed]);
  });

  it.each([
    ['dried', 1],
    ['bowed', 2],
  ] as const)('of 40 ft gets both ends of a sagging ridge to their height: %s', (trouble, seed) => {
    met(long, trouble, ['posts', seed]);
  });
});
