import type { Vec2 } from '../geometry/vector';
import { breaksOn, type BreakAt } from './breaks';
import { hasPlane } from './edges';
import { bearsAt, type Eave } from './form';
import type { Framing } from './framing';
import { miterOf } from './miter';
import { lineAt } from './pieces';
import type { GambrelPlan, RoofPlan } from './plan';
import { topOf, type RoofPlane } from './planes';
import type { Timber } from './timber';

/** What holds a break, in its place: purlins under it, or gussets on the faces of its joints. */

export const breakTimbers = (
  plan: RoofPlan,
  framing: Framing,
  planes: readonly RoofPlane[],
): readonly Timber[] => {
  if (plan.kind !== 'gambrel') return [];
  return breaksOn(framing, planes).flatMap((one) => [...purlinUnder(plan, one), ...gussetsOver(plan, one)]);
};

/** Its outer face under the break, from gable to gable. */
const purlinUnder = ({ length }: GambrelPlan, { lower, upper }: BreakAt): readonly Timber[] => {
  const { plane, side, stands } = upper.eave;
  if (!stands?.purlin) return [];
  const { depth, thickness } = stands.purlin;
  const top = bearsAt(upper.eave);
  const from = lineAt(lower.eave, 0).from;
  return [
    {
      id: `purlin.${side}`,
      origin: [0, from[1] + plane.up[1] * (lower.eave.run + thickness / 2)],
      direction: [1, 0],
      outline: [
        [0, top - depth],
        [length, top - depth],
        [length, top],
        [0, top],
      ],
      thickness,
      cuts: [],
    },
  ];
};

/** Unit direction up a slope, and square to it down into the roof: level, plumb. */
const upSlope = (m: number): Vec2 => [1 / Math.sqrt(1 + m * m), m / Math.sqrt(1 + m * m)];
const into = (m: number): Vec2 => [m / Math.sqrt(1 + m * m), -1 / Math.sqrt(1 + m * m)];
const off = ([a, z]: Vec2, [b, y]: Vec2, far: number): Vec2 => [a + b * far, z + y * far];

const gussetsOver = (plan: GambrelPlan, { lower, upper }: BreakAt): readonly Timber[] => {
  const { breakOn, rafter } = plan;
  if (breakOn.what !== 'gussets') return [];
  const outline = gussetSide(plan, { lower, upper }, breakOn.reach);
  const { stations, side, plane } = lower.eave;
  const aside = (rafter.thickness + breakOn.thickness) / 2;
  return stations.flatMap((at, i) =>
    ([-1, 1] as const)
      .filter((hand) => (hand < 0 ? i > 0 : i < stations.length - 1))
      .map((hand) => ({
        id: `gusset.${side}.${at}.${hand}`,
        origin: lineAt(lower.eave, at + hand * aside).from,
        direction: plane.up,
        outline,
        thickness: breakOn.thickness,
        cuts: [],
      })),
  );
};

/** Two legs that end square, along in from the lower reference face. */
const gussetSide = (
  { rafter: { depth } }: GambrelPlan,
  { lower, upper }: Pick<BreakAt, 'lower' | 'upper'>,
  reach: number,
): Timber['outline'] => {
  const [steep, flat] = [lower.eave.m, upper.eave.m];
  const joint: Vec2 = [lower.eave.run, topOf(lower)];
  const { inside, length } = miterOf({ steep, flat, depth });
  const low = off(joint, upSlope(steep), -reach);
  const high = off(joint, upSlope(flat), reach);
  const corner: Vec2 = [joint[0] + inside, joint[1] - Math.sqrt(length * length - inside * inside)];
  return [joint, low, off(low, into(steep), depth), corner, off(high, into(flat), depth), high];
};

type MiterCut = { readonly till?: number; readonly cuts: Timber['cuts'] };

/** Of a rafter that is mitered at a break: how far its side is drawn, and the plane that halves the two slopes' angle. */
export const miterCutOf = (
  { rafter: { depth } }: RoofPlan,
  { edges, planes }: Pick<Framing, 'edges'> & { readonly planes: readonly RoofPlane[] },
  eave: Eave,
): MiterCut | undefined => {
  const edge = edges.find((one) => one.kind === 'break' && hasPlane(one, eave.plane));
  const at = planes.filter((one) => edge && hasPlane(edge, one.eave.plane));
  const lower = at.find(({ atBreak }) => atBreak);
  const upper = at.find(({ atBreak }) => !atBreak);
  if (!lower || !upper || upper.eave.stands?.purlin) return undefined;
  const [d, e] = [upSlope(lower.eave.m), upSlope(upper.eave.m)];
  const [a, z] = [d[0] + e[0], d[1] + e[1]];
  const { up } = eave.plane;
  const isLower = eave === lower.eave;
  const [x, y] = lineAt(eave, 0).from;
  const start = isLower ? lower.eave.run : 0;
  const foot = a * (up[0] * x + up[1] * y + start) + z * topOf(lower);
  const hand = isLower ? 1 : -1;
  const cuts = [{ normal: [hand * a * up[0], hand * a * up[1], hand * z] as const, reach: hand * foot }];
  if (!isLower) return { cuts };
  const { inside } = miterOf({ steep: lower.eave.m, flat: upper.eave.m, depth });
  return { till: start + inside, cuts };
};
