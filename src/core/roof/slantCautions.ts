import { hair, isOver } from '../units/hair';
import { shortInches } from '../units/lengthText';
import type { Caution } from './figured';
import type { FiguredHip } from './figuredSlants';
import type { Framing } from './framing';
import { openingAt, tailReaches, woodOf } from './hips';
import { limits } from './limits';
import type { RoofPlan } from './plan';
import type { PlaneGroup } from './planes';

/** Hips and valleys that are legal to figure but unwise to build. */

const show = (value: number): string => `${shortInches(value)} in`;

type Checked = {
  readonly plan: RoofPlan;
  readonly framing: Framing;
  readonly groups: readonly PlaneGroup[];
  readonly hips?: readonly FiguredHip[];
  readonly valleys?: readonly FiguredHip[];
};

/** Where a caution points in the plan: a wing's valleys are all of one stock or told by their first wing. */
const keyOf = { hip: 'hip.depth', valley: 'wings.0.valley.depth' } as const;

export const slantCautions = (so: Checked): readonly Caution[] => [
  ...(so.hips ? of('hip', so.hips, so) : []),
  ...(so.valleys ? of('valley', so.valleys, so) : []),
];

const of = (kind: 'hip' | 'valley', all: readonly FiguredHip[], so: Checked): readonly Caution[] =>
  [shallow(kind, so), bearsLittle(kind, all), tailsApart(kind, so)].filter((one) => one !== undefined);

/** IRC R802.3 up to 2015, R802.4.3 since, read second hand: no less deep than the cut end of the rafters. */
const shallow = (
  kind: 'hip' | 'valley',
  { framing: { form, edges }, groups }: Checked,
): Caution | undefined => {
  const cut = Math.max(...groups.map(({ cuts }) => cuts.plumbCutLength));
  const depths = edges
    .filter((edge) => edge.kind === kind && !openingAt(form, edge))
    .map((edge) => woodOf(form, edge)?.depth ?? cut);
  const depth = Math.min(...depths);
  return isOver(cut, depth)
    ? {
        code: `${kind}Shallow`,
        at: keyOf[kind],
        text: `The ${kind} is ${show(depth)} deep and the jacks are cut ${show(cut)} long; it has to be as deep as their cut.`,
      }
    : undefined;
};

const bearsLittle = (kind: 'hip' | 'valley', all: readonly FiguredHip[]): Caution | undefined => {
  const seat = Math.min(...all.filter(isOnPlate).map((one) => one.seat));
  return isOver(limits.bearing, seat)
    ? {
        code: `${kind}Bearing`,
        at: keyOf[kind],
        text: `At the height of the other rafters the ${kind}'s seat is ${show(seat)}; ${show(limits.bearing)} is the least. A deeper ${kind} reaches the plate.`,
      }
    : undefined;
};

/** Valleys of a dormer hang on its trimmers. */
const isOnPlate = ({ shorteningBottom }: FiguredHip): boolean => shorteningBottom === 0;

/** Sixteenths of an inch are cut; ours. */
const apart = 1 / 16;

const tailsApart = (kind: 'hip' | 'valley', { framing: { form, edges } }: Checked): Caution | undefined => {
  const gaps = edges
    .filter((edge) => edge.kind === kind && !openingAt(form, edge))
    .map((edge) => {
      const reaches = tailReaches(form, edge);
      return Math.max(...reaches) - Math.min(...reaches);
    });
  const most = Math.max(0, ...gaps);
  return isOver(most, apart + hair)
    ? {
        code: 'tailsApart',
        at: kind === 'hip' ? 'overhang' : 'wings.0.overhang',
        text: `The tail lines of both sides pass the ${kind} ${show(most)} apart, measured along it: their fascias do not meet there at one height. With unequal slopes that takes unequal overhangs.`,
      }
    : undefined;
};
