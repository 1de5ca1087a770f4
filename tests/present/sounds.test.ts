import { describe, expect, it } from 'vitest';
import { spriteTable } from '../../src/audio/spriteTable';
import { play } from '../../src/core/hands/play';
import type { Action, Of } from '../../src/core/site/action';
import type { Decision } from '../../src/core/site/attempt';
import type { SiteEvent } from '../../src/core/site/event';
import { freshCaption } from '../../src/present/caption';
import { mostTimes, soundNames, soundsFor } from '../../src/present/sounds';
import { catalogues } from '../../src/present/words/messages';
import { levelOf } from '../site/levels';

/** One act of each type or more, and the names of what is heard of it. An empty list is silence on purpose. */
const acts: { readonly [T in Action['type']]: readonly (readonly [act: Of<T>, ...names: string[]])[] } = {
  agree: [[{ type: 'agree', topic: 'signals', value: 'standard' }]],
  makeReady: [
    [{ type: 'makeReady', what: 'ladder', at: 'site' }, 'ladder'],
    [{ type: 'makeReady', what: 'gear', at: 'site' }, 'clip'],
  ],
  read: [
    [{ type: 'read', tool: 'tape', at: 'ridge.A.height', said: 50 }, 'tape'],
    [{ type: 'read', tool: 'level', at: 'ridge.A.level', said: 'level' }, 'tick'],
    [{ type: 'read', tool: 'eye', at: 'board.1', said: 'sound' }],
  ],
  judge: [[{ type: 'judge', subject: 'board.1', call: 'sound' }, 'pencil']],
  mark: [[{ type: 'mark', on: 'ridge', datum: 'endA', spacing: 24, faces: 2 }, 'tape', 'pencil']],
  mendWall: [
    [{ type: 'mendWall', wall: 'plate.yard.mid', how: 'plane', by: 0.25 }, 'plane'],
    [{ type: 'mendWall', wall: 'plate.yard.mid', how: 'pull', by: 0.25 }, 'creak'],
  ],
  setTie: [[{ type: 'setTie', kind: 'joist', station: 2 }, 'rafter']],
  place: [
    [{ type: 'place', member: 'rafter.yard.2', at: 'mark' }, 'rafter'],
    [{ type: 'place', member: 'block.yard.2', at: 'drop' }, 'block'],
    [{ type: 'place', member: 'block.yard.2', at: 'drive' }, 'block', 'hammer'],
    [{ type: 'place', member: 'ridge', at: 'hands' }, 'ridge'],
    [{ type: 'place', member: 'ridge', at: 'machine' }, 'lift', 'ridge'],
    [{ type: 'place', member: 'strap.2', at: 'line' }, 'lay'],
  ],
  tack: [[{ type: 'tack', joint: 'heel:rafter.yard.2', nails: 2 }, 'hammer']],
  nailOff: [[{ type: 'nailOff', joint: 'heel:rafter.yard.2' }, 'nailer']],
  draw: [[{ type: 'draw', joint: 'heel:rafter.yard.2', nails: 1 }, 'creak']],
  hookOn: [[{ type: 'hookOn', hitch: 'twoPoint', tagLine: true }, 'chain']],
  stand: [
    [{ type: 'stand', who: 'lead', where: 'ladder' }, 'ladder'],
    [{ type: 'stand', who: 'helper', where: 'clear' }, 'steps'],
  ],
  signal: [
    [{ type: 'signal', sign: 'lower', by: 1 }, 'lift'],
    [{ type: 'signal', sign: 'stop', by: 0 }, 'idle'],
  ],
  setPost: [[{ type: 'setPost', at: 1, height: 60, fixed: 'both' }, 'knock']],
  raise: [[{ type: 'raise', end: 'A', by: 0.5 }, 'knock']],
  shift: [[{ type: 'shift', member: 'ridge', at: 'mid', by: 0.5 }, 'knock']],
  brace: [[{ type: 'brace', kind: 'along', from: 'A', to: 'B' }, 'brace']],
  letGo: [[{ type: 'letGo' }, 'slack']],
  line: [
    [{ type: 'line', kind: 'string', from: 'rafter.yard.1', to: 'rafter.yard.9', off: 1 }, 'string'],
    [{ type: 'line', kind: 'chalk', from: 'rafter.yard.1', to: 'rafter.yard.9', off: 1 }, 'chalk'],
  ],
  trim: [
    [{ type: 'trim', member: 'rafter.yard.2', cut: 'plumb', by: 0.25 }, 'saw'],
    [{ type: 'trim', member: 'rafter.yard.2', cut: 'wedge', by: 0.25 }, 'plane'],
  ],
  cutTail: [[{ type: 'cutTail', member: 'rafter.yard.2' }, 'saw']],
  swap: [[{ type: 'swap', member: 'rafter.yard.2', board: 'board.3', turn: false }, 'rafter']],
  takeOut: [
    [{ type: 'takeOut', member: 'string.yard' }, 'string'],
    [{ type: 'takeOut', member: 'post.1' }, 'knock'],
    [{ type: 'takeOut', member: 'block.yard.2' }, 'creak', 'block'],
  ],
  carryOn: [[{ type: 'carryOn', like: [3, 6], to: 9 }, 'rafter', 'nailer']],
  handOver: [[{ type: 'handOver' }]],
  undo: [[{ type: 'undo', step: 3 }]],
};

