import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { figure } from '../../src/core/roof/figure';
import { listsOf } from '../../src/core/roof/lists';
import { planOf } from '../roof/roofs';
import { hipPlan } from '../roof/hips';
import { byVectors } from './byVectors';
import { powerOf, timed } from './timing';

/** The third part of `npm run bench`: what figuring a roof costs. Figures go to tests/bench/last.json; nothing is asserted. */

const spacing = 16;
const gableOf = (pairs: number) => planOf({ spacing, length: (pairs - 1) * spacing });
/** So many stations along each long wall, jacks among them. */
const hipOf = (stations: number) => hipPlan({ spacing, length: Math.max(330, (stations + 1) * spacing) });

/** Of the same stations as the roofs have, not of those asked for. */
const stationsOf = (roof: ReturnType<typeof figure>): number => roof.layout.stations.length;

const rows = (plans: readonly Parameters<typeof figure>[0][]) =>
  plans.map((plan) => [stationsOf(figure(plan)), timed(() => figure(plan))] as const);

/** With what has to be bought, lifted and marked. */
const listRows = (plans: readonly Parameters<typeof figure>[0][]) =>
  plans.map((plan) => [stationsOf(figure(plan)), timed(() => listsOf(plan, figure(plan)))] as const);

const sizes = [10, 30, 100, 300, 1000, 3000, 10_000];
const gables = rows(sizes.map(gableOf));
const hips = rows(sizes.slice(2).map(hipOf));
const listed = listRows(sizes.map(gableOf));
const listedHips = listRows(sizes.slice(2).map(hipOf));
const shown = (all: typeof gables): string => all.map(([n, ms]) => `${n}: ${ms.toFixed(3)} ms`).join(', ');

/** The line lengths alone of a hip roof with 100 stations along its walls, by a library for vectors. */
const drawn = hipOf(100);
const half = drawn.length / 2;
const alongWall = figure(drawn).layout.stations.filter((x) => x < half);
const acrossEnd = figure(drawn).layout.eaves?.find(({ side }) => side === 'ends')?.stations ?? [];
const asVectors = { ...drawn, endSlope: drawn.endSlope ?? drawn.slope, along: alongWall, across: acrossEnd };
const vectors = timed(() => byVectors(asVectors));

const figures = {
  machine: `${cpus()[0]?.model ?? 'unknown'}, ${cpus().length} cores`,
  load: loadavg()[0],
  gable100: timed(() => figure(gableOf(100))),
  hip100: timed(() => figure(hipOf(100))),
  // Line lengths of half the long wall and one end by a vector library; ours figures every cut of the whole roof meanwhile.
  hip100Vectors: vectors,
  gablePower: powerOf(gables),
  hipPower: powerOf(hips),
  listedPower: powerOf(listed),
  listedHipPower: powerOf(listedHips),
};
console.log(`gables, pairs: ${shown(gables)}`);
console.log(`hip roofs, stations of a long wall: ${shown(hips)}`);
console.log(`gables with their lists: ${shown(listed)}`);
console.log(`hip roofs with their lists: ${shown(listedHips)}`);
const times = (figures.hip100 / figures.hip100Vectors).toFixed(0);
console.log(
  `hip roof of 100: every cut of the whole takes ${times} times what a vector library takes for its line lengths`,
);
console.log(JSON.stringify(figures));

const file = new URL('./last.json', import.meta.url);
const last = JSON.parse(readFileSync(file, 'utf8')) as object;
writeFileSync(file, `${JSON.stringify({ ...last, roof: figures }, null, 2)}\n`);
