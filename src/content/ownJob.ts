import type { Level, Planted, Words } from '../core/level/level';
import { ridgeCarries, stationsOf } from '../core/level/layout';
import { ridgeWeight } from '../core/site/decidePost';
import { twoPeople } from '../core/site/decideRidge';
import { digestOf } from './canonical';
import { complaint, type Complaint, type Read } from './complaint';
import { cautionIds } from './levelSchema';
import { readLevel } from './readLevel';
import type { troubles } from './roofSchemaParts';
import { at } from './shape';

/** A job to practice on a crew's own roof: its plan, and what likely goes wrong there, drawn from the seed as in any other. */

/** More pairs than this are more than a screen shows and a lunch break holds. Ours. */
export const mostPairs = 61;

/** Minutes of a clean run by way of hanging the ridge; undefined where nobody has run it yet. */
type Par = Level['par'];

/** The job, or why its roof is figured only. What it is called, what goes wrong and the machine are in the file. */
export const ownJob = (file: unknown, par: Par = {}): Read<Level> => {
  const roof = plainRoof(file);
  const trouble = at(file, ['site', 'trouble']) as Trouble | undefined;
  const read = readLevel({
    ...settled,
    id: `own-${digestOf(file).slice(0, 12)}`,
    ...sayings(file),
    roof,
    methods: { ...methodsIn(file), hang: hangsIn(file) },
    ...(bringsMachine(file) && { machine: { reach: 20, chart: 1200, steady: 0.0625 } }),
    cautions: cautionsIn(file),
    asFound: {
      planted: plantedFor(trouble),
      spareBoards: 5,
      dried: trouble === 'dried' ? 0.03 : 0,
      ranges: rangesFor(trouble),
    },
    par,
  });
  if (!read.ok) return read;
  if (!read.value.shed && !read.value.plan.joists && !read.value.plan.posts)
    return no(complaint('roof.joists', ['untied'], ['tied']));
  const level = asRun(byHandsToo(read.value));
  const pairs = stationsOf(level).length;
  if (pairs <= mostPairs) return { ok: true, value: level };
  return no(complaint('roof.length', ['manyPairs', pairs], ['pairsAtMost', mostPairs]));
};

const no = (one: Complaint): Read<never> => ({ ok: false, complaints: [one] });

type Trouble = (typeof troubles)[number];

/** Without what the site has no use for: it is no part of a plan. */
const plainRoof = (file: unknown): unknown => {
  if (typeof file !== 'object' || file === null) return file;
  const { site: _site, name: _name, ...roof } = file as Readonly<Record<string, unknown>>;
  return roof;
};

/** A ledger is lifted by hand or onto props, whatever stands by. */
const bringsMachine = (file: unknown): boolean => at(file, ['site', 'machine']) === true && !isShed(file);

const ofMachines: readonly string[] = ['load', 'signals', 'powerLines'] satisfies CautionId[];

/** Everything that the work calls for: nothing hangs where no machine comes. */
const cautionsIn = (file: unknown): readonly CautionId[] =>
  cautionIds.filter((id) => bringsMachine(file) || !ofMachines.includes(id));
type CautionId = (typeof cautionIds)[number];

const isShed = (file: unknown): boolean => at(file, ['kind']) === 'shed';

const hangsIn = (file: unknown): Level['methods']['hang'] =>
  bringsMachine(file) ? ['machine', 'posts'] : ['posts'];

/** Two people lift the ridge where they may, and hold it; one that carries goes onto its posts however it is lifted. */
const byHandsToo = (level: Level): Level =>
  ridgeCarries(level) || ridgeWeight({ level }) > twoPeople
    ? level
    : { ...level, methods: { ...level.methods, hang: [...level.methods.hang, 'hand'] } };

/** Only the ways that were run through. */
const asRun = (level: Level): Level => {
  const ways = level.methods.hang.filter((way) => level.par[way] !== undefined);
  return ways.length === 0 ? level : { ...level, methods: { ...level.methods, hang: ways } };
};

