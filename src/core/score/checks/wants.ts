import { againstWall, lastStation, sidesOf, stationsOf, stiffRidge } from '../../level/layout';
import type { Level } from '../../level/level';
import { wholeJob, within, type Stage } from '../../level/stages';
import { ends, type End, type Side } from '../../roof/side';
import { factsOf } from '../../order/fact';
import { checkRules, type CheckRuleId } from '../../order/rules';
import { fastened, middleLocked } from '../../site/holding';
import { rafterId, type JointId, type MemberId, type RafterId } from '../../site/ids';
import { ridgeAside, ridgeHigh } from '../../site/posed';
import { nothingOpen } from '../../site/punch';
import { finished, methodsOf, requiredFor } from '../../site/required';
import { offPlane, ridgeBowed } from '../../site/readings/string';
import { heightFromStart } from '../../site/truePlate';
import { plateSpots, waterStart } from '../../level/planted';
import type { Standing } from '../../site/standing';
import type { Look, Want, Way } from './want';

/** Every want of every check in the stages of a level. */
export const wantsOf = (level: Level): readonly Want[] => {
  const all = [
    ...wallWants(level),
    ...ridgeWants(level),
    ...straightWants(level),
    ...sidesOf(level).flatMap((side) => [...planeWants(level, side), ...layoutWants(level, side)]),
    punchWant,
  ];
  return all.filter(({ rule }) => rule === 'C7' || within(level.stages ?? wholeJob, stageOfCheck[rule]));
};

/** The stage in which each check is made. The walk with the punch list ends any of them. */
const stageOfCheck: Readonly<Record<Exclude<CheckRuleId, 'C7'>, Stage>> = {
  C1: 'ground',
  C2: 'ridge',
  C3: 'ridge',
  C4: 'hold',
  C5: 'stack',
  C6: 'stack',
};

const weightOf = (id: CheckRuleId): number => checkRules.find((rule) => rule.id === id)?.weight ?? 0;
const always = (): boolean => true;

/** A plate this near to level is level enough to build on, inches: three divisions of the water level. Ours. */
const plateLevel = 3 / 16;
/** What reading and moving in steps leave over at the ridge, beyond its tolerance, inches: one division. Ours. */
const grace = 1 / 16;

const heights = (level: Level): readonly Look[] =>
  sidesOf(level)
    .flatMap((side) => plateSpots.map((spot) => `plate.${side}.${spot}`))
    .filter((at) => at !== waterStart)
    .map((at) => ({ tool: 'waterLevel', at }));

const isLevel = (standing: Standing): boolean =>
  sidesOf(standing.level).every((side) =>
    plateSpots.every((spot) => Math.abs(heightFromStart(standing, side, spot)) <= plateLevel),
  );

const wallWant = (part: string, looks: readonly Look[], right: Want['right'] = always): Want => ({
  rule: 'C1',
  part,
  weight: weightOf('C1') / 4,
  ways: [{ looks, opens: always, closes: ({ site }) => site.ridge !== undefined }],
  right,
});

const wallWants = (level: Level): readonly Want[] => [
  wallWant(
    'width',
    ['A', 'mid', 'B'].map((at): Look => ({ tool: 'tape', at: `width.${at}` })),
  ),
  wallWant(
    'diagonals',
    ['1', '2'].map((which): Look => ({ tool: 'tape', at: `diagonal.${which}` })),
  ),
  wallWant('level', heights(level), isLevel),
  wallWant(
    'straight',
    sidesOf(level).map((side): Look => ({ tool: 'string', at: `plate.${side}.mid` })),
  ),
];

const endIds = ({ level }: Standing): readonly RafterId[] => {
  const known = endsOf.get(level);
  if (known) return known;
  const ids = sidesOf(level).flatMap((side) => [1, lastStation({ level })].map((n) => rafterId(side, n)));
  endsOf.set(level, ids);
  return ids;
};
const endsOf = new WeakMap<Level, readonly RafterId[]>();
const endsOnRidge = (standing: Standing): boolean =>
  endIds(standing).every((id) => fastened(standing.site, `ridge:${id}`));
const anEndHeelHome = (standing: Standing): boolean =>
  endIds(standing).some((id) => finished(standing.site, `heel:${id}`));
const settled = (standing: Standing): boolean => endsOnRidge(standing) && factsOf(standing)('settled');

const ridgeWants = (level: Level): readonly Want[] => {
  const { tolerances, plan } = level;
  const off = (standing: Standing, end: End, key: 'high' | 'aside'): number =>
    Math.abs((key === 'high' ? ridgeHigh(standing) : ridgeAside(standing))?.[end] ?? Infinity);
  const way = (looks: readonly Look[]): Way => ({ looks, opens: endsOnRidge, closes: anEndHeelHome });
  const wall = againstWall(level);
  const one = { rule: 'C2' as const, weight: weightOf('C2') / (wall ? 2 : 4) };
  const fall = (standing: Standing): number => {
    const high = ridgeHigh(standing);
    return high ? Math.abs(high.A - high.B) : Infinity;
  };
  return [
    ...ends.flatMap((end): readonly Want[] => [
      {
        ...one,
        part: `height.${end}`,
        ways: [way([{ tool: 'tape', at: `ridge.${end}.height` }]), way(seatsAt(level, end))],
        right: (s) => off(s, end, 'high') <= tolerances.ridgeHeight + grace,
      },
      ...(wall
        ? []
        : [
            {
              ...one,
              part: `centre.${end}`,
              ways: [way([{ tool: 'tape', at: `ridge.${end}.centre` }])],
              right: (s: Standing) => off(s, end, 'aside') <= tolerances.ridgeCentre + grace,
            },
          ]),
    ]),
    {
      rule: 'C3',
      part: 'level',
      weight: weightOf('C3'),
      ways: [
        {
          looks: ends.map((from): Look => ({ tool: 'level', at: 'ridge', from })),
          opens: settled,
          closes: anEndHeelHome,
        },
      ],
      right: (s) => fall(s) <= (tolerances.ridgeLevelIn10ft * plan.length) / 120,
    },
  ];
};

