import type { Level } from '../../src/core/level/level';
import type { ToolId } from '../../src/core/instruments/tool';
import { stationsOf, upperStations } from '../../src/core/level/layout';
import { ends, sides } from '../../src/core/roof/side';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { proud } from '../../src/core/site/decideMember';
import { figuredPost } from '../../src/core/site/decidePost';
import { rafterId } from '../../src/core/site/ids';
import { figuredTop } from '../../src/core/site/posed';
import { shows } from '../../src/core/site/shows';
import { begin, take } from '../../src/core/site/take';

/** A whole hut in about a hundred acts: each thing is shown once and handed on to the crew. Every act goes as it is given. */
export const hutScript = (level: Level, seed: number): readonly Action[] => {
  let attempt = begin(level, seed, 'own');
  const act = (action: Action): void => {
    attempt = take(attempt, action);
    const outcome = attempt.steps.at(-1)?.outcome;
    if (!outcome?.ok) throw new Error(`${JSON.stringify(action)}: ${outcome?.why}`);
  };
  const now = (): Attempt => attempt;
  ground(act, now);
  ridge(act, now);
  sides.forEach((side) => stack(act, now, side));
  finish(act, now);
  return attempt.steps.map(({ action }) => action);
};

type Act = (action: Action) => void;
type Now = () => Attempt;

const sixteenth = (value: number): number => Math.round(value * 16) / 16 + 0;

/** Reads as an honest eye does, to the sixteenth, and says it. */
const read = (
  act: Act,
  now: Now,
  reach: { readonly tool: ToolId; readonly at: string; readonly from?: string },
): number => {
  const shown = shows(now(), reach);
  const said = typeof shown === 'number' ? sixteenth(shown) : (shown ?? '');
  act({ type: 'read', ...reach, said });
  return Number(said);
};

/** The last acts, handed on to the station named. */
const handOn = (act: Act, now: Now, { acts, to }: { readonly acts: number; readonly to: number }): void => {
  const last = now().steps.length - 1;
  act({ type: 'carryOn', like: [last - acts + 1, last], to });
};

const ground = (act: Act, now: Now): void => {
  const { level } = now();
  [...sides, ...ends].forEach((wall) => act({ type: 'brace', kind: 'wall', from: wall, to: 'ground' }));
  sides.forEach((side) =>
    ['A', 'mid', 'B'].forEach((at) => {
      const low = read(act, now, { tool: 'waterLevel', at: `plate.${side}.${at}` });
      if (low < -1 / 8) act({ type: 'mendWall', wall: `plate.${side}.${at}`, how: 'shim', by: -low });
    }),
  );
  act({ type: 'setTie', kind: 'joist', station: 1 });
  handOn(act, now, { acts: 1, to: stationsOf(level).length });
  (['plate.street', 'plate.yard', 'ridge'] as const).forEach((on) =>
    act({ type: 'mark', on, datum: 'endA', spacing: level.plan.spacing, faces: 2 }),
  );
  const long = read(act, now, { tool: 'tape', at: 'board.ridge' }) - level.plan.length;
  act({ type: 'trim', member: 'board.ridge', cut: 'end', by: sixteenth(long) });
  (['platform', 'ladder', 'openings', 'gear'] as const).forEach((what) =>
    act({ type: 'makeReady', what, at: 'site' }),
  );
  act({ type: 'makeReady', what: 'anchor', at: 'joists' });
};

const ridge = (act: Act, now: Now): void => {
  const { level } = now();
  const last = stationsOf(level).length;
  const pairs = sides.flatMap((side) => [rafterId(side, 1), rafterId(side, last)]);
  ([1, 2] as const).forEach((at) =>
    act({ type: 'setPost', at, height: sixteenth(figuredPost({ level })), fixed: 'both' }),
  );
  act({ type: 'place', member: 'ridge', at: 'posts', board: 'board.ridge' });
  pairs.forEach((id, i) => {
    act({ type: 'place', member: id, at: 'mark', board: `board.${i + 1}` });
    act({ type: 'tack', joint: `ridge:${id}`, nails: 2 });
  });
  ends.forEach((end) => settle(act, now, end));
  pairs.forEach((id) => act({ type: 'tack', joint: `heel:${id}`, nails: 2 }));
  ends.forEach((from) => read(act, now, { tool: 'level', at: 'ridge', from }));
  pairs.forEach((id) =>
    (['ridge', 'heel', 'heelTie'] as const).forEach((kind) =>
      act({ type: 'nailOff', joint: `${kind}:${id}` }),
    ),
  );
  ends.forEach((from) => act({ type: 'brace', kind: 'across', from, to: 'floor' }));
  act({ type: 'brace', kind: 'along', from: 'ridge', to: 'floor' });
};

