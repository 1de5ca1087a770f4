import { complaint, type Complaint } from '../../content/complaint';
import { tools } from '../../core/instruments/rows';
import { modesOf, type Level } from '../../core/level/level';
import { crewDid, wholeJob } from '../../core/level/stages';
import { rafterCount } from '../../core/level/layout';
import { chanceKey, waysOf } from '../../core/order/chance';
import { chanceRows } from '../../core/order/chanceRows';
import { ruleIds } from '../../core/order/stateRules';

/** What can be told of a level without playing it. */
export const writtenComplaints = (level: Level): readonly Complaint[] => [
  ...introduced(level),
  ...cautioned(level),
  ...measurable(level),
  ...(modesOf(level).includes('check-off') ? worthJudging(level) : []),
  ...oneWay(level),
  ...equipped(level),
  ...chanced(level),
];

const introduced = ({ introduces }: Level): readonly Complaint[] =>
  introduces.flatMap((id, i) =>
    ruleIds.includes(id) ? [] : [complaint(`introduces.${i}`, `${id} is no rule`, ruleIds.join(', '))],
  );

/** Cautions every roof on walls calls for, and the ones a machine adds. */
const always = [
  'fall',
  'topPlate',
  'ladder',
  'openings',
  'anchor',
  'nailGun',
  'saw',
  'lifting',
  'night',
  'localCode',
];
const withMachine = ['load', 'signals', 'powerLines'];

const cautioned = ({ cautions, methods }: Level): readonly Complaint[] => {
  const wanted = methods.hang.includes('machine') ? [...always, ...withMachine] : always;
  return wanted
    .filter((id) => !cautions.includes(id))
    .map((id) => complaint('cautions', `${id} is missing`, `all of ${wanted.join(', ')}`));
};

/** A tolerance under twice what the finest tool divides cannot be told apart from the reading. */
const measurable = ({ tolerances }: Level): readonly Complaint[] => {
  const least = 2 * Math.min(...Object.values(tools).map(({ division }) => division));
  return Object.entries(tolerances)
    .filter(([, value]) => value < least)
    .map(([key, value]) =>
      complaint(
        `tolerances.${key}`,
        `is ${value}`,
        `at least ${least}, twice the finest division on the site`,
      ),
    );
};

/** Fewer than these and luck alone could pass for an eye. */
const least = { faulty: 4, sound: 8 } as const;

const worthJudging = (level: Level): readonly Complaint[] => {
  const faulty = level.asFound.planted.length;
  const sound =
    rafterCount(level) +
    level.asFound.spareBoards -
    level.asFound.planted.filter(({ at }) => at.startsWith('board')).length;
  const boards = level.asFound.planted.filter(
    ({ fault, at }) => at.startsWith('board') && fault !== 'ridgeLong' && fault !== 'plumbCutLong',
  ).length;
  return [
    ...(faulty < least.faulty
      ? [complaint('asFound.planted', `has ${faulty} faults`, `at least ${least.faulty}`)]
      : []),
    ...(sound < least.sound
      ? [complaint('asFound', `has ${sound} sound boards`, `at least ${least.sound}`)]
      : []),
    ...(boards > level.asFound.spareBoards
      ? [
          complaint(
            'asFound.spareBoards',
            `is ${level.asFound.spareBoards}`,
            `at least ${boards}, one for each board that cannot be mended`,
          ),
        ]
      : []),
  ];
};

/** A crew that came before has agreed on everything: the learner finds one way of building. */
const oneWay = ({ stages, methods }: Level): readonly Complaint[] =>
  crewDid(stages ?? wholeJob)
    ? Object.entries(methods)
        .filter(([, choices]) => choices.length > 1)
        .map(([topic]) =>
          complaint(`methods.${topic}`, 'has a choice', 'one way, since the crew has begun on it'),
        )
    : [];

const equipped = ({ methods, machine, par }: Level): readonly Complaint[] => [
  ...(methods.hang.includes('machine') && !machine
    ? [complaint('machine', 'is missing', 'a machine where one may lift')]
    : []),
  ...methods.hang
    .filter((way) => par[way] === undefined)
    .map((way) => complaint(`par.${way}`, 'is missing', 'crew-minutes of a clean run')),
];

/** Without a row of chances the order of a run could not be told from luck. */
const chanced = (level: Level): readonly Complaint[] =>
  waysOf(level)
    .map((methods) => chanceKey({ level, methods }))
    .filter((key) => chanceRows[key] === undefined)
    .map((key) =>
      complaint('roof', `no chances are stored for "${key}"`, 'a row from npx tsx tests/prove/p0.ts'),
    );
