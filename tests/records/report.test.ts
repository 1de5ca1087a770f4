import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { modes } from '../../src/core/level/mode';
import { anchorOf, anchors, competencies } from '../../src/records/anchors';
import { isAlone, type Marked, type Told } from '../../src/records/marked';
import { counts, reportOf, type Entry } from '../../src/records/report';
import { leastRuns, trendOf } from '../../src/records/trend';

/** Sums of a class follow from the runs that hold, and from nothing else. */

const share = fc.integer({ min: 0, max: 100 }).map((hundredths) => hundredths / 100);
const codes = fc.uniqueArray(fc.constantFrom('O1', 'O5', 'C2', 'S3', 'cameDown'));
const told: fc.Arbitrary<Told> = fc
  .record({
    total: fc.integer({ min: 0, max: 100 }),
    parts: fc.record({ order: share, checks: share, fit: share, eye: share }, { requiredKeys: ['checks'] }),
    done: fc.constantFrom(1, 0.99, 0.5),
    planted: fc.constantFrom(0, 4),
    broken: codes,
    unchecked: codes,
    missed: fc.array(fc.constantFrom('bow', 'twist')),
  })
  .map((some) => ({ pass: false, sound: true, minutes: 1, ...some }));

const marked: fc.Arbitrary<Marked> = fc
  .record({
    learner: fc.constantFrom('A1', 'B2', '', 'Z9'),
    mode: fc.constantFrom(...modes),
    holds: fc.constantFrom(true, false, 'otherRules' as const),
    told,
    acts: fc.constantFrom('a', 'b', 'c'),
  })
  .map((some) => ({ digest: '', level: 'hut', seed: 1, ...some }));

const entries = fc
  .array(marked, { maxLength: 20 })
  .map((all) => all.map((one, i): Entry => ({ key: String(i), file: `f${i}`, when: i % 3, marked: one })));

const known = { errorOn: () => 5, normOn: () => ({ checks: { mean: 0.8, sd: 0.1 } }) };

describe('a report', () => {
  it('has every run once, its learners in the order of their codes', () => {
    fc.assert(
      fc.property(entries, (all) => {
        const { learners } = reportOf(all, known);
        const shown = learners.map(({ code }) => code);
        expect(shown).toEqual([...new Set(shown)].sort());
        expect(learners.flatMap((row) => row.entries.map(({ key }) => key)).sort()).toEqual(
          all.map(({ key }) => key).sort(),
        );
      }),
    );
  });

  it('does not change with the order in which files came', () => {
    fc.assert(
      fc.property(entries, (all) => {
        expect(reportOf([...all].reverse(), known)).toEqual(reportOf(all, known));
      }),
    );
  });

  it('sums up nothing that does not hold or was only watched', () => {
    fc.assert(
      fc.property(entries, (all) => {
        const only = all.filter(counts);
        const { learners: _own, ...sums } = reportOf(all, known);
        const { broken } = sums;
        expect(sums).toEqual((({ learners: _, ...rest }) => rest)(reportOf(only, known)));
        for (const { code, runs } of broken)
          expect(runs).toBe(only.filter(({ marked: { told: t } }) => t?.broken.includes(code)).length);
        for (const { marked: one } of only) expect([one.holds, one.mode !== 'watch']).toEqual([true, true]);
      }),
    );
  });
});

it('names learners whose runs are the same to the last act, and nobody else', () => {
  fc.assert(
    fc.property(entries, (all) => {
      const named = reportOf(all, known).twins.flatMap(({ codes: some }) => some);
      const held = all.filter(counts).map(({ marked: one }) => one);
      for (const code of ['A1', 'B2', '', 'Z9'])
        expect(named.includes(code)).toBe(
          held.some(
            (one) =>
              one.learner === code && held.some((other) => other.learner !== code && other.acts === one.acts),
          ),
        );
    }),
  );
});

describe('a trend', () => {
  const turn = (total: number) => ({ total, error: 5 });
  it('needs four runs and the error of each', () => {
    expect(trendOf([1, 2, 3].map(turn))).toBeUndefined();
    expect(trendOf([turn(1), turn(2), turn(3), { total: 4, error: undefined }])).toBeUndefined();
    expect(trendOf([1, 2, 3, 4].map(turn))).toBeDefined();
  });

  it('turns over with the order of the runs, and says nothing inside its band', () => {
    const totals = fc.array(fc.integer({ min: 0, max: 100 }), { minLength: leastRuns, maxLength: 9 });
    fc.assert(
      fc.property(totals, (all) => {
        const there = trendOf(all.map(turn))!;
        const back = trendOf([...all].reverse().map(turn))!;
        expect(back.change).toBeCloseTo(-there.change);
        expect(there.says === 'unclear').toBe(Math.abs(there.change) <= there.band);
        if (there.says !== 'unclear') expect(there.says).toBe(there.change > 0 ? 'better' : 'worse');
      }),
    );
  });

  it('has the band of the difference of two means', () => {
    // Two runs of error 5 in each half: sqrt(4 · 25) / 2.
    expect(trendOf([50, 50, 70, 70].map(turn))).toEqual({ change: 20, band: 5, says: 'better' });
  });
});

describe('an anchor', () => {
  it('never falls when one more run is handed in', () => {
    fc.assert(
      fc.property(fc.array(marked, { maxLength: 6 }), marked, (some, more) => {
        for (const line of competencies)
          expect(anchors.indexOf(anchorOf(line, [...some, more]))).toBeGreaterThanOrEqual(
            anchors.indexOf(anchorOf(line, some)),
          );
      }),
    );
  });

  it('is reached alone only by who had no help, and catching only by who missed nothing that was there', () => {
    fc.assert(
      fc.property(marked, (one) => {
        for (const line of competencies) {
          const anchor = anchorOf(line, [one]);
          if (one.holds !== true) expect(anchor).toBe('notShown');
          if (anchor === 'withHelp') expect(isAlone(one.mode)).toBe(false);
          if (anchor === 'alone' || anchor === 'aloneCatching') expect(isAlone(one.mode)).toBe(true);
          if (anchor === 'aloneCatching')
            expect([one.told?.missed.length, (one.told?.planted ?? 0) > 0]).toEqual([0, true]);
        }
      }),
    );
  });

  it('of safety is not shown by who was in danger', () => {
    const base: Told = {
      total: 90,
      pass: false,
      sound: true,
      minutes: 1,
      parts: { checks: 1 },
      done: 1,
      planted: 4,
      broken: [],
      unchecked: [],
      missed: [],
    };
    const run = (part: Partial<Told>): Marked => ({
      digest: '',
      acts: '',
      level: 'hut',
      seed: 1,
      mode: 'own',
      holds: true,
      told: { ...base, ...part },
    });
    expect(anchorOf('safety', [run({})])).toBe('aloneCatching');
    expect(anchorOf('safety', [run({ missed: ['bow'] })])).toBe('alone');
    expect(anchorOf('safety', [run({ broken: ['S3'] })])).toBe('notShown');
    expect(anchorOf('safety', [run({ broken: ['cameDown'] })])).toBe('notShown');
  });
});
