import type { Level } from '../level/level';
import type { Methods } from '../level/method';
import { stationsOf } from '../level/layout';
import type { Job } from './fact';
import { brokenIn, itemsOf, randomOrder } from './orderList';

/** How often luck alone breaks each rule: the share of its instances broken over random complete orders. */
export const chanceBroken = (
  job: Job,
  { runs, seed }: { readonly runs: number; readonly seed: number },
): Readonly<Record<string, number>> => {
  const items = itemsOf(job);
  const tally = new Map<string, { broken: number; all: number }>();
  for (let run = 0; run < runs; run++) {
    for (const [key, broken] of brokenIn(randomOrder(items, seed + run * 7919), job)) {
      const rule = key.split(' ')[0] as string;
      const so = tally.get(rule) ?? { broken: 0, all: 0 };
      tally.set(rule, { broken: so.broken + (broken ? 1 : 0), all: so.all + 1 });
    }
  }
  return Object.fromEntries(
    [...tally].map(([rule, { broken, all }]) => [rule, Math.round((broken / all) * 10000) / 10000]),
  );
};

/** Rows are kept by what moves them: pairs on the roof, where collars stand, and the method without its stacking. */
export const chanceKey = ({ level, methods }: Job): string => {
  const { hang, ties, upper, ridgeLength, tails } = methods;
  const every = level.plan.collars ? level.plan.collars.every : 0;
  const part = [
    ...(tails === 'snapped' ? [tails] : []),
    ...(level.stages ? [level.stages.from, level.stages.to] : []),
  ];
  return [stationsOf(level).length, every, level.plan.length, hang, ties, upper, ridgeLength, ...part].join(
    ' ',
  );
};

/** Every way of building a level accepts, once for each row of chances. */
export const waysOf = ({ methods }: Level): readonly Methods[] =>
  methods.hang.flatMap((hang) =>
    methods.ties.flatMap((ties) =>
      methods.upper.flatMap((upper) =>
        methods.ridgeLength.flatMap((ridgeLength) =>
          methods.tails.map((tails) => ({
            hang,
            ties,
            stack: methods.stack[0] ?? 'oneSide',
            upper,
            ridgeLength,
            tails,
          })),
        ),
      ),
    ),
  );
