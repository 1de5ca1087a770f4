import { add, lerp, type Vec3 } from '../../core/geometry/vector';
import { levelAt } from '../../core/instruments/rows';
import type { End, Side } from '../../core/roof/side';
import { signOf } from '../../core/roof/side';
import type { Of } from '../../core/site/action';
import { loadHangs } from '../../core/site/holding';
import { placeOf } from '../../core/site/ids';
import { guiding } from './crewSpots';
import { bareFloor } from './scheme';
import { atHorses, horses } from './sawhorses';
import type { CrewAtWork, HandTool, Task, Thing } from './task';
import {
  heelPlace,
  jointPlace,
  onRafter,
  platePlace,
  rafterOf,
  ridgeAt,
  ridgeSide,
  endPlace,
  type Place,
  type Work,
} from './workPlaces';

/** How the two of the crew take a reading: one at the mark, one at the other end of what is stretched or held. */
export const readingTasks = (work: Work, act: Of<'read'>): CrewAtWork | undefined => {
  const { at, tool } = act;
  if (at === 'punch') return undefined;
  if (at.startsWith('board.') && at !== 'board.ridge') return boardReading(work, act);
  if (at === 'board.ridge') return ridgeBoardReading(work, act);
  if (at.startsWith('width.') || at.startsWith('diagonal.')) return acrossWalls(work, at);
  if (at.startsWith('plate.')) return plateReading(work, act);
  if (at.startsWith('ridge.') || at === 'ridge') return ridgeReading(work, act);
  if (tool === 'rule' || at.startsWith('bay.')) return atJoint(work, act);
  return rowReading(work, act);
};

export const measures = (place: Place, tool: HandTool, doing: Task['doing'] = 'measure'): Task => ({
  doing,
  tool,
  where: { on: 'work', from: place.from },
  works: place.at,
  holds: place.grip,
  looks: place.at,
});

/** Holds the far end of a tape or line, or a part while the mate works at it. */
export const steadies = ({ at, from }: Place, doing: Task['doing'] = 'steady'): Task => ({
  doing,
  where: { on: 'work', from },
  works: at,
  looks: at,
});

const tools: Readonly<Partial<Record<Of<'read'>['tool'], HandTool>>> = {
  tape: 'tape',
  rule: 'rule',
  square: 'square',
  storyPole: 'rule',
  string: 'rule',
};

const boardReading = (work: Work, { tool }: Of<'read'>): CrewAtWork => {
  const lead = atHorses('work', work.scheme.lane);
  const helper = atHorses('end', work.scheme.lane);
  const task = measures(lead, tools[tool] ?? 'pencil');
  const { tool: _none, ...bare } = task;
  const pattern: readonly Thing[] =
    tool === 'pattern'
      ? [{ kind: 'board', from: add(lead.at, [0, -14, 0.8]), to: add(lead.at, [0, 24, 0.8]) }]
      : [];
  const seen: Task = tool === 'eye' ? { ...bare, doing: 'sight', looks: helper.at } : bare;
  return {
    lead: tool === 'eye' || tool === 'pattern' ? seen : task,
    helper: steadies(helper),
    things: [...horses(work.scheme.lane), ...pattern],
  };
};

const ridgeBoardReading = (work: Work, { tool }: Of<'read'>): CrewAtWork | undefined => {
  const id = work.bulks.has('board.ridge') ? 'board.ridge' : 'ridge';
  const [near, far] = [endPlace(work, id, 0.02), endPlace(work, id, 0.98)];
  if (!near || !far) return undefined;
  if (tool === 'eye')
    return {
      lead: { ...steadies(near, 'sight'), looks: far.at },
      helper: steadies(far),
      things: [],
    };
  return {
    lead: measures(far, 'tape'),
    helper: steadies(near),
    things: [{ kind: 'tape', from: near.at, to: far.at }],
  };
};

const acrossWalls = (work: Work, at: string): CrewAtWork => {
  const { length } = work.scheme;
  const ends = { A: 4, mid: length / 2, B: length - 4 } as const;
  const which = at.slice(at.indexOf('.') + 1);
  const xs: readonly [number, number] =
    which === '1'
      ? [4, length - 4]
      : which === '2'
        ? [length - 4, 4]
        : [ends[which as 'A'] ?? 4, ends[which as 'A'] ?? 4];
  const [near, far] = [platePlace(work, 'street', xs[0]), platePlace(work, 'yard', xs[1])];
  return {
    lead: measures(near, 'tape'),
    helper: steadies(far),
    things: [{ kind: 'tape', from: near.at, to: far.at }],
  };
};

