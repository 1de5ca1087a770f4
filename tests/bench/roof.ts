import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { figure } from '../../src/core/roof/figure';
import { planOf } from '../roof/roofs';
import { hipPlan } from '../roof/hips';

/** The third part of `npm run bench`: what figuring a roof costs. Figures go to tests/bench/last.json; nothing is asserted. */

const median = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] as number;

/** Median of fifteen, ms, after a fifth of a second to warm up. */
const timed = (work: () => unknown): number => {
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

const spacing = 16;
const gableOf = (pairs: number) => planOf({ spacing, length: (pairs - 1) * spacing });
/** So many stations along each long wall, jacks among them. */
const hipOf = (stations: number) => hipPlan({ spacing, length: Math.max(330, (stations + 1) * spacing) });

/** Least squares through the logarithms: time grows as the stations to this power. */
const powerOf = (rows: readonly (readonly [stations: number, ms: number])[]): number => {
  const at = rows.map(([n, ms]) => [Math.log(n), Math.log(ms)] as const);
  const mean = (i: 0 | 1): number => at.reduce((sum, point) => sum + point[i], 0) / at.length;
  const [x, y] = [mean(0), mean(1)];
  const over = at.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0);
  return over / at.reduce((sum, [a]) => sum + (a - x) * (a - x), 0);
};

/** Of the same stations as the roofs have, not of those asked for. */
const stationsOf = (roof: ReturnType<typeof figure>): number => roof.layout.stations.length;

const rows = (plans: readonly Parameters<typeof figure>[0][]) =>
  plans.map((plan) => [stationsOf(figure(plan)), timed(() => figure(plan))] as const);

const sizes = [10, 30, 100, 300, 1000, 3000, 10_000];
const gables = rows(sizes.map(gableOf));
const hips = rows(sizes.slice(2).map(hipOf));
const shown = (all: typeof gables): string => all.map(([n, ms]) => `${n}: ${ms.toFixed(3)} ms`).join(', ');

const figures = {
  machine: `${cpus()[0]?.model ?? 'unknown'}, ${cpus().length} cores`,
  load: loadavg()[0],
  gable100: timed(() => figure(gableOf(100))),
  hip100: timed(() => figure(hipOf(100))),
  gablePower: powerOf(gables),
  hipPower: powerOf(hips),
};
console.log(`gables, pairs: ${shown(gables)}`);
console.log(`hip roofs, stations of a long wall: ${shown(hips)}`);
console.log(JSON.stringify(figures));

const file = new URL('./last.json', import.meta.url);
const last = JSON.parse(readFileSync(file, 'utf8')) as object;
writeFileSync(file, `${JSON.stringify({ ...last, roof: figures }, null, 2)}\n`);
