import type { Level } from '../level/level';
import type { Methods } from '../level/method';
import { oneOf, type Dice } from './dice';

/** One accepted way of building, by chance where none is wanted. */
export const wayOf = (level: Level, dice: Dice, wanted: Partial<Methods> = {}): Methods => {
  const { hang, ties, stack, upper, ridgeLength } = level.methods;
  return {
    hang: wanted.hang ?? oneOf(dice, hang) ?? 'posts',
    ties: wanted.ties ?? oneOf(dice, ties) ?? 'joistsFirst',
    stack: wanted.stack ?? oneOf(dice, stack) ?? 'oneSide',
    upper: wanted.upper ?? oneOf(dice, upper) ?? 'collars',
    ridgeLength: wanted.ridgeLength ?? oneOf(dice, ridgeLength) ?? 'cut',
  };
};

/** Every accepted way of building a level. */
export const everyWay = ({ methods }: Level): readonly Methods[] =>
  methods.hang.flatMap((hang) =>
    methods.ties.flatMap((ties) =>
      methods.stack.flatMap((stack) =>
        methods.upper.flatMap((upper) =>
          methods.ridgeLength.map((ridgeLength) => ({ hang, ties, stack, upper, ridgeLength })),
        ),
      ),
    ),
  );
