import type { CommonRafter } from './figured';
import type { Eave } from './form';
import { heightOver } from './heightOver';
import type { Section } from './plan';

/** Everything one common rafter needs cut, from its plane: name by name as the figured roof has them. */
export type RafterCuts = Omit<CommonRafter, 'id' | 'count' | 'side'>;

export const rafterCuts = (
  { run, m, overhang, seat }: Pick<Eave, 'run' | 'm' | 'overhang' | 'seat'>,
  { rafter, shortening }: { readonly rafter: Section; readonly shortening: number },
): RafterCuts => {
  const g = Math.sqrt(1 + m * m);
  const bodyLength = (run - shortening) * g;
  const tailLength = overhang * g;
  const edgeLength = bodyLength + tailLength;
  return {
    run,
    rise: run * m,
    lineLength: run * g,
    shortening,
    bodyLength,
    tailLength,
    edgeLength,
    stockLength: edgeLength + rafter.depth * m,
    plumbCutLength: rafter.depth * g,
    seat,
    heelCut: seat * m,
    heightAbovePlate: heightOver(rafter.depth, { m, seat }),
    notchDepth: (seat * m) / g,
    maxSeat: ((rafter.depth / 4) * g) / m,
  };
};
