import type { RoofPlan } from '../../core/roof/plan';
import type { Slope } from '../../core/units/slope';
import { shortInches } from '../../core/units/lengthText';
import { lengthText } from '../words/numbers';
import { lumber } from '../../core/stock/lumber';
import { tapeText, type Told } from './figures';

/** What a roof is, in a line or two. */

type Asked = Told & { readonly plan: RoofPlan };

/** `Gable roof, with a wing`. */
export const roofTitle = ({ plan, words: { roofs } }: Asked): string => {
  const { extra } = roofs;
  const more = [
    plan.kind === 'gable' && plan.yard && extra.yard,
    plan.kind === 'gable' && plan.posts && extra.posts,
    plan.kind === 'gable' && plan.standing && extra.standing,
    plan.kind === 'gable' && plan.wings?.length && extra.wings,
    plan.kind === 'gable' && plan.dormers?.length && extra.dormers,
    plan.kind === 'hip' && plan.gablet && extra.gablet,
    plan.kind === 'shed' && plan.between && extra.between,
    plan.kind === 'shed' && plan.highPlate && extra.highPlate,
  ].filter((one): one is string => typeof one === 'string');
  return [roofs.kind[plan.kind], ...more].join(', ');
};

/** Rise over 12, as short as it goes. */
export const in12 = ({ rise, run }: Slope): string => shortInches((12 * rise) / run);

const slopesText = ({ plan, words: { roofs } }: Asked): string => {
  const one = in12(plan.slope);
  const second =
    plan.kind === 'hip'
      ? plan.endSlope
      : plan.kind === 'gambrel'
        ? plan.upperSlope
        : plan.kind === 'gable'
          ? plan.yard?.slope
          : undefined;
  const other = second ? in12(second) : one;
  return other === one ? roofs.facts.slope(one) : roofs.facts.slopes(one, other);
};

/** What was asked for, shortest way: sizes and slope, then boards. */
export const roofFacts = (asked: Asked): readonly string[] => {
  const { plan, words, units } = asked;
  const { facts } = words.roofs;
  const ridge = 'ridge' in plan ? [facts.ridge(boardName(plan.ridge, asked))] : [];
  return [
    `${[
      facts.size(lengthText(plan.span, units), lengthText(plan.length, units)),
      slopesText(asked),
      facts.overhang(tapeText(plan.overhang, units)),
    ].join(', ')}.`,
    `${[facts.rafters(boardName(plan.rafter, asked), tapeText(plan.spacing, units)), ...ridge].join(
      ', ',
    )}. ${plan.reference === 'sheathing' ? facts.sheathed : facts.plates}`,
  ];
};

/** `2×8`, or its actual size where yards have no name for it. */
export const boardName = (
  section: { readonly thickness: number; readonly depth: number },
  { units }: Told,
): string => {
  const { thickness, depth } = section;
  const named = lumber.find((row) => row.thickness === thickness && row.depth === depth)?.nominal;
  if (named !== undefined && units !== 'mm') return named;
  return `${tapeText(thickness, units)} × ${tapeText(depth, units)}`;
};