const settle = (act: Act, now: Now, end: 'A' | 'B'): void => {
  const { span, ridge: board } = now().level.plan;
  const low = sixteenth(
    figuredTop(now().level) - read(act, now, { tool: 'tape', at: `ridge.${end}.height` }),
  );
  if (low !== 0) act({ type: 'raise', end, by: low });
  const off = sixteenth(
    span / 2 - board.thickness / 2 - read(act, now, { tool: 'tape', at: `ridge.${end}.centre` }),
  );
  if (off !== 0) act({ type: 'shift', member: 'ridge', at: end, by: off });
};

const stack = (act: Act, now: Now, side: 'street' | 'yard'): void => {
  const last = stationsOf(now().level).length;
  const id = rafterId(side, 2);
  const board = Object.keys(now().site.members).filter((member) => member.startsWith('rafter')).length + 1;
  act({ type: 'line', kind: 'string', from: rafterId(side, 1), to: rafterId(side, last), off: 0.75 });
  act({ type: 'place', member: id, at: 'mark', board: `board.${board}` });
  (['ridge', 'heel'] as const).forEach((kind) => act({ type: 'tack', joint: `${kind}:${id}`, nails: 2 }));
  handOn(act, now, { acts: 3, to: last - 1 });
  blocks(act, now, side);
  read(act, now, { tool: 'string', at: `plane.${side}.5` });
  (['ridge', 'heel', 'heelTie'] as const).forEach((kind) => act({ type: 'nailOff', joint: `${kind}:${id}` }));
  handOn(act, now, { acts: 3, to: last - 1 });
  (['near', 'far'] as const).forEach((end) =>
    act({ type: 'nailOff', joint: `blockEnd:block.${side}.1.${end}` }),
  );
  act({ type: 'nailOff', joint: `blockPlate:block.${side}.1` });
  handOn(act, now, { acts: 3, to: last - 1 });
};

/** Driven in while the heels are on tacks; the last bay ends at a nailed rafter, so its block is trimmed to drop in. */
const blocks = (act: Act, now: Now, side: 'street' | 'yard'): void => {
  const bays = stationsOf(now().level).length - 1;
  act({ type: 'place', member: `block.${side}.1`, at: 'drive' });
  handOn(act, now, { acts: 1, to: bays - 1 });
  const over = proud(now(), `block.${side}.${bays}`);
  if (over > 0)
    act({ type: 'trim', member: `block.${side}.${bays}`, cut: 'end', by: Math.ceil(over * 16) / 16 });
  act({ type: 'place', member: `block.${side}.${bays}`, at: 'drop' });
};

const finish = (act: Act, now: Now): void => {
  const { level } = now();
  const last = stationsOf(level).length;
  sides.forEach((side) =>
    act({
      type: 'line',
      kind: 'chalk',
      from: rafterId(side, 1),
      to: rafterId(side, last),
      off: collarLine(now()),
    }),
  );
  upperStations(level).forEach((n) => {
    act({ type: 'place', member: `collar.${n}`, at: 'line' });
    sides.forEach((side) => act({ type: 'nailOff', joint: `collarEnd:collar.${n}.${side}` }));
  });
  ([1, 2] as const).forEach((n) => act({ type: 'stand', who: n === 1 ? 'lead' : 'helper', where: 'clear' }));
  (['post.1', 'post.2'] as const).forEach((member) => act({ type: 'takeOut', member }));
  read(act, now, { tool: 'eye', at: 'punch' });
  act({ type: 'handOver' });
};

/** Height the tools offer for the collar line: see the places of the mark tool. */
const collarLine = ({ level }: Attempt): number => sixteenth((2 / 3) * figuredTop(level));
