import { describe, expect, it } from 'vitest';
import { hands, play } from '../../src/core/hands/play';
import type { HandName } from '../../src/core/hands/hand';
import { replay } from '../../src/core/hands/opened';
import type { Attempt } from '../../src/core/site/attempt';
import { stripOf } from '../../src/present/strip';
import { catalogues } from '../../src/present/words/messages';
import { levelOf } from '../site/levels';

const played = new Map<string, Attempt>();
const run = (hand: HandName, job: 'garden-hut' | 'boathouse' = 'garden-hut'): Attempt => {
  const key = `${hand} ${job}`;
  const attempt = played.get(key) ?? play(levelOf(job), hand, { seed: 7, mode: 'own' });
  played.set(key, attempt);
  return attempt;
};

const standing = (attempt: Attempt, steps: number): Attempt['site'] =>
  replay(
    attempt,
    attempt.steps.slice(0, steps).map(({ action }) => action),
  ).site;

describe('the strip of a run', () => {
  it('tells a whole job by what came to stand, each thing once, the hand-over last', () => {
    const told = stripOf(run('expert')).map(({ stands }) => stands);
    expect(new Set(told).size).toBe(told.length);
    for (const thing of ['joists', 'ridge', 'pairs', 'bothSides', 'collars'] as const)
      expect(told).toContain(thing);
    expect(told.at(-1)).toBe('handedOver');
  });

  it('shows the first moment at which it stands, and its minutes', () => {
    const attempt = run('expert');
    const ridge = stripOf(attempt).find(({ stands }) => stands === 'ridge');
    if (!ridge) throw new Error('no ridge in the strip');
    expect(standing(attempt, ridge.steps).ridge).toBeDefined();
    expect(standing(attempt, ridge.steps - 1).ridge).toBeUndefined();
    expect(ridge.minutes).toBe(standing(attempt, ridge.steps).minutes);
  });

  it('tells nothing that was taken back', () => {
    const done = run('expert');
    const ridge = stripOf(done).find(({ stands }) => stands === 'ridge');
    if (!ridge) throw new Error('no ridge in the strip');
    const acts = done.steps.slice(0, ridge.steps).map(({ action }) => action);
    const back = replay(done, [...acts, { type: 'undo', step: ridge.steps - 1 }]);
    expect(stripOf(back).map(({ stands }) => stands)).not.toContain('ridge');
  });

  it('tells one side before both where one is stacked first', () => {
    const level = levelOf('garden-hut');
    const done = run('expert');
    const yardLater = done.steps.filter(
      ({ action }) => !(action.type === 'place' && /^rafter\.yard\.[2-8]$/.test(action.member)),
    );
    const held: Attempt = { ...done, level, steps: yardLater };
    const told = stripOf(held).map(({ stands }) => stands);
    expect(told).toContain('street');
    expect(told).not.toContain('bothSides');
  });

  it.each(hands.map(({ name }) => name))(
    'of the hand %s is short, in order, and ends where the run ended',
    (hand) => {
      for (const job of ['garden-hut', 'boathouse'] as const) {
        const attempt = run(hand, job);
        const shots = stripOf(attempt);
        expect(shots.length).toBeLessThanOrEqual(9);
        expect(shots.map(({ steps }) => steps)).toEqual(
          [...new Set(shots.map(({ steps }) => steps))].sort((a, b) => a - b),
        );
        expect(shots.at(-1)?.steps).toBe(attempt.steps.length);
      }
    },
  );

  it('has a caption in both languages for all that may stand', () => {
    for (const words of Object.values(catalogues))
      for (const hand of hands)
        for (const { stands } of stripOf(run(hand.name)))
          expect(words.ui.debrief.stands[stands]).toBeTruthy();
  });
});

describe('counted crew-minutes', () => {
  it('are one or many', () => {
    expect(catalogues.en.ui.site.minutes(1)).toBe('crew-minute');
    expect(catalogues.en.ui.site.minutes(1.5)).toBe('crew-minutes');
    expect(catalogues.es.ui.site.minutes(1)).toBe('minuto de equipo');
    expect(catalogues.es.ui.site.minutes(0)).toBe('minutos de equipo');
  });
});
