import { hair } from '../units/hair';
import { handsOf, type Edge } from './edges';
import type { FiguredJacks } from './figured';
import type { Eave } from './form';
import { heightAtHips } from './hips';
import { startsAtEave, topOf, type Piece } from './pieces';
import type { HipPlan } from './plan';
import { wallsOf } from './planes';
import type { Wall } from './side';
import { cheekOf, halfAcross, skewOf, type Skew } from './skew';
import { dot2 } from './surface';

/** Jacks: from the plate to a hip. */

/** One jack with the hip it comes to. */
export type Jack = {
  readonly piece: Piece;
  readonly hip: Edge;
  readonly hipSide: 'left' | 'right';
  readonly skew: Skew;
  /** Level, from the reference face to the hip's centre line, and what its half thickness takes. Inches. */
  readonly run: number;
  readonly shortening: number;
};

export const jacksOf = (plan: HipPlan, pieces: readonly Piece[], edges: readonly Edge[]): readonly Jack[] =>
  pieces.flatMap((piece) => {
    if (!startsAtEave(piece) || topOf(piece) !== 'slope') return [];
    const other = piece.high.find((stop) => stop.what === 'plane');
    const hip = edges.find(
      ({ kind, planes }) =>
        kind === 'hip' &&
        planes.some(({ plane }) => plane === piece.eave.plane) &&
        planes.some(({ plane }) => other?.what === 'plane' && plane === other.plane),
    );
    if (!hip) return [];
    const skew = skewOf(piece.eave.plane.up, hip.line.way);
    const shortening = halfAcross(plan.hip.thickness, skew);
    const run = piece.to - piece.from;
    const hipSide = handsOf(hip).left.plane === piece.eave.plane ? 'left' : 'right';
    return [{ piece, hip, hipSide, skew, run, shortening }];
  });

/** One entry for each side of the hips and each kind of eave. */
export const figuredJacks = (plan: HipPlan, jacks: readonly Jack[]): readonly FiguredJacks[] => {
  const groups = new Map<string, Jack[]>();
  for (const jack of jacks) {
    const isEnd = jack.piece.eave.plane.up[1] === 0;
    const key = `${isEnd ? 'end' : 'long'} ${jack.hipSide}`;
    const group = groups.get(key);
    if (group) group.push(jack);
    else groups.set(key, [jack]);
  }
  return [...groups.values()].map((group, i) => entry(plan, group, `jack.${i + 1}`));
};

const entry = (plan: HipPlan, group: readonly Jack[], id: string): FiguredJacks => {
  const ordered = [...group].sort((a, b) => a.run - b.run);
  const runs = ordered
    .map(({ run }) => run)
    .filter((run, i, all) => i === 0 || run - (all[i - 1] as number) > hair);
  const longest = ordered.at(-1) as Jack;
  const { eave } = longest.piece;
  const { skew, shortening } = longest;
  const g = Math.sqrt(1 + eave.m * eave.m);
  const run = runs.at(-1) as number;
  return {
    id,
    count: group.length,
    side: wallsOf([...new Set(group.map(({ piece }) => piece.eave.side))] as Wall[]),
    hipSide: longest.hipSide,
    run,
    lineLength: run * g,
    bodyLength: (run - shortening) * g,
    tailLength: eave.overhang * g,
    heightAbovePlate: heightAtHips(plan),
    seat: eave.seat,
    slope: { rise: eave.m, run: 1 },
    cheeks: [cheekOf({ end: 'top', side: towardHip(longest) }, skew, eave.m)],
    shorteningTop: shortening,
    shorteningBottom: 0,
    difference: ((plan.spacing * skew.cos) / skew.sin) * g,
    lineLengths: runs.map((one) => one * g),
    lengths: runs.map((one) => (one - shortening) * g),
  };
};

/** Which of its own sides, looking up the jack, the cheek looks to: where the hip comes from is the other one. */
const towardHip = ({ piece, hip }: Jack): 'left' | 'right' => {
  const { up } = (piece.eave as Eave).plane;
  return dot2([-up[1], up[0]], hip.line.way) > 0 ? 'right' : 'left';
};
