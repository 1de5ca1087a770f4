import { describe, expect, it } from 'vitest';
import { stationsOf } from '../../src/core/level/layout';
import type { Action } from '../../src/core/site/action';
import { framed } from '../../src/core/site/framed';
import { loadsOf, type Loads } from '../../src/core/site/loads';
import type { Standing } from '../../src/core/site/standing';
import { begin } from '../../src/core/site/take';
import { cleanActs, told, type, usual } from '../order/story';
import { trueLevel } from './levels';
import { shedAfter, shedDone } from './shedRun';

const hut = trueLevel('garden-hut');
const acts = cleanActs(hut, usual);
const done = told(hut, acts);

const of = (standing: Standing, whatIf?: Parameters<typeof loadsOf>[1]): Loads => {
  const loads = loadsOf(standing, whatIf);
  if (!loads || loads === 'falls') throw new Error('nothing stands');
  return loads;
};
const sum = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0);
const seats = ({ rafters }: Loads): number => sum(Object.values(rafters).map(({ down }) => down));

describe('what a standing roof carries', () => {
  it('all that weighs goes down through seats, posts and hands, at every act that fastens', () => {
    let asked = 0;
    for (let n = 60; n < acts.length; n += 40) {
      const attempt = told(hut, acts.slice(0, n));
      const loads = loadsOf(attempt);
      if (!loads || loads === 'falls') continue;
      asked++;
      const carried = seats(loads) + sum(Object.values(loads.supports));
      expect(carried / loads.weight, `after ${String(n)} acts`).toBeCloseTo(1, 9);
    }
    expect(asked).toBeGreaterThan(4);
  });

  it('at a wall it goes down through seats, posts, hands and the studs behind the ledger', () => {
    let asked = 0;
    for (let n = 40; n < shedDone.steps.length + 20; n += 20) {
      const loads = loadsOf(shedAfter(n));
      if (!loads || loads === 'falls') continue;
      asked++;
      const carried = seats(loads) + sum(Object.values(loads.supports)) + sum(Object.values(loads.studs));
      expect(carried / loads.weight, `after ${String(n)} acts`).toBeCloseTo(1, 9);
    }
    expect(asked).toBeGreaterThan(5);
    const { walls, studs, rafters } = of(shedDone);
    expect(Object.keys(studs)).toHaveLength(stationsOf(shedDone.level).length);
    // What pushes the low wall out pushes the ledger to its wall.
    const out = sum(Object.values(rafters).map(({ out: o }) => o));
    expect(out).toBeGreaterThan(1);
    expect(walls.street).toBeCloseTo(out, 9);
    expect(walls.yard).toBeCloseTo(out, 9);
  });

  it('a gable has no studs behind its ridge', () => {
    expect(of(done).studs).toEqual({});
  });

  it('what walls hold back is what rafters push out and ties do not take', () => {
    const loads = of(done);
    for (const side of ['street', 'yard'] as const) {
      const out = sum(
        Object.entries(loads.rafters)
          .filter(([id]) => id.includes(side))
          .map(([, { out: o }]) => o),
      );
      const joists = sum(
        Object.entries(loads.ties)
          .filter(([id]) => id.startsWith('joist.'))
          .map(([, pull]) => pull),
      );
      expect(out - joists).toBeCloseTo(loads.walls[side], 6);
    }
  });

  it('snow adds its rate times the plan of the roof: 20 lb on each square foot of rafters and tails', () => {
    const level = hut.plan;
    const stations = stationsOf(hut);
    const from = stations[0] ?? 0;
    const to = stations[stations.length - 1] ?? 0;
    const added = of(done, 'snow').weight - of(done).weight;
    // From the ridge's faces to the tails' ends, over the length between the end rafters.
    const plan = ((level.span + 2 * level.overhang - level.ridge.thickness) * (to - from)) / 144;
    expect(added / (20 * plan)).toBeCloseTo(1, 6);
  });

  it('snow is carried like the roof itself: rafters push, ties pull harder, and it all comes down at the seats', () => {
    const [own, snow] = [of(done), of(done, 'snow')];
    expect(seats(snow) / snow.weight).toBeCloseTo(1, 9);
    for (const id of Object.keys(own.rafters) as (keyof Loads['rafters'])[])
      expect(snow.rafters[id]?.along).toBeGreaterThan(own.rafters[id]?.along ?? 0);
    for (const id of ['joist.3', 'joist.4', 'heels.4'])
      expect(snow.ties[id], id).toBeGreaterThan(own.ties[id] ?? Infinity);
  });

  it('wind from the street is held level: by both walls and the braces across, to the pound', () => {
    const frame = framed(done);
    if (!frame) throw new Error('nothing stands');
    const { shape, stations } = frame.gable;
    const height = (shape.run + shape.overhang - shape.ridge.thickness / 2) * shape.m;
    const blown = (10 / 144) * height * ((stations[stations.length - 1] ?? 0) - (stations[0] ?? 0));
    const { walls, braces } = of(done, 'wind');
    const across = (braces['brace.across.A'] ?? 0) + (braces['brace.across.B'] ?? 0);
    expect(across).toBeGreaterThan(0);
    expect((walls.yard - walls.street + across) / blown).toBeCloseTo(1, 6);
  });

  it('without ties the walls hold what ties would: a deck on top pushes them out several times as hard', () => {
    const untied = told(
      hut,
      acts.filter((act: Action) => !type('setTie', /./)(act) && !type('nailOff', /(heelTie|collarEnd)/)(act)),
    );
    const [open, tied] = [loadsOf(untied, 'deck'), of(done, 'deck')];
    if (!open) throw new Error('nothing stands');
    if (open === 'falls') throw new Error('it stands untied');
    expect(open.walls.street).toBeGreaterThan(3 * tied.walls.street);
  });

  it('there is nothing to tell before anything is fastened', () => {
    expect(loadsOf(begin(hut, 1, 'own'))).toBeUndefined();
  });
});
