import type { Action, Readiness, Spot as StandingSpot } from '../../core/site/action';
import { againstWall, stationsOf } from '../../core/level/layout';
import type { Level } from '../../core/level/level';
import { topicsOn } from '../../core/level/topics';
import type { Attempt } from '../../core/site/attempt';
import { expand } from '../../core/site/carryOn';
import { methodsOf } from '../../core/site/required';
import type { Observation } from '../../core/site/observe';
import { placeOf } from '../../core/site/ids';
import type { Offer, Spot } from './offer';

/** The crew itself: what is agreed, made ready, signalled, handed on and handed over. */
export const crewSpots = (seen: Observation, attempt: Attempt): readonly Spot[] => [
  ...agreeSpots(seen),
  ...readySpots(seen),
  ...personSpots(),
  ...machineSpots(seen),
  ...carrySpots(seen, attempt),
  {
    id: 'handOver',
    member: 'site',
    offers: [{ id: 'handOver', label: ['act', 'handOver'], act: () => ({ type: 'handOver' }) }],
  },
];

const agreeSpots = ({ level, site }: Observation): readonly Spot[] => {
  const so = methodsOf(level, site.agreed);
  const topics = topicsOn(level).map((topic): Spot => {
    const offer: Offer = {
      id: `agree.${topic}`,
      label: ['act', 'agree'],
      picker: {
        kind: 'choice',
        label: ['method', topic, 'name'],
        options: [so[topic], ...level.methods[topic].filter((v) => v !== so[topic])].map((value) => ({
          value,
          label: ['method', topic, value],
        })),
      },
      act: (value) => ({ type: 'agree', topic, value: String(value) }),
    };
    return { id: `agree.${topic}`, member: 'site', offers: [offer] };
  });
  const signals: Spot = {
    id: 'agree.signals',
    member: 'site',
    offers: [
      {
        id: 'agree.signals',
        label: ['method', 'signals', 'standard'],
        act: () => ({ type: 'agree', topic: 'signals', value: 'standard' }),
      },
    ],
  };
  return level.machine ? [...topics, signals] : topics;
};

const anchors = ['joists', 'wall', 'ridge', 'rafter', 'load'] as const;
/** Under a ledger no joists lie, and no machine lifts it. */
const anchorsOn = (level: Level): readonly (typeof anchors)[number][] =>
  againstWall(level) ? ['wall', 'ridge', 'rafter'] : anchors;

const readySpots = ({ level, site }: Observation): readonly Spot[] =>
  (['platform', 'ladder', 'openings', 'anchor', 'gear'] as const)
    .filter((what) => site.ready[what] === undefined)
    .map((what) => ({
      id: `ready.${what}`,
      member: 'site',
      offers: [what === 'anchor' ? anchorOffer(level) : readyOffer(what)],
    }));

const readyOffer = (what: Readiness): Offer => ({
  id: `ready.${what}`,
  label: ['act', 'makeReady'],
  act: () => ({ type: 'makeReady', what, at: 'site' }),
});

const anchorOffer = (level: Level): Offer => ({
  id: 'ready.anchor',
  label: ['act', 'makeReady'],
  picker: {
    kind: 'choice',
    label: ['ready', 'anchor'],
    options: anchorsOn(level).map((value) => ({ value, label: ['anchor', value] })),
  },
  act: (at) => ({ type: 'makeReady', what: 'anchor', at: at as (typeof anchors)[number] }),
});

const spots: readonly StandingSpot[] = ['platform', 'beside', 'clear', 'ladder', 'path', 'plate'];

const personSpots = (): readonly Spot[] =>
  (['lead', 'helper'] as const).map((who) => {
    const offer: Offer = {
      id: `stand.${who}`,
      label: ['act', 'stand'],
      picker: {
        kind: 'choice',
        label: ['person', who],
        options: spots.map((value) => ({ value, label: ['spot', value] })),
      },
      act: (where) => ({ type: 'stand', who, where: where as StandingSpot }),
    };
    return { id: `stand.${who}`, member: 'site', offers: [offer] };
  });

const machineSpots = ({ level, site, ridgeOn }: Observation): readonly Spot[] => {
  if (!level.machine) return [];
  const hitches = ['twoPoint', 'choked', 'one'] as const;
  const hook: Offer = {
    id: 'hookOn',
    label: ['act', 'hook'],
    picker: {
      kind: 'choice',
      label: ['act', 'hook'],
      options: hitches.map((value) => ({ value, label: ['act', 'hitch', value] })),
    },
    act: (hitch) => ({ type: 'hookOn', hitch: hitch as 'twoPoint', tagLine: hitch !== 'one' }),
  };
  const sign = (way: 'hoist' | 'lower'): Offer => ({
    id: `signal.${way}`,
    label: ['sign', way],
    picker: { kind: 'length', from: 1 / 16, to: 6, start: 1 / 16, label: ['act', 'by'] },
    act: (by) => ({ type: 'signal', sign: way, by: Number(by) }),
  });
  const letGo: Offer = { id: 'letGo', label: ['act', 'letGo'], act: () => ({ type: 'letGo' }) };
  if (!site.sling) return ridgeOn === undefined ? [{ id: 'machine', member: 'site', offers: [hook] }] : [];
  return [
    {
      id: 'machine',
      member: 'ridge',
      offers: ridgeOn === undefined ? [letGo] : [sign('hoist'), sign('lower'), letGo],
    },
  ];
};

/** The last acts that all worked at one station or bay can be handed on, to any later station. */
const carrySpots = ({ level }: Observation, attempt: Attempt): readonly Spot[] => {
  const like = lastPattern(attempt);
  if (!like) return [];
  const last = stationsOf(level).length;
  const options = Array.from({ length: last }, (_, i) => i + 1).filter(
    (to) => expand(attempt.steps, { type: 'carryOn', like, to }) !== undefined,
  );
  if (options.length === 0) return [];
  const offer: Offer = {
    id: 'carryOn',
    label: ['act', 'carryOn'],
    picker: {
      kind: 'choice',
      label: ['act', 'carryTo'],
      options: [...options].reverse().map((to) => ({ value: String(to), label: ['number', String(to)] })),
    },
    act: (to) => ({ type: 'carryOn', like, to: Number(to) }),
  };
  return [{ id: 'carryOn', member: 'site', offers: [offer] }];
};

/** First and last step of the run of acts, just done, that belong to one station and go well together. */
export const lastPattern = ({ steps }: Attempt): readonly [number, number] | undefined => {
  let from = steps.length;
  let at: number | undefined;
  while (from > 0) {
    const step = steps[from - 1];
    const station = step && step.outcome.ok && !step.undone ? stationOf(step.action) : undefined;
    if (station === undefined || (at !== undefined && station !== at)) break;
    at = station;
    from -= 1;
  }
  return from < steps.length ? [from, steps.length - 1] : undefined;
};

const repeatable = ['place', 'tack', 'nailOff', 'setTie', 'shift'];

const stationOf = (action: Action): number | undefined => {
  if (!repeatable.includes(action.type)) return undefined;
  if (action.type === 'setTie') return action.station;
  const named = 'member' in action ? action.member : 'joint' in action ? action.joint : '';
  return /\b(rafter|block|collar|strap|joist)\b/.test(named) ? placeOf(named).station : undefined;
};