const methods = {
  ties: ['joistsFirst', 'byPair'],
  stack: ['oneSide', 'alternate'],
  upper: ['collars', 'straps'],
  ridgeLength: ['cut', 'wild'],
} as const;

/** There is one way with one side at a wall. */
const onLedger = {
  ties: ['joistsFirst'],
  stack: ['oneSide'],
  upper: ['collars'],
  ridgeLength: ['cut'],
} as const;

/** There is nothing to agree about what a roof on a ridge that carries was planned without. */
const methodsIn = (file: unknown) => {
  if (isShed(file)) return onLedger;
  const carries = at(file, ['posts']) !== undefined;
  const without = (key: string): boolean => carries && at(file, [key]) === false;
  return {
    ...methods,
    ties: without('joists') ? (['joistsFirst'] as const) : methods.ties,
    upper: without('collars') ? (['collars'] as const) : methods.upper,
  };
};

const sayings = (
  file: unknown,
): { readonly title: Words; readonly summary: Words; readonly briefing: readonly Words[] } => {
  const name = at(file, ['name']);
  const given = typeof name === 'string' && name.trim() !== '' ? name.trim() : undefined;
  return {
    title: { en: given ?? 'Your own roof', es: given ?? 'Su propio techo' },
    summary: { en: 'A roof from your own plan.', es: 'Un techo de su propio plano.' },
    briefing: [
      {
        en: 'This is your plan, in an invented site. Walls, boards and tools are drawn by chance. They say nothing about your real ones.',
        es: 'Este es su plano, en un sitio inventado. Muros, tablas y herramientas salen al azar. No dicen nada de los suyos.',
      },
    ],
  };
};

const board = (fault: Planted['fault'], by: number): Planted => ({ fault, at: 'board.any', by });

const plantedFor = (trouble: Trouble | undefined): readonly Planted[] => [
  board('crownDown', 0.5),
  board('splitAtNotch', 1),
  board('plumbCutLong', 0.25),
  ...(trouble === 'walls' ? [{ fault: 'plateLow', at: 'plate.any', by: 0.375 } as const] : []),
  ...(trouble === 'dried' ? [board('plumbCutSteep', 0.25)] : []),
  ...(trouble === 'mixed'
    ? [board('twisted', 0.5), board('crownDown', 0.625), board('plumbCutShort', 0.25)]
    : []),
];

const rangesFor = (trouble: Trouble | undefined): Level['asFound']['ranges'] => ({
  plateHeight: trouble === 'walls' ? 0.1875 : 0.0625,
  plateLine: trouble === 'walls' ? 0.1875 : 0.0625,
  bodyLength: 0.03125,
  cutOpen: 0.03125,
  crown: trouble === 'mixed' ? 0.25 : 0.125,
  markWander: 0.03125,
  blockLength: 0.03125,
  growth: trouble === 'grown' ? 0.15625 : 0.0625,
  levelBias: 0.0625,
  landing: 1,
  ridgeBow: trouble === 'bowed' ? 1 : 0.375,
  ridgeCrown: trouble === 'bowed' ? 0.25 : 0,
  twist: trouble === 'mixed' ? 0.1875 : 0,
  boardDepth: trouble === 'mixed' ? 0.0625 : 0,
  tapeHook: 0,
  waterBias: 0,
  squareBias: 0,
  lineSlack: 0,
});

/** What every such job has. Tolerances are our defaults, as in the course. */
const settled = {
  format: 'tack-and-true/level@1',
  version: 1,
  tolerances: {
    ...{ ridgeLevelIn10ft: 0.25, ridgeHeight: 0.125, ridgeCentre: 0.125, ridgeStraight: 0.25, plane: 0.1875 },
    ...{ plumbCut: 0.125, seat: 0.125, layout: 0.125, block: 0.125, tie: 0.25 },
  },
  introduces: [],
  modes: ['watch', 'list', 'nudge', 'own'],
} as const;
