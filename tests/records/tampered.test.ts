import fc from 'fast-check';
import { expect, it } from 'vitest';
import { seedFor, type Assignment } from '../../src/content/assignment';
import { attemptFile, attemptText, type AttemptFile } from '../../src/content/attemptFile';
import { digestOf } from '../../src/content/canonical';
import { play } from '../../src/core/hands/play';
import { replay } from '../../src/core/hands/opened';
import { modes } from '../../src/core/level/mode';
import { scoreOf } from '../../src/core/score/scored';
import type { Action } from '../../src/core/site/action';
import { complaintLine } from '../../src/present/words/refusalMessages';
import { markText, partNames, type Marked } from '../../src/records/marked';
import { levelOf } from '../site/levels';

/**
 * Whatever somebody does to a file of a run, sealing it anew included, it holds only with the claim that a replay of its own
 * acts gives, and then it is told as the run these acts are. TAMPERED=1000 asks for that many files.
 */

const level = levelOf('pump-house');
const assignment: Assignment = { id: 'week3', levels: [level.id], mode: 'own' };
const shelf = { levels: [level], assignments: [assignment] };

const honest = (['expert', 'competent', 'skips-checks', 'naive-order'] as const).map(
  (hand, i): AttemptFile => {
    const learner = `R${i}`;
    const run = play(level, hand, { seed: seedFor(assignment, level.id, learner), mode: 'own' });
    return attemptFile(run, scoreOf(run), { assignment: assignment.id, learner });
  },
);

const sealed = (file: AttemptFile): string => {
  const { digest: _digest, ...rest } = file;
  return attemptText({ ...rest, digest: digestOf(rest) });
};

/** The claim that the product's own replay gives. */
const claimedAnew = (file: AttemptFile): AttemptFile => {
  const run = replay({ level, seed: file.seed, mode: file.mode }, file.actions);
  const { total, parts } = scoreOf(run);
  return { ...file, claimed: { total, parts } };
};

const file = fc.constantFrom(...honest);
const share = fc.double({ min: 0, max: 0.99, noNaN: true });

/** A number somewhere in an act, made another. */
const bent = (action: Action, by: number): Action =>
  Object.fromEntries(
    Object.entries(action).map(([key, value]) => [key, typeof value === 'number' ? value + by : value]),
  ) as Action;

const changedActs = fc
  .tuple(file, fc.constantFrom('drop', 'swap', 'twice', 'bend', 'cut', 'splice'), share, share)
  .map(([one, how, a, b]): AttemptFile => {
    const acts = [...one.actions];
    const at = Math.floor(a * (acts.length - 1));
    const [act, next] = [acts[at] as Action, acts[at + 1] as Action];
    if (how === 'drop') acts.splice(at, 1);
    if (how === 'swap') acts.splice(at, 2, next, act);
    if (how === 'twice') acts.splice(at, 0, act);
    if (how === 'bend') acts.splice(at, 1, bent(act, b < 0.5 ? 1 : 0.0625));
    if (how === 'cut') acts.splice(at);
    const other = honest[Math.floor(b * 3.99)] as AttemptFile;
    if (how === 'splice') acts.splice(at, Infinity, ...other.actions.slice(at));
    return { ...one, actions: acts };
  });

const changedHead = fc
  .tuple(file, fc.nat({ max: 3 }), fc.constantFrom(...modes))
  .map(([one, which, mode]) => {
    const other = honest[which] as AttemptFile;
    return { ...one, learner: other.learner, seed: other.seed, mode } as AttemptFile;
  });

const changedClaim = fc.tuple(file, share).map(([one, by]): AttemptFile => {
  const { total, parts } = one.claimed;
  const better = { ...parts, checks: Math.min(1, (parts.checks ?? 0) + by) };
  return { ...one, claimed: by < 0.5 ? { total: total + by, parts } : { total, parts: better } };
});

const sealedAnew = fc
  .tuple(fc.oneof(changedActs, changedActs, changedHead, changedClaim), fc.boolean())
  .map(([one, honestly]) => sealed(honestly ? claimedAnew(one) : one));

const byHand = fc
  .tuple(file.map(attemptText), share, share, fc.string({ maxLength: 9 }))
  .map(([text, a, b, put]) => {
    const [from, to] = [Math.floor(a * text.length), Math.floor(b * text.length)];
    return text.slice(0, from) + put + text.slice(a < b ? to : from + 1);
  });

const tampered = fc.oneof({ weight: 3, arbitrary: sealedAnew }, { weight: 1, arbitrary: byHand });

it('holds only as the run that its own acts are', () => {
  const numRuns = Number(process.env['TAMPERED'] ?? 150);
  const asOthers: Marked[] = [];
  let refused = 0;
  fc.assert(
    fc.property(tampered, (text) => {
      const outcome = markText(shelf, text);
      if (!outcome.ok) {
        refused++;
        expect(complaintLine('r.json', outcome.complaint)).toMatch(/^r\.json: \S+: .+ \(.+\)$/);
        return;
      }
      const { marked } = outcome;
      if (marked.holds !== true) return;
      const given = JSON.parse(text) as AttemptFile;
      const { claimed } = claimedAnew(given);
      // A claim may differ in how its numbers were written down: by less than a billionth.
      expect(given.claimed.total).toBeCloseTo(claimed.total, 8);
      for (const part of partNames)
        expect(given.claimed.parts[part] ?? -1).toBeCloseTo(claimed.parts[part] ?? -1, 8);
      expect(marked.told).toMatchObject({ total: claimed.total, parts: claimed.parts });
      expect(marked.seed).toBe(seedFor(assignment, level.id, marked.learner ?? ''));
      expect(marked.acts).toBe(digestOf(given.actions));
      if (!honest.some(({ actions }) => digestOf(actions) === marked.acts)) asOthers.push(marked);
    }),
    { numRuns, seed: 20261128 },
  );
  // Some were sealed with what their acts really come to, and are told as those; some were not even read.
  expect(asOthers.length).toBeGreaterThan(numRuns / 20);
  expect(refused).toBeGreaterThan(numRuns / 20);
  if (process.env['TAMPERED']) console.log({ numRuns, refused, heldAsAnother: asOthers.length });
});
