import { writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { Matrix, solve } from 'ml-matrix';
import { play } from '../../src/core/hands/play';
import { factored, solved } from '../../src/core/mechanics/factor';
import { gableFrame } from '../../src/core/mechanics/gableFrame';
import { settle } from '../../src/core/mechanics/settle';
import { copied } from '../../src/core/mechanics/skyline';
import { framed } from '../../src/core/site/framed';
import { begin, take } from '../../src/core/site/take';
import type { Gable } from '../../src/core/mechanics/gable';
import { dense } from '../mechanics/dense';
import { wholeGable } from '../mechanics/testGable';
import { levelOf } from '../site/levels';

/** `npm run bench`: what the solver costs. Figures go to tests/bench/last.json; no test asks for any of them. */

const median = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] as number;

/** Median of fifteen, ms, after three and a fifth of a second to warm up. */
const timed = (work: () => void): number => {
  const began = performance.now();
  for (let i = 0; i < 3 || performance.now() - began < 200; i++) work();
  return median(
    Array.from({ length: 15 }, () => {
      const start = performance.now();
      work();
      return performance.now() - start;
    }),
  );
};

const equationsOf = (pairs: number) =>
  settle(gableFrame(wholeGable(pairs)).frame, { firstOrder: true, neverSlips: true }).equations();

const linear = (pairs: number): number => {
  const { stiffness, load } = equationsOf(pairs);
  return timed(() => solved(factored(copied(stiffness)), load));
};

/** Least squares through the logarithms: time grows as pairs to this power. */
const powerOf = (rows: readonly { readonly pairs: number; readonly ms: number }[]): number => {
  const at = rows.map(({ pairs, ms }) => [Math.log(pairs), Math.log(ms)] as const);
  const mean = (i: 0 | 1): number => at.reduce((sum, point) => sum + point[i], 0) / at.length;
  const [x, y] = [mean(0), mean(1)];
  const over = at.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0);
  return over / at.reduce((sum, [a]) => sum + (a - x) * (a - x), 0);
};

/** Mean cost of coming to rest anew at every state of a clean 20 ft job, ms. */
const replayed = (): { readonly states: number; readonly mean: number; readonly passes: number } => {
  const level = levelOf('boathouse');
  const { steps } = play(level, 'expert', { seed: 1, mode: 'own' });
  const gables = new Set<Gable>();
  let attempt = begin(level, 1, 'own');
  for (const { action } of steps) {
    attempt = take(attempt, action);
    const frame = framed(attempt);
    if (frame) gables.add(frame.gable);
  }
  let passes = 0;
  const once = (): void => {
    passes = 0;
    for (const gable of gables) passes += settle(gableFrame(gable).frame).passes;
  };
  return { states: gables.size, mean: timed(once) / gables.size, passes: passes / gables.size };
};

const round = (ms: number): number => Math.round(ms * 1000) / 1000;

const factoring = [20, 60, 200, 600, 2000].map((pairs) => ({ pairs, ms: round(linear(pairs)) }));
const sixty = equationsOf(60);
const whole = dense(sixty.stiffness);
const started = performance.now();
solve(whole, Matrix.columnVector([...sixty.load]));
const general = performance.now() - started;
const job = replayed();
const last = {
  machine: `${cpus()[0]?.model ?? 'unknown'}, node ${process.version}`,
  jobOf20ft: { states: job.states, meanMs: round(job.mean), contactPasses: round(job.passes) },
  poseOf60Pairs: { medianMs: round(timed(() => settle(gableFrame(wholeGable(60)).frame))) },
  factorAndSolve: factoring,
  power: round(powerOf(factoring)),
  generalLibraryAt60Pairs: { ms: round(general), times: round(general / (factoring[1]?.ms ?? 1)) },
};
writeFileSync('tests/bench/last.json', `${JSON.stringify(last, null, 2)}\n`);
console.log(JSON.stringify(last, null, 2));