/** Once the end pairs stand and before a pair locks the middle: from then on its bow is built in. */
const straightWants = ({ plan, tolerances, shed }: Level): readonly Want[] =>
  plan.length <= stiffRidge || againstWall({ shed })
    ? []
    : [
        {
          rule: 'C4',
          part: 'straight',
          weight: weightOf('C4'),
          ways: [
            {
              looks: [{ tool: 'string', at: 'ridge.straight' }],
              opens: endsOnRidge,
              closes: middleLocked,
            },
          ],
          right: (s) => Math.abs(ridgeBowed(s) ?? Infinity) <= tolerances.ridgeStraight,
        },
      ];

/** The other way to know a height: both birdsmouths of that end, by the rule. */
const seatsAt = (level: Level, end: End): readonly Look[] =>
  sidesOf(level).map((side) => ({
    tool: 'rule',
    at: `heel:${rafterId(side, end === 'A' ? 1 : stationsOf(level).length)}`,
  }));

const innerStations = (level: Level): readonly number[] =>
  stationsOf(level)
    .map((_, i) => i + 1)
    .slice(1, -1);

/** No two neighbours may stay unread: of every two, one is held to the string before its heel is home. */
const planeWants = (level: Level, side: Side): readonly Want[] => {
  const pairs = innerStations(level).slice(0, -1);
  return pairs.map((n) => ({
    rule: 'C5',
    part: `plane.${side}.${n}`,
    weight: weightOf('C5') / sidesOf(level).length / pairs.length,
    ways: [planeWay(side, n), planeWay(side, n + 1)],
    right: (s) => [n, n + 1].every((k) => Math.abs(offPlane(s, side, k) ?? 0) <= level.tolerances.plane),
  }));
};

const planeWay = (side: Side, n: number): Way => {
  const id = rafterId(side, n);
  const home = ({ site }: Standing): boolean => finished(site, `heel:${id}`);
  return {
    looks: [{ tool: 'string', at: `plane.${side}.${n}` }],
    opens: (s) =>
      s.site.lines[`string.${side}`] !== undefined && s.site.members[id] !== undefined && !home(s),
    closes: home,
  };
};

/** From the datum every four bays, until the next four heels are home. */
const layoutWants = (level: Level, side: Side): readonly Want[] => {
  const inner = innerStations(level);
  const fourth = inner.filter((n) => n >= 5 && (n - 1) % 4 === 0);
  return fourth.map((n) => ({
    rule: 'C6',
    part: `layout.${side}.${n}`,
    weight: weightOf('C6') / sidesOf(level).length / fourth.length,
    ways: [
      {
        looks: [{ tool: 'tape', at: `layout.${side}.${n}` }],
        opens: ({ site }) => site.members[rafterId(side, n)] !== undefined,
        closes: ({ site }) => site.handedOver || nextHome(site, heelsAfter(inner, side, n)),
      },
    ],
    right: (s) =>
      Math.abs((s.site.members[rafterId(side, n)]?.x ?? Infinity) - (stationsOf(level)[n - 1] ?? 0)) <=
      level.tolerances.layout + grace,
  }));
};

const heelsAfter = (inner: readonly number[], side: Side, n: number): readonly JointId[] =>
  inner.filter((k) => k > n && k <= n + 4).map((k): JointId => `heel:${rafterId(side, k)}`);

const nextHome = (site: Standing['site'], heels: readonly JointId[]): boolean =>
  heels.length > 0 && heels.every((heel) => finished(site, heel));

/** Walked with the punch list after the last nail and before handing over. */
const punchWant: Want = {
  rule: 'C7',
  part: 'punch',
  weight: weightOf('C7'),
  ways: [
    {
      looks: [{ tool: 'eye', at: 'punch' }],
      opens: (standing) => membersUp(standing) && nothingOpen(standing),
      closes: ({ site }) => site.handedOver,
    },
  ],
  right: (standing) => nothingOpen(standing),
};

/** Cheap to ask after every event: while a member is missing nobody has to look at every joint. */
const membersUp = ({ level, site }: Standing): boolean => {
  if (level.stages) return requiredFor(level, site).members.every((id) => site.members[id] !== undefined);
  const { upper } = methodsOf(level, site.agreed);
  const known = required.get(level) ?? { collars: undefined, straps: undefined };
  const members = known[upper] ?? requiredFor(level, site).members;
  required.set(level, { ...known, [upper]: members });
  return members.every((id) => site.members[id] !== undefined);
};
const required = new WeakMap<
  Level,
  { readonly [U in 'collars' | 'straps']: readonly MemberId[] | undefined }
>();
