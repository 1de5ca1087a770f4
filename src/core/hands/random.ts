import { isOver } from '../site/state';
import { faults } from '../faults/rows';
import { viewOf } from '../order/crew/view';
import type { Action } from '../site/action';
import type { Observation } from '../site/observe';
import { oneOf, type Dice } from './dice';
import { shapesOf, type Shape } from './shapes';
import type { Hand } from './hand';

/** Does anything at all that the site does not refuse, each act as likely as the next. */
export const random: Hand = {
  name: 'random',
  player: (dice) => {
    let shapes: readonly Shape[] | undefined;
    return (attempt) => {
      if (isOver(attempt.site)) return undefined;
      const { seen } = viewOf(attempt);
      shapes ??= shapesOf(attempt.level, seen.boards.all);
      for (let tries = 0; tries < patience; tries++) {
        const shape = oneOf(dice, shapes);
        const act = shape && filled(shape, dice, seen);
        const outcome = act && seen.would(act);
        const early = act?.type === 'handOver' && attempt.steps.length < keepsAt;
        if (act && !early && outcome && (outcome.ok || outcome.stop)) return act;
      }
      return { type: 'handOver' };
    };
  },
};

/** Acts it does before it may hand over: else most runs would end before anything stands. */
const keepsAt = 300;

/** Throws before it gives up and hands over. */
const patience = 2000;

/** Numbers and words are guesses; any board is as good as another. */
const filled = (shape: Shape, dice: Dice, { look, boards }: Observation): Action => {
  if (shape.type === 'read') return { ...shape, said: guess(look(shape), dice) };
  if (shape.type === 'swap') return { ...shape, board: oneOf(dice, boards.all) ?? shape.board };
  return 'by' in shape ? ({ ...shape, by: (dice.below(257) - 128) / 64 } as Action) : shape;
};

const words = ['clean', ...faults.flatMap(({ looks }) => looks ?? [])];

/** Within 2 in of what the picture shows, to a sixteenth; any word of those an eye uses. */
const guess = (shown: number | string | undefined, dice: Dice): number | string =>
  typeof shown === 'number'
    ? Math.round(shown * 16) / 16 + (dice.below(65) - 32) / 16
    : (oneOf(dice, words) ?? 'clean');
