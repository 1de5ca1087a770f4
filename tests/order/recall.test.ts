import { describe, expect, it } from 'vitest';
import { misplacedIn, recallFor, type RecallStep } from '../../src/core/order/crew/recall';
import { catalogues } from '../../src/present/words/messages';
import { levelOf } from '../site/levels';

const numbers = [1, 2, 3, 4, 5, 6, 7, 8];
const asked = ['garden-hut', 'boathouse', 'hay-barn', 'harbor-office', 'drying-shed', 'wood-store'];

/** Every order of a few things. */
const ordersOf = <T>(things: readonly T[]): readonly (readonly T[])[] =>
  things.length < 2
    ? [things]
    : things.flatMap((first) =>
        ordersOf(things.filter((one) => one !== first)).map((rest) => [first, ...rest]),
      );

const told = ({ code, side }: RecallStep): string => `${code} ${side ?? ''}`;

describe.each(asked)('five jobs of %s to put in order', (id) => {
  const level = levelOf(id);

  it('are the same five for the same number, all different', () => {
    for (const number of numbers) {
      const recall = recallFor(level, number);
      expect(recallFor(level, number)).toEqual(recall);
      expect(new Set(recall?.steps.map(told)).size).toBe(5);
    }
    expect(new Set(numbers.map((n) => JSON.stringify(recallFor(level, n)))).size).toBeGreaterThan(1);
  });

  it('have an order that holds, and more that do not than by luck', () => {
    for (const number of numbers) {
      const orders = ordersOf(recallFor(level, number)?.steps ?? []);
      const right = orders.filter((order) => misplacedIn(level, order).length === 0);
      expect(right.length).toBeGreaterThan(0);
      // Three pairs whose order matters leave at most half of all orders right.
      expect(right.length).toBeLessThanOrEqual(orders.length / 2);
    }
  });

  it('say of each pair the wrong way round why, in both languages', () => {
    for (const number of numbers) {
      const steps = recallFor(level, number)?.steps ?? [];
      for (const order of ordersOf(steps).slice(0, 30))
        for (const { early, late, why } of misplacedIn(level, order)) {
          expect(order.findIndex((step) => told(step) === told(early))).toBeGreaterThan(
            order.findIndex((step) => told(step) === told(late)),
          );
          for (const { rules } of Object.values(catalogues))
            expect(why === 'physics' || (rules[why]?.why.length ?? 0) > 10).toBe(true);
        }
    }
  });
});

describe('what is the wrong way round', () => {
  const hut = levelOf('garden-hut');
  const line = (code: RecallStep['code'], side?: RecallStep['side']): RecallStep => ({
    code,
    ...(side === undefined ? {} : { side }),
  });

  it('is told with its rule', () => {
    expect(misplacedIn(hut, [line('nailEnds'), line('proveEnds')])).toEqual([
      { early: line('proveEnds'), late: line('nailEnds'), why: 'O5' },
    ]);
    expect(misplacedIn(hut, [line('propsOut'), line('upper')])).toEqual([
      { early: line('upper'), late: line('propsOut'), why: 'O10' },
    ]);
  });

  it('is nothing where both ways are good work', () => {
    expect(misplacedIn(hut, [line('layOut'), line('tieWalls')])).toEqual([]);
    expect(misplacedIn(hut, [line('tieWalls'), line('layOut')])).toEqual([]);
    expect(misplacedIn(hut, [line('heels', 'yard'), line('heels', 'street')])).toEqual([]);
  });
});

it('is not asked where the job is too short', () => {
  expect(recallFor(levelOf('pump-house'), 1)).toBeUndefined();
});
