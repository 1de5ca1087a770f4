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
import { powerOf, timed } from './timing';

/** `npm run bench`: what the solver costs. Figures go to tests/bench/last.json; no test asks for any of them. */

const equationsOf = (pairs: number) =>
  settle(gableFrame(wholeGable(pairs)).frame, { firstOrder: true, neverSlips: true }).equations();

const linear = (pairs: number): number => {
  const { stiffness, load } = equationsOf(pairs);
  return timed(() => solved(factored(copied(stiffness)), load));
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
  power: round(powerOf(factoring.map(({ pairs, ms }) => [pairs, ms] as const))),
  generalLibraryAt60Pairs: { ms: round(general), times: round(general / (factoring[1]?.ms ?? 1)) },
};
writeFileSync('tests/bench/last.json', `${JSON.stringify(last, null, 2)}\n`);
console.log(JSON.stringify(last, null, 2));
