import { describe, expect, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import { shapesOf } from '../../src/core/hands/shapes';
import { boardIds } from '../../src/core/level/planted';
import { replay } from '../../src/core/hands/opened';
import { begin, take } from '../../src/core/site/take';
import type { JointId, RafterId } from '../../src/core/site/ids';
import type { Attempt } from '../../src/core/site/attempt';
import type { Action } from '../../src/core/site/action';
import { labelText, spotName } from '../../src/present/words/spotNames';
import { catalogues } from '../../src/present/words/messages';
import { spotsFor } from '../../src/present/offers/spots';
import { toolset } from '../../src/present/offers/toolset';
import { levelOf } from '../site/levels';
import { findOffer, shapeText, shapesOnOffer } from './offeredActs';

/** Runs of a crew that knows its trade, by every way of hanging a ridge. */
const runs = [
  { id: 'garden-hut', hang: 'posts', seed: 3 },
  { id: 'garden-hut', hang: 'hand', seed: 4 },
  { id: 'boathouse', hang: 'machine', seed: 5 },
  { id: 'ferry-shelter', hang: 'posts', seed: 6 },
] as const;

describe.each(runs)('everything an expert does on $id, ridge by $hang', ({ id, hang, seed }) => {
  const level = levelOf(id);
  const played = play(level, 'expert', { seed, wanted: { hang } });

  it('stands somewhere in the rail when it is done', () => {
    let attempt = begin(level, seed, 'own');
    const unreachable: Action[] = [];
    for (const { action } of played.steps) {
      if (action.type !== 'carryOn' && !findOffer(attempt, action)) unreachable.push(action);
      attempt = take(attempt, action);
    }
    expect(unreachable).toEqual([]);
  }, 120_000);

  it.each(['en', 'es'] as const)(
    'has a name in %s for every place and every offer',
    (lang) => {
      const words = catalogues[lang];
      let attempt = begin(level, seed, 'own');
      const bare = new Set<string>();
      played.steps.forEach(({ action }, step) => {
        attempt = take(attempt, action);
        if (step % 20 !== 0) return;
        for (const { tool } of toolset)
          for (const spot of spotsFor(attempt, tool)) {
            const texts = [
              spotName(words, spot),
              ...spot.offers.flatMap(({ label, picker }) => [
                labelText(words, label),
                ...(picker?.kind === 'choice' ? picker.options.map((o) => labelText(words, o.label)) : []),
              ]),
            ];
            for (const text of texts)
              if (text === '' || /undefined|NaN/.test(text)) bare.add(`${tool} ${spot.id}`);
          }
      });
      expect([...bare]).toEqual([]);
    },
    120_000,
  );
});

it('offers every kind of act somewhere in the course of a job', () => {
  const kinds = new Set<string>();
  for (const { id, hang, seed } of runs) {
    let attempt = begin(levelOf(id), seed, 'own');
    play(levelOf(id), 'expert', { seed, wanted: { hang } }).steps.forEach(({ action }, step) => {
      attempt = take(attempt, action);
      if (step % 5 !== 0) return;
      for (const { tool } of toolset)
        for (const { offers } of spotsFor(attempt, tool))
          for (const { picker, act } of offers) {
            const first =
              picker?.kind === 'choice' ? (picker.options[0]?.value ?? '') : (picker?.start ?? '');
            kinds.add(act(first).type);
          }
    });
  }
  // Taking back is a button of its own, in practice only.
  expect([...kinds].sort()).toEqual(
    (
      'agree brace carryOn cutTail draw handOver hookOn judge letGo line makeReady mark mendWall nailOff place raise read ' +
      'setPost setTie shift signal stand swap tack takeOut trim'
    ).split(' '),
  );
}, 120_000);

it('offers work that is out of order like any other', () => {
  const level = levelOf('garden-hut');
  const early: readonly Action[] = [
    { type: 'setPost', at: 1, height: 0, fixed: 'both' },
    { type: 'place', member: 'ridge', at: 'posts' },
    { type: 'handOver' },
  ];
  const attempt = begin(level, 1, 'check-off');
  const post = spotsFor(attempt, 'set').find(({ id }) => id === 'post.1');
  expect(post?.offers[0]?.id).toBe('post');
  for (const action of early.slice(1)) expect(findOffer(attempt, action)).toBeDefined();
});

it('gives the same places in the same order in every mode', () => {
  const level = levelOf('boathouse');
  const ids = (['list', 'nudge', 'own', 'check-off'] as const).map((mode) =>
    toolset.map(({ tool }) => spotsFor(begin(level, 2, mode), tool).map(({ id }) => id)),
  );
  for (const other of ids) expect(other).toEqual(ids[0]);
});

describe('what a random hand draws from', () => {
  const known = (id: (typeof runs)[number]['id']): ReadonlySet<string> => {
    const level = levelOf(id);
    return new Set(shapesOf(level, boardIds(level)).map(shapeText));
  };

  it.each(runs)('holds everything a screen offers on $id, ridge by $hang', ({ id, hang, seed }) => {
    const shapes = known(id);
    let attempt = begin(levelOf(id), seed, 'own');
    const missing = new Set<string>();
    play(levelOf(id), 'expert', { seed, wanted: { hang } }).steps.forEach(({ action }, step) => {
      attempt = take(attempt, action);
      if (step % 10 === 0)
        for (const text of shapesOnOffer(attempt)) if (!shapes.has(text)) missing.add(text);
    });
    expect([...missing]).toEqual([]);
  });

  it('holds nothing that a screen does not come to offer in one run or another', () => {
    const level = levelOf('garden-hut');
    const offered = new Set<string>();
    const look = (steps: Attempt['steps'], seed: number): void => {
      let attempt = begin(level, seed, 'own');
      steps.forEach(({ action }) => {
        for (const text of shapesOnOffer(attempt)) offered.add(text);
        attempt = take(attempt, action);
      });
    };
    look(play(level, 'expert', { seed: 3, wanted: { hang: 'posts', upper: 'collars' } }).steps, 3);
    look(play(level, 'expert', { seed: 4, wanted: { hang: 'hand', upper: 'straps' } }).steps, 4);
    for (const seed of [41, 42, 43]) look(play(level, 'random', { seed }).steps, seed);
    // Whoever stacks from A before the middle and the far end stand is offered those by the block as well.
    const row = ([1, 2, 3, 4, 5, 6, 7, 8] as const).flatMap((n) =>
      (['street', 'yard'] as const).map((side): Action => ({
        type: 'place',
        member: `rafter.${side}.${n}`,
        at: 'mark',
        board: `board.${2 * n + (side === 'yard' ? 1 : 0)}`,
      })),
    );
    const up = play(level, 'expert', { seed: 3, wanted: { hang: 'posts' } }).steps.map(
      ({ action }) => action,
    );
    const landed = up.findIndex((act) => act.type === 'place' && act.member === 'ridge') + 1;
    let stacked = replay({ level, seed: 3, mode: 'own' }, up.slice(0, landed));
    for (const act of row) {
      for (const text of shapesOnOffer(stacked)) offered.add(text);
      stacked = take(stacked, act);
      if (act.type !== 'place') continue;
      const joint: JointId = `ridge:${act.member as RafterId}`;
      stacked = take(stacked, { type: 'tack', joint, nails: 2 });
    }
    for (const text of shapesOnOffer(stacked)) offered.add(text);
    expect([...known('garden-hut')].filter((text) => !offered.has(text))).toEqual([]);
  });
});
