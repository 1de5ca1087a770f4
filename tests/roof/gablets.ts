import { figure } from '../../src/core/roof/figure';
import type { FiguredHeader, FiguredRoof } from '../../src/core/roof/figured';
import type { FiguredHip } from '../../src/core/roof/figuredSlants';
import type { Gablet, HipPlan } from '../../src/core/roof/plan';
import { inch } from '../../src/core/units/inch';
import { hipPlan, hipSample } from './hips';
import type { Changes } from './roofs';

/** The sample hip roof, 24 by 40 ft at 6 in 12 and all 1 1/2 in thick, with small gables 8 ft back from both ends. */
export const gabletSample = { ...hipSample, gablet: { back: 96 } } as const;

export const gabletPlan = (changes: Changes = {}): HipPlan => hipPlan({ gablet: { back: 96 }, ...changes });

export const gabletRoof = (changes: Changes = {}): FiguredRoof => figure(gabletPlan(changes));

/** A plan with its small gables moved, even to where no file may have them. */
export const movedTo = (plan: HipPlan, back: number): HipPlan => ({
  ...plan,
  gablet: { ...(plan.gablet as Gablet), back: inch(back) },
});

export const headerOf = ({ headers }: FiguredRoof): FiguredHeader => {
  const [header, ...more] = headers ?? [];
  if (!header || more.length > 0) throw new Error('not one kind of header');
  return header;
};

export const firstHip = ({ hips }: FiguredRoof): FiguredHip => {
  const [hip] = hips ?? [];
  if (!hip) throw new Error('no hip');
  return hip;
};
