import { describe, expect, it } from 'vitest';
import { tools } from '../../src/core/instruments/rows';
import type { ToolId } from '../../src/core/instruments/tool';
import { opened, replay } from '../../src/core/hands/opened';
import { play } from '../../src/core/hands/play';
import { shows } from '../../src/core/site/shows';
import { spotsFor } from '../../src/present/offers/spots';
import { toolset } from '../../src/present/offers/toolset';
import { catalogues } from '../../src/present/words/messages';
import { onScale, scaleSaid } from '../../src/present/words/scaleSaid';
import { readingHeard } from '../browser/listener';
import { levelOf } from '../site/levels';

/** Scales as they are told: a listener comes to the line an eye comes to, on every instrument, and is told no more. */

const en = catalogues.en;
const fine = Array.from({ length: 16 * 16 * 2 }, (_, i) => i / 256);

/** Where each tool is put: a place of its own, and each way it is held. */
const holds: Readonly<Record<ToolId, readonly (readonly [string, string?])[]>> = {
  eye: [['ridge.straight']],
  tape: [['ridge.A.height'], ['ridge.A.height', 'inch'], ['layout.yard.3', 'last']],
  rule: [['heel:rafter.yard.3']],
  level: [
    ['ridge', 'A'],
    ['ridge.short', 'B'],
  ],
  waterLevel: [['plate.street.A'], ['plate.yard.B']],
  string: [['plane.yard.3'], ['plate.yard.mid'], ['ridge.straight']],
  pattern: [['board.1'], ['board.1', 'tail']],
  square: [['board.1'], ['board.1', 'turned']],
  bob: [['ridge.A.plumb'], ['ridge.A.plumb', 'still']],
  straightedge: [['plane.yard.3']],
  storyPole: [['ridge.A.height'], ['ridge.A.height', 'plumb']],
};
const cases = (Object.keys(tools) as ToolId[]).flatMap((tool) =>
  holds[tool].map(([at, from]) => ({ tool, at, ...(from === undefined ? {} : { from }) })),
);
/** These show a gap or a length: it has no sign. */
const unsigned = /^(tape|rule)$/;

const { site } = opened(levelOf('garden-hut'), 3, 'own');

describe('a scale told in words', () => {
  it('says at most which two lines, and lets a listener come to the nearest', () => {
    for (const value of fine) {
      const heard = Number(readingHeard(`It lies ${onScale(en, value)} on the rule.`));
      expect(Math.abs(heard - value), `${value}`).toBeLessThanOrEqual(1 / 32);
    }
  });

  it('tells apart five places in a sixteenth, each way, and no more', () => {
    for (const lang of ['en', 'es'] as const) {
      const within = fine.slice(16, 33).map((value) => onScale(catalogues[lang], value));
      expect(new Set(within).size).toBe(7);
    }
  });

  it.each(cases)(
    '$tool at $at held $from is read alike by ear and by eye, whichever way it lies',
    (reading) => {
      const signs =
        unsigned.test(reading.tool) || (reading.at === 'plane.yard.3' && reading.tool === 'string')
          ? [1]
          : [1, -1];
      const { division } = reading.tool === 'eye' ? tools.eye : { division: 1 / 16 };
      for (const sign of signs)
        for (const size of fine.filter((value) => value % division === 0 || reading.tool !== 'eye')) {
          const shown = sign * size;
          const said = Number(readingHeard(scaleSaid(en, { site }, { reading, shown })));
          expect(Math.abs(said - shown), `${shown}`).toBeLessThanOrEqual(1 / 32);
        }
    },
  );

  it('is another text for another way or another hold, in both languages', () => {
    for (const lang of ['en', 'es'] as const) {
      const told = cases.flatMap((reading) =>
        (unsigned.test(reading.tool) ? [0.5] : [0.5, -0.5]).map((shown) =>
          scaleSaid(catalogues[lang], { site }, { reading, shown }),
        ),
      );
      // Held otherwise a pattern, a square and a level show the same things on the same scales.
      expect(new Set(told).size).toBeGreaterThanOrEqual(told.length - 14);
      expect(told.every((text) => text.endsWith('.') && !/undefined|NaN/.test(text))).toBe(true);
    }
  });

  it('tells every picture that a tool shows in the middle of a job', () => {
    const { steps, level, seed, mode } = play(levelOf('garden-hut'), 'expert', { seed: 7, mode: 'own' });
    const half = replay(
      { level, seed, mode },
      steps.slice(0, 190).map(({ action }) => action),
    );
    for (const { tool } of toolset)
      for (const { offers } of spotsFor(half, tool))
        for (const { reading } of offers) {
          const shown = reading && reading.at !== 'punch' ? shows(half, reading) : undefined;
          if (!reading || shown === undefined) continue;
          expect(scaleSaid(en, half, { reading, shown })).toMatch(/^[A-Z].*\.$/);
        }
  });

  it('tells each fault of a board otherwise, and a sound one without its name', () => {
    const looks = Object.keys(en.trade.seen) as (keyof typeof en.trade.seen)[];
    for (const lang of ['en', 'es'] as const) {
      const words = catalogues[lang];
      const told = looks.map((shown) =>
        scaleSaid(words, { site }, { reading: { tool: 'eye', at: 'board.1' }, shown }),
      );
      expect(new Set(told).size).toBe(looks.length);
      looks.forEach((look, i) => expect(told[i]).not.toContain(words.trade.seen[look]));
    }
  });
});
