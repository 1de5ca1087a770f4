import { hair, isOver } from '../units/hair';
import { shortInches } from '../units/lengthText';
import type { Edge } from './edges';
import type { Caution, FiguredHip } from './figured';
import type { RoofForm } from './form';
import { tailReaches } from './hips';
import { limits } from './limits';
import type { HipPlan } from './plan';

/** Hips that are legal to figure but unwise to build. */

const show = (value: number): string => `${shortInches(value)} in`;

type Checked = {
  readonly hips: readonly FiguredHip[];
  readonly edges: readonly Edge[];
  readonly form: RoofForm;
  /** Of the rafters that come to the hips. */
  readonly plumbCutLength: number;
};

export const hipCautions = (plan: HipPlan, so: Checked): readonly Caution[] =>
  [shallow(plan, so), bearsLittle(so), tailsApart(so)].filter((one) => one !== undefined);

/** IRC R802.3 up to 2015, R802.4.3 since, read second hand: no less deep than the cut end of the rafters. */
const shallow = ({ hip: { depth } }: HipPlan, { plumbCutLength }: Checked): Caution | undefined =>
  isOver(plumbCutLength, depth)
    ? {
        code: 'hipShallow',
        at: 'hip.depth',
        text: `The hip is ${show(depth)} deep and the jacks are cut ${show(plumbCutLength)} long; it has to be as deep as their cut.`,
      }
    : undefined;

const bearsLittle = ({ hips }: Checked): Caution | undefined => {
  const seat = Math.min(...hips.map((one) => one.seat));
  return isOver(limits.bearing, seat)
    ? {
        code: 'hipBearing',
        at: 'hip.depth',
        text: `At the height of the other rafters the hip's seat is ${show(seat)}; ${show(limits.bearing)} is the least. A deeper hip reaches the plate.`,
      }
    : undefined;
};

/** Sixteenths of an inch are cut; ours. */
const apart = 1 / 16;

const tailsApart = ({ form, edges }: Checked): Caution | undefined => {
  const gaps = edges
    .filter(({ kind }) => kind === 'hip')
    .map((edge) => {
      const reaches = tailReaches(form, edge);
      return Math.max(...reaches) - Math.min(...reaches);
    });
  const most = Math.max(0, ...gaps);
  return isOver(most, apart + hair)
    ? {
        code: 'tailsApart',
        at: 'overhang',
        text: `With unequal slopes and the same overhang the tail lines of both sides pass the hip ${show(most)} apart, measured along it: their fascias do not meet there at one height.`,
      }
    : undefined;
};
