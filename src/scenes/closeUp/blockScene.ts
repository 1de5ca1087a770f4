import type { BlockPose } from '../../core/site/pose';
import { schemeOf, type Shown } from '../../present/model/scheme';
import type { Point } from '../ink/pencil';
import type { JointScene } from './jointScene';
import { nailsOf } from './nails';

/** The far end of a block against its rafter, seen from outside the wall: u along the plate from the block's end, w up. */
/** From and to, inches. */
type Span = readonly [number, number];

export const blockScene = (shown: Shown, block: BlockPose, joint: string): JointScene => {
  const { common } = schemeOf(shown);
  const high = Math.min(common.heightAbovePlate, shown.level.plan.rafter.depth);
  const thick = shown.level.plan.rafter.thickness;
  const nails = nailsOf(shown.site.joints[joint as 'heel:rafter.yard.1']);
  const box = ([u0, u1]: Span, [w0, w1]: Span): readonly Point[] => [
    [u0, w1],
    [u1, w1],
    [u1, w0],
    [u0, w0],
  ];
  return {
    pieces: [
      { outline: box([-14, 14], [-1.5, 0]), seed: 61, grain: [1, 0], light: 0.6 },
      { outline: box([-14, 14], [-3, -1.5]), seed: 74, grain: [1, 0], light: 0.54 },
      { outline: box([-14, 0], [0, high]), seed: 300 + block.bay, grain: [1, 0], light: 0.74 },
      {
        outline: box([block.gap, block.gap + thick], [-0.6, common.heightAbovePlate]),
        seed: 40 + block.bay,
        grain: 'end',
        pith: [2.2, 0.75],
        light: 0.66,
      },
    ],
    light: [box([0, block.gap], [0, high])],
    sideNails: [],
    heads: nails.map((state, i) => ({
      at: [-0.8, high * (0.3 + 0.4 * i)] as Point,
      proud: state === 'proud',
    })),
    rule: { zero: [0, high * 0.45], way: 'right' },
    marks: [],
    spot: [0.17, high * 0.45 + 0.05],
    extent: [-7, 7, -3.4, common.heightAbovePlate + 1.4],
  };
};
