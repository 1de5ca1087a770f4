import { isOver } from '../units/hair';
import { shortInches } from '../units/lengthText';
import type { Caution } from './figured';
import type { Header } from './headers';
import type { RoofPlan } from './plan';

/** Small gables that are legal to figure but unwise to build. */

const show = (value: number): string => `${shortInches(value)} in`;

export const gabletCautions = (
  plan: RoofPlan,
  [header]: readonly Header[],
  ridgeTop: number,
): readonly Caution[] => {
  if (plan.kind !== 'hip' || !header) return [];
  const { wood, leastDepth, topHeight } = header;
  const over = ridgeTop - topHeight;
  return [
    ...(isOver(leastDepth, wood.depth)
      ? [
          {
            code: 'headerShallow',
            at: 'gablet.header.depth',
            text: `The header is ${show(wood.depth)} deep and the plumb cut of the rafters on it is ${show(leastDepth)} long: the bottom ${show(leastDepth - wood.depth)} of the cut bears on nothing.`,
          },
        ]
      : []),
    ...(isOver(plan.ridge.depth, over)
      ? [
          {
            code: 'gabletLow',
            at: 'gablet.back',
            text: `The small gable is ${show(Math.max(0, over))} high over its header, less than the ridge is deep: nothing is left of it to close or to vent.`,
          },
        ]
      : []),
  ];
};