const nailed: SiteEvent = { type: 'nailed', joint: 'heel:rafter.yard.2', nails: 3 };
const placed: SiteEvent = { type: 'placed', member: 'rafter.yard.2', at: 'mark', x: 24 };

const done = (...events: readonly SiteEvent[]): Decision => ({ ok: true, events });

const eventsOf = ({ type }: Action): Decision =>
  type === 'carryOn' ? done(placed, nailed, placed, nailed) : done(nailed);

const namesOf = (action: Action, outcome: Decision): readonly string[] =>
  soundsFor(action, outcome).map(({ name }) => name);

const every = Object.values(acts).flat() as readonly (readonly [Action, ...string[]])[];

describe('what is heard of an act', () => {
  it.each(every.map(([act, ...names]) => ({ act, names })))('$act.type: $names', ({ act, names }) => {
    expect(namesOf(act, eventsOf(act))).toEqual(names);
  });

  it('is a dull tap when it does not go, a knock when it is stopped, and nothing when it is taken back', () => {
    for (const [act] of every.filter(([{ type }]) => type !== 'undo')) {
      expect(namesOf(act, { ok: false, why: 'over' })).toEqual(['no']);
      expect(namesOf(act, { ok: false, why: 'topPlate', stop: true })).toEqual(['stop']);
      const stopped: SiteEvent = { type: 'stopped', danger: 'topPlate', action: act.type };
      expect(namesOf(act, done(placed, stopped))).toEqual(['stop']);
    }
    expect(namesOf({ type: 'undo', step: 0 }, { ok: false, why: 'over' })).toEqual([]);
  });

  it('ends in a fall where the roof comes down, in a creak where nails give', () => {
    for (const [act] of every.filter(([{ type }]) => type !== 'undo')) {
      expect(namesOf(act, done(placed, { type: 'cameDown', why: 'sideways' })).at(-1)).toBe('fall');
      expect(namesOf(act, done(placed, { type: 'slipped', rests: {} })).at(-1)).toBe('creak');
    }
  });

  it('counts nails', () => {
    for (const nails of [1, 2, 3]) {
      const [tacked] = soundsFor({ type: 'tack', joint: 'heel:rafter.yard.2', nails }, done());
      expect(tacked?.times).toBe(nails);
    }
    const [off] = soundsFor({ type: 'nailOff', joint: 'heel:rafter.yard.2' }, done(nailed));
    expect(off?.times).toBe(3);
    const [many] = soundsFor(
      { type: 'nailOff', joint: 'heel:rafter.yard.2' },
      done(...Array(9).fill(nailed)),
    );
    expect(many?.times).toBe(mostTimes);
  });

  it('makes use of every sound there is', () => {
    const used = new Set<string>(['no', 'stop', 'fall', ...every.flatMap(([, ...names]) => names)]);
    expect(soundNames.filter((name) => !used.has(name))).toEqual([]);
  });
});

describe('a whole run', () => {
  it.each([
    ['garden-hut', 'expert'],
    ['garden-hut', 'random'],
    ['boathouse', 'random'],
  ] as const)('of %s by the %s hand asks for nothing unknown and no endless row', (id, hand) => {
    const { steps } = play(levelOf(id), hand, { seed: 5, mode: 'own' });
    const sounds = steps.flatMap(({ action, outcome }) => soundsFor(action, outcome));
    expect(sounds.length).toBeGreaterThan(steps.length / 3);
    for (const { name, times, delay } of sounds) {
      expect(Object.keys(spriteTable)).toContain(name);
      expect(Number.isInteger(times) && times >= 1 && times <= mostTimes).toBe(true);
      expect(delay >= 0 && delay < 5).toBe(true);
    }
  });
});

describe.each(['en', 'es'] as const)('captions in %s', (lang) => {
  const words = catalogues[lang];

  it('say in a few words what is heard, no two alike', () => {
    const told = soundNames.map((name) => words.heard[name]);
    expect(new Set(told).size).toBe(soundNames.length);
    for (const text of told) expect(text.length, text).toBeLessThanOrEqual(22);
  });

  it('stand beside what was said, and not where nothing is heard', () => {
    const told = (action: Action, outcome: Decision) => freshCaption(words, { action, outcome }, 'feet');
    const tack: Action = { type: 'tack', joint: 'heel:rafter.yard.2', nails: 2 };
    expect(told(tack, done()).heard).toBe(words.heard.hammer);
    expect(told(tack, { ok: false, why: 'handBehind', stop: true })).toMatchObject({
      tone: 'stop',
      heard: words.heard.stop,
    });
    expect(told({ type: 'handOver' }, done())).not.toHaveProperty('heard');
  });
});
