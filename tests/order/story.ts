import { play } from '../../src/core/hands/play';
import { judgeOrder, type Verdict } from '../../src/core/order/judged';
import type { Level } from '../../src/core/level/level';
import type { Methods } from '../../src/core/level/method';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import type { Mode } from '../../src/core/level/mode';
import { replay } from '../../src/core/hands/opened';

/** Clean runs told again with something moved, left out or added: how one slip shows is asked of such a story. */

export const usual: Methods = {
  hang: 'posts',
  ties: 'joistsFirst',
  stack: 'oneSide',
  upper: 'collars',
  ridgeLength: 'cut',
  tails: 'first',
};

/** The acts of a clean run, single acts only. */
export const cleanActs = (level: Level, way: Methods = usual): readonly Action[] => {
  const key = Object.values(way).join(' ');
  const known = kept.get(level) ?? new Map<string, readonly Action[]>();
  kept.set(level, known);
  const acts = known.get(key) ?? singleActs(level, way);
  known.set(key, acts);
  return acts;
};
const kept = new WeakMap<Level, Map<string, readonly Action[]>>();

const singleActs = (level: Level, way: Methods): readonly Action[] =>
  play(level, 'expert', { seed: 1, wanted: way }).steps.flatMap(({ action, outcome }) => {
    if (action.type !== 'carryOn') return [action];
    const events = outcome.ok ? outcome.events : [];
    return events.flatMap((event): readonly Action[] =>
      event.type === 'tieSet'
        ? [{ type: 'setTie', kind: 'joist', station: Number(event.member.split('.')[1]) }]
        : [],
    );
  });

export type Which = (action: Action) => boolean;

/** All acts of a kind, put off until right after the last act of another kind. */
export const putOff = (acts: readonly Action[], which: Which, until: Which): readonly Action[] => {
  const rest = acts.filter((act) => !which(act));
  const at = rest.findLastIndex(until) + 1;
  return [...rest.slice(0, at), ...acts.filter(which), ...rest.slice(at)];
};

/** All acts of a kind, brought forward to right after the first act of another kind. */
export const broughtForward = (acts: readonly Action[], which: Which, to: Which): readonly Action[] => {
  const rest = acts.filter((act) => !which(act));
  const at = rest.findIndex(to) + 1;
  return [...rest.slice(0, at), ...acts.filter(which), ...rest.slice(at)];
};

export const told = (
  level: Level,
  acts: readonly Action[],
  run: { readonly seed?: number; readonly mode?: Mode } = {},
): Attempt => replay({ level, seed: run.seed ?? 1, mode: run.mode ?? 'check-off' }, acts);

/** Verdicts by rule: the share lost, the worst where there are several. */
export const lostOf = (attempt: Attempt): Readonly<Record<string, number>> => {
  const worst = new Map<string, number>();
  for (const { rule, lost } of judgeOrder(attempt)) worst.set(rule, Math.max(worst.get(rule) ?? 0, lost));
  return Object.fromEntries(worst);
};

export const brokenOf = (attempt: Attempt): readonly Verdict[] =>
  judgeOrder(attempt).filter(({ lost }) => lost > 0);

export const type =
  (wanted: Action['type'], text?: RegExp): Which =>
  (action) =>
    action.type === wanted && (text === undefined || text.test(JSON.stringify(action)));

const withoutChalk = (acts: readonly Action[]): readonly Action[] =>
  acts.map((act) =>
    act.type === 'place' && act.member.startsWith('collar') ? { ...act, at: 'mark' as const } : act,
  );

/** Each rule broken once, and by nothing else than the one act that came too early; O4 and O6 take another site. */
export const slipsOf = (clean: readonly Action[]): readonly (readonly [string, readonly Action[]])[] => [
  ['O1', putOff(clean, type('brace', /wall/), type('place', /"ridge"/))],
  ['O2', putOff(clean, type('setTie'), type('takeOut', /post/))],
  ['O3', putOff(clean, type('mark'), type('place', /rafter\.street\.2"/))],
  [
    'O5',
    broughtForward(
      clean,
      type('nailOff', /"ridge:rafter\.street\.1"/),
      type('tack', /"ridge:rafter\.street\.1"/),
    ),
  ],
  ['O7', putOff(clean, type('brace', /along/), type('tack', /heel:rafter\.street\.2"/))],
  ['O8', putOff(clean, type('line', /string.*street/), type('nailOff', /"heel:rafter\.street/))],
  ['O9', putOff(withoutChalk(clean), type('line', /chalk/), type('place', /collar/))],
  ['O10', putOff(clean, type('nailOff', /collarEnd/), type('takeOut', /post/))],
];
