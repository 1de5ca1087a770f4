import type { Level } from '../level/level';
import type { Methods } from '../level/method';
import { oneOf, type Dice } from './dice';

/** One accepted way of building, by chance where none is wanted. */
export const wayOf = (level: Level, dice: Dice, wanted: Partial<Methods> = {}): Methods => {
  const { hang, ties, stack, upper, ridgeLength, tails } = level.methods;
  return {
    hang: wanted.hang ?? oneOf(dice, hang) ?? 'posts',
    ties: wanted.ties ?? oneOf(dice, ties) ?? 'joistsFirst',
    stack: wanted.stack ?? oneOf(dice, stack) ?? 'oneSide',
    upper: wanted.upper ?? oneOf(dice, upper) ?? 'collars',
    ridgeLength: wanted.ridgeLength ?? oneOf(dice, ridgeLength) ?? 'cut',
    tails: wanted.tails ?? (tails.length > 1 ? oneOf(dice, tails) : tails[0]) ?? 'first',
  };
};

/** Every accepted way of building a level. */
export const everyWay = ({ methods }: Level): readonly Methods[] =>
  methods.hang.flatMap((hang) =>
    methods.ties.flatMap((ties) =>
      methods.stack.flatMap((stack) =>
        methods.upper.flatMap((upper) =>
          methods.ridgeLength.flatMap((ridgeLength) =>
            methods.tails.map((tails) => ({ hang, ties, stack, upper, ridgeLength, tails })),
          ),
        ),
      ),
    ),
  );
