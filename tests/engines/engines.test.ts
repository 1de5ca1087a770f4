import { getQuickJS } from 'quickjs-emscripten';
import { describe, expect, it } from 'vitest';
import { bundled, encoder, runs, story } from './runs';
import { tellRun } from './story';

/** The same acts give the same bits in an engine that shares nothing with this one: a small interpreter written in C. */

describe('an engine of another make', () => {
  it('tells ten runs to the same digest', { timeout: 300_000 }, async () => {
    expect(runs).toHaveLength(10);
    const engine = (await getQuickJS()).newContext();
    engine.unwrapResult(engine.evalCode(encoder)).dispose();
    engine.unwrapResult(engine.evalCode(await bundled())).dispose();
    let rests = 0;
    for (const run of runs) {
      const [level, seed, acts] = story(run);
      const call = `tellRun(${JSON.stringify(level)}, ${seed}, ${JSON.stringify(acts)})`;
      const told = engine.unwrapResult(engine.evalCode(call));
      const here = tellRun(level, seed, acts);
      expect(engine.getString(told), `${run.hand} on the ${run.id}`).toBe(here);
      rests += Number(here.split(' ')[2]);
      told.dispose();
    }
    // The frame was at work in them: joints were fastened.
    expect(rests).toBeGreaterThan(50);
    engine.dispose();
  });
});
