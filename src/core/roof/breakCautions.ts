import { isOver } from '../units/hair';
import { shortInches } from '../units/lengthText';
import { cautionsOf, type Checked } from './cautions';
import type { Caution } from './figured';
import { bearingOf, bearsAt } from './form';
import { limits } from './limits';
import type { GambrelPlan } from './plan';
import type { PlaneGroup } from './planes';

/** Cautions where a side has two slopes: each is given once, for the rafters it is about. */

const show = (value: number): string => `${shortInches(value)} in`;

/** Only the upper rafters come to the ridge and have collars between them. */
const ofUpper = ['ridgeShallow', 'ridgeThin', 'notchDeep', 'slopeLow', 'collarsWide', 'collarsTight'];
/** Only the lower ones stand on the walls. */
const ofLower = [
  'notchDeep',
  'tailThin',
  'tailLong',
  'bearingShort',
  'tiesAbsent',
  'tiesHigh',
  'tiesWide',
  'tieBearing',
];

const upperKeys: Readonly<Record<string, string>> = { seat: 'purlin.seat', slope: 'upperSlope' };

export const breakCautions = (so: Checked, groups: readonly PlaneGroup[]): readonly Caution[] => {
  const { plan, eave } = so;
  if (plan.kind !== 'gambrel') return cautionsOf(so);
  if (eave.part === 'lower') return cautionsOf(so).filter(({ code }) => ofLower.includes(code));
  const lower = groups.find((group) => group.eave.part === 'lower');
  const above = { ...so, topHeight: so.topHeight - bearsAt(eave) };
  return [
    ...cautionsOf(above)
      .filter(({ code }) => ofUpper.includes(code))
      .map((caution) => ({ ...caution, at: upperKeys[caution.at] ?? caution.at })),
    ...(lower ? atBreak(plan, { lower, upper: so }) : []),
  ];
};

type Sides = { readonly lower: PlaneGroup; readonly upper: PlaneGroup };

/** Common practice, no source: the break is held by walls, ties or gussets that somebody designed. */
const atBreak = (plan: GambrelPlan, { lower, upper }: Sides): readonly Caution[] => {
  const { breakOn, breakTies } = plan;
  if (breakOn.what === 'gussets')
    return breakTies
      ? []
      : [
          {
            code: 'breakLoose',
            at: 'breakTies',
            text: 'Only the gussets hold the break: without ties from break to break their size and nails need a design.',
          },
        ];
  const { purlin } = breakOn;
  const least = lower.cuts.plumbCutLength - upper.cuts.heightAbovePlate;
  const bears = bearingOf(upper.eave);
  return [
    ...(isOver(limits.bearing, bears)
      ? [
          {
            code: 'bearingShort',
            at: 'purlin.seat',
            text: `The upper rafters' seat bears ${show(bears)} on the purlin; ${show(limits.bearing)} is the least.`,
          },
        ]
      : []),
    ...(isOver(least, purlin.depth)
      ? [
          {
            code: 'purlinShallow',
            at: 'purlin.depth',
            text: `The purlin is ${show(purlin.depth)} deep and the lower rafters' cut reaches ${show(least)} below the upper ones: the bottom ${show(least - purlin.depth)} of the cut bears on nothing.`,
          },
        ]
      : []),
    ...(breakTies
      ? []
      : [
          {
            code: 'breakLoose',
            at: 'breakTies',
            text: 'Nothing ties the purlins to each other: they need braced walls under them, or ties from break to break.',
          },
        ]),
  ];
};
