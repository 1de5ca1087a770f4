import type { RafterPose } from '../../core/site/pose';
import { schemeOf, type Shown } from '../../present/model/scheme';
import { edgesOfRafter, rafterOutline } from '../../present/model/rafterShape';
import { plateAt } from '../../core/site/truePlate';
import type { Point } from '../ink/pencil';
import type { Piece } from './board';
import type { JointScene } from './jointScene';
import { nailsOf } from './nails';

type Asked = {
  readonly shown: Shown;
  readonly rafter: RafterPose;
  readonly joint: string;
  readonly gap: 'seat' | 'heelCut';
};

/** A birdsmouth on the double plate, seen along the plate: u out from the plate's outer face, w up from its top. */
export const heelScene = ({ shown, rafter, joint, gap }: Asked): JointScene => {
  const { level, site, pose } = shown;
  const scheme = schemeOf(shown);
  const plate = plateAt(pose.plates[rafter.side], rafter.x.heel);
  const outline = rafterOutline({
    id: joint,
    rafter,
    scheme,
    thickness: level.plan.rafter.thickness,
    seatTrim: site.trims[rafter.board]?.seat ?? 0,
    overhang: level.plan.overhang,
  }).map(([out, z]): Point => [out - plate.out, z - plate.z]);
  const { m } = edgesOfRafter(rafter, scheme.common.plumbCutLength);
  const g = Math.sqrt(1 + m * m);
  const width = level.plan.plate.width;
  const { seat, heelCut } = rafter.gaps;
  const nails = nailsOf(site.joints[`heel:${joint}` as 'heel:rafter.yard.1']);
  const inner = (outline[3] ?? [-2.25, seat])[0];
  const heelHigh = scheme.common.heelCut + seat;
  return {
    pieces: [
      plateEnd(width, 0),
      plateEnd(width, -1.5),
      { outline, seed: 33 + rafter.station * 3, grain: [-1 / g, m / g], light: 0.76 },
    ],
    light: [
      [
        [inner, 0],
        [heelCut, 0],
        [heelCut, seat],
        [inner, seat],
      ],
      [
        [0, seat],
        [heelCut, seat],
        [heelCut, -(heelHigh - 2 * seat)],
        [0, -(heelHigh - 2 * seat)],
      ],
    ],
    sideNails: [],
    heads: nails.map((state, i) => ({
      at: [-0.5 - (i % 3) * 0.85, seat + 1 + Math.floor(i / 3) * 1.1 + (i % 3) * 0.25] as Point,
      proud: state === 'proud',
    })),
    rule:
      gap === 'seat'
        ? { zero: [inner + 0.02, 0], way: 'up' }
        : { zero: [0, seat - scheme.common.heelCut], way: 'right' },
    marks: [],
    spot: gap === 'seat' ? [inner + 0.1, 0.14] : [0.17, seat - scheme.common.heelCut + 0.05],
    extent: [-width - 3, 7, -4, scheme.common.heightAbovePlate + 3.2],
  };
};

const plateEnd = (width: number, top: number): Piece => ({
  outline: [
    [-width, top],
    [0, top],
    [0, top - 1.5],
    [-width, top - 1.5],
  ],
  seed: top === 0 ? 61 : 74,
  grain: 'end',
  pith: [-0.9, width * 0.6],
  light: top === 0 ? 0.62 : 0.56,
});
