import type { Vec3 } from '../geometry/vector';
import type { Eave } from './form';
import { dot2, type Plane } from './surface';
import type { Timber } from './timber';

type Side = {
  readonly depth: number;
  readonly over: number;
  readonly till: number;
  /** How far outside of its line the heel cut stands. */
  readonly heel?: number;
};

/** Side of a rafter: along from its reference face, up from the plate. */
export const rafterSide = (
  { m, seat, overhang }: Pick<Eave, 'm' | 'seat' | 'overhang'>,
  { depth, over, till, heel = 0 }: Side,
): Timber['outline'] => {
  const top = (u: number): number => over + m * u;
  const plumb = depth * Math.sqrt(1 + m * m);
  const under = (u: number): number => top(u) - plumb;
  const tail: Timber['outline'] =
    overhang > heel
      ? [
          [-heel, 0],
          [-heel, under(-heel)],
          [-overhang, under(-overhang)],
          [-overhang, top(-overhang)],
        ].map(([a = 0, z = 0]) => [a, z] as const)
      : [
          [-heel, 0],
          [-heel, top(-heel)],
        ];
  return [[till, top(till)], [till, under(till)], [seat, 0], ...tail];
};

type Cut = Timber['cuts'][number];

/** Under the top edges' plane. */
export const planeCut = ({ foot, up, m, base }: Plane, over: number): Cut => {
  const normal: Vec3 = [-m * up[0], -m * up[1], 1];
  return { normal, reach: base + over - m * dot2(up, foot) };
};
