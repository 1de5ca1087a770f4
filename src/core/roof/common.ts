import type { CommonRafter, HighEnd } from './figured';
import type { Eave, HighPlate } from './form';
import { heightOver } from './heightOver';
import type { Section } from './plan';

/** Everything one common rafter needs cut, from its plane: name by name as the figured roof has them. */
export type RafterCuts = Omit<CommonRafter, 'id' | 'count' | 'side'>;

type Stock = {
  readonly rafter: Section;
  readonly shortening: number;
  readonly highPlate?: HighPlate;
};

export const rafterCuts = (
  { run, m, overhang, seat }: Pick<Eave, 'run' | 'm' | 'overhang' | 'seat'>,
  { rafter, shortening, highPlate }: Stock,
): RafterCuts => {
  const g = Math.sqrt(1 + m * m);
  const bodyLength = (run - shortening) * g;
  const tailLength = overhang * g;
  const high = highPlate && highEnd(rafter.depth, m, highPlate);
  const edgeLength = bodyLength + tailLength + (high?.tailLength ?? 0);
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
    ...(high && { high }),
  };
};

const highEnd = (depth: number, m: number, { seat, past }: HighPlate): HighEnd => {
  const g = Math.sqrt(1 + m * m);
  return {
    seat,
    heelCut: seat * m,
    heightAbovePlate: heightOver(depth, { m, seat }),
    notchDepth: (seat * m) / g,
    tailLength: past * g,
  };
};
