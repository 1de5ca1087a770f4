import type { Vec2 } from '../geometry/vector';
import type { CommonRafter } from './figured';

/**
 * Outline of a common rafter as [level distance out from the ridge's centre line, height above the plate], counter-clockwise
 * from the top of the plumb cut: plumb cut, underside, birdsmouth, tail, top edge. Inches.
 */
export const rafterOutline = (cuts: CommonRafter): readonly Vec2[] => {
  const m = cuts.rise / cuts.run;
  const top = (out: number): number => cuts.heightAbovePlate + (cuts.run - out) * m;
  const under = (out: number): number => top(out) - cuts.plumbCutLength;
  const out = cuts.run + cuts.tailLength / Math.sqrt(1 + m * m);
  const inside = cuts.run - cuts.seat;
  const tail: readonly Vec2[] =
    cuts.tailLength > 0
      ? [
          [cuts.run, 0],
          [cuts.run, under(cuts.run)],
          [out, under(out)],
          [out, top(out)],
        ]
      : [
          [cuts.run, 0],
          [cuts.run, top(cuts.run)],
        ];
  return [
    [cuts.shortening, top(cuts.shortening)],
    [cuts.shortening, under(cuts.shortening)],
    [inside, 0],
    ...tail,
  ];
};