const plateReading = (work: Work, { at, tool }: Of<'read'>): CrewAtWork => {
  const { length } = work.scheme;
  const side = (placeOf(`${at}.`).side ?? 'street') as Side;
  const spot = at.slice(at.lastIndexOf('.') + 1);
  const x = spot === 'A' ? 8 : spot === 'B' ? length - 8 : length / 2;
  const place = platePlace(work, side, x);
  if (tool === 'waterLevel') {
    const datum = side === 'street' && x < 20 ? platePlace(work, side, 30) : platePlace(work, 'street', 8);
    const [one, other] = [add(place.at, [0, 0, 7]), add(datum.at, [0, 0, 7])];
    const hold = (p: Place, hand: Vec3): Task => ({ ...steadies(p, 'level'), works: hand, holds: p.grip });
    const low = lerp(place.at, datum.at, 0.5);
    return {
      lead: hold(place, one),
      helper: hold(datum, other),
      things: [
        { kind: 'hose', from: add(one, [0, 0, 5]), to: place.at },
        { kind: 'hose', from: add(other, [0, 0, 5]), to: datum.at },
        { kind: 'hose', from: place.at, to: add(low, [0, 0, -3]) },
        { kind: 'hose', from: add(low, [0, 0, -3]), to: datum.at },
      ],
    };
  }
  const [a, b] = [platePlace(work, side, 8), platePlace(work, side, length - 8)];
  if (tool === 'eye')
    return { lead: { ...steadies(a, 'sight'), looks: b.at }, helper: steadies(b), things: [] };
  const over = (p: Place): Vec3 => add(p.at, [0, signOf(side) * 1.5, 1.2]);
  return {
    lead: measures(place, 'rule'),
    helper: { ...steadies(b, 'stretch'), works: over(b) },
    things: [{ kind: 'string', from: over(a), to: over(b) }],
  };
};

const ridgeReading = (work: Work, { at, tool, from }: Of<'read'>): CrewAtWork => {
  const { length, floor = bareFloor, half } = work.scheme;
  const end = (/\.([AB])\b/.exec(at)?.[1] ?? from ?? 'A') as End;
  const x = end === 'A' ? 10 : length - 10;
  const far = ridgeSide(work, length - x, -1);
  const near = ridgeSide(work, x, -1);
  const top = add(ridgeAt(work, x), [0, -1, -0.4]);
  if (tool === 'level') {
    return alongRidge(work, Math.min(96, levelAt.get(at) ?? 48) / 2);
  }
  if (tool === 'eye')
    return {
      lead: {
        ...steadies({ ...near, at: top }, 'sight'),
        holds: near.grip,
        looks: ridgeAt(work, length - x),
      },
      helper: steadies(far),
      things: [],
    };
  if (tool === 'string') {
    const middle = ridgeSide(work, length / 2, -1);
    const out = (p: Place): Vec3 => add(p.at, [0, -0.9, 2]);
    const b = ridgeSide(work, length - 8, -1);
    return {
      lead: measures(middle, 'rule'),
      helper: { ...steadies(b, 'stretch'), works: out(b) },
      things: [{ kind: 'string', from: out(ridgeSide(work, 2, -1)), to: out(b) }],
    };
  }
  const foot: Vec3 = [x, top[1] - 1, floor + 0.2];
  if (at.endsWith('.centre')) {
    const mark = platePlace(work, 'street', x);
    const low: Vec3 = [x, top[1] - 1, floor + 4];
    return {
      lead: { ...measures({ ...near, at: low }, 'tape'), holds: add(low, [0, 0, 14]) },
      helper: steadies(mark),
      things: [
        { kind: 'string', from: add(near.at, [0, -0.4, 0]), to: low },
        { kind: 'tape', from: low, to: [x, -half + 2, floor + 0.5] },
      ],
    };
  }
  const thing: Thing['kind'] = tool === 'bob' ? 'string' : tool === 'storyPole' ? 'pole' : 'tape';
  const lead: Task = { ...measures({ ...near, at: top }, 'tape'), holds: add(near.at, [0, -1.2, -6]) };
  const { tool: _case, ...free } = lead;
  return {
    lead: tool === 'tape' ? lead : free,
    // Under a load that hangs nobody takes hold of the foot.
    helper: loadHangs(work.shown.site)
      ? guiding(work)
      : steadies({ ...near, at: add(foot, [0, 0, 22]), from: [end === 'A' ? 1 : -1, 0.6, 0] }, 'look'),
    things: [{ kind: thing, from: add(top, [0, -1, 0]), to: foot }],
  };
};

/** The level on the ridge's upper edge, in the middle of its length. */
const alongRidge = (work: Work, half: number): CrewAtWork => {
  const { length } = work.scheme;
  const x = length / 2;
  const on = (dx: number): Vec3 => add(ridgeAt(work, x + dx), [0, 0, 1.4]);
  const hand = (dx: number): Vec3 => add(on(dx), [0, -0.9, 0.4]);
  const side = ridgeSide(work, x, -1);
  return {
    lead: {
      doing: 'level',
      where: { on: 'work', from: side.from },
      works: hand(-8),
      holds: hand(8),
      looks: hand(0),
    },
    helper: steadies(ridgeSide(work, length - 14, -1)),
    things: [{ kind: 'level', from: on(-half), to: on(half) }],
  };
};

/** With the rule at a joint; who is not reading keeps the rafter from moving. */
const atJoint = (work: Work, { at, tool }: Of<'read'>): CrewAtWork | undefined => {
  const joint = at.replace(/^heelCut/, 'heel').replace(/^ridgeTop/, 'ridge');
  const bay = /^bay\.(street|yard)\.(\d+)/.exec(at);
  const place = bay ? heelOfStation(work, bay[1] as Side, Number(bay[2])) : jointPlace(work, joint);
  const member = joint.slice(joint.indexOf(':') + 1).replace(/\.(near|far)$/, '');
  const { side = 'street', station = 1 } = bay
    ? { side: bay[1] as Side, station: Number(bay[2]) }
    : placeOf(member);
  const rafter = rafterOf(work, `rafter.${side}.${station}`);
  if (!place || !rafter) return undefined;
  return {
    lead: measures(place, tools[tool] ?? 'rule'),
    helper: steadies(besides(work, place, rafter)),
    things: [],
  };
};

/** A hold on a rafter out of the way of work at one of its ends. */
export const besides = (
  work: Work,
  place: Place,
  rafter: NonNullable<ReturnType<typeof rafterOf>>,
): Place => {
  const { plumbCutLength } = work.scheme.common;
  const low = place.at[2] < (rafter.top.z + rafter.heel.z) / 2;
  const span = rafter.heel.out - rafter.top.out;
  const out = rafter.top.out + span * (low ? 0.25 : 0.78);
  const at = onRafter(work, rafter, { out, down: plumbCutLength * 0.6 });
  return { at, grip: at, from: [place.from[0], low ? 0 : -signOf(rafter.side) * 0.6, 0] };
};

const heelOfStation = (work: Work, side: Side, station: number): Place | undefined => {
  const rafter = rafterOf(work, `rafter.${side}.${station}`);
  return rafter && heelPlace(work, rafter);
};

const rowReading = (work: Work, { at, tool, from }: Of<'read'>): CrewAtWork | undefined => {
  const [, name, number] = at.split('.');
  const side = name as Side;
  const station = Number(number);
  const rafter = rafterOf(work, `rafter.${side}.${station}`);
  const mark = work.scheme.stations[station - 1] ?? 0;
  const place = rafter ? heelPlace(work, rafter) : platePlace(work, side, mark);
  if (tool === 'tape') {
    const start = from === 'last' ? (work.scheme.stations[station - 2] ?? 0) : 9;
    const datum = platePlace(work, side, Math.max(9, start));
    const inner = (p: Vec3): Vec3 => [p[0], datum.at[1] - signOf(side) * 3, datum.at[2] + 1];
    const reads: Place = { ...place, at: [place.at[0], inner(place.at)[1], inner(place.at)[2]] };
    return {
      lead: { ...steadies(reads, 'measure'), tool: 'tape' },
      helper: steadies({ ...datum, at: inner(datum.at) }),
      things: [{ kind: 'tape', from: inner(datum.at), to: reads.at }],
    };
  }
  if (!rafter) return undefined;
  const top = onRafter(work, rafter, { out: rafter.heel.out - 1, down: -0.9, off: 0.5 });
  if (tool === 'straightedge') {
    const edge = add(top, [0, 0, 0.4]);
    return {
      lead: { ...measures({ ...place, at: edge, grip: add(edge, [16, 0, 0]) }, 'rule'), doing: 'level' },
      helper: steadies(besides(work, place, rafter)),
      things: [{ kind: 'level', from: add(edge, [-30, 0, 0]), to: add(edge, [30, 0, 0]) }],
    };
  }
  const last = rafterOf(work, `rafter.${side}.${work.scheme.stations.length}`);
  return {
    lead: measures({ ...place, at: top }, 'rule'),
    helper:
      last && station < work.scheme.stations.length - 2
        ? steadies(heelPlace(work, last), 'stretch')
        : steadies(besides(work, place, rafter)),
    things: [],
  };
};
