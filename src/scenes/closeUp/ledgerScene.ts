import { placeOf } from '../../core/site/ids';
import type { Shown } from '../../present/model/scheme';
import type { Piece } from './board';
import type { JointScene } from './jointScene';
import { nailsOf } from './nails';

/** How much of the wall behind a ledger shows: its stud's depth, and past the ledger up and down. Inches; ours. */
const studDeep = 3.5;
const pastLedger = 24;
/** How far a nail stands out of the wood as a tack, and how long it is, inches. */
const proudBy = 0.24;
const nailLong = 3.5;

/** The stud behind a ledger of this section, seen along it: u level from the ledger's street face, w plumb from its top. */
export const studBehind = ({
  thickness,
  depth,
}: {
  readonly thickness: number;
  readonly depth: number;
}): Piece => ({
  outline: [
    [-thickness - studDeep, pastLedger],
    [-thickness, pastLedger],
    [-thickness, -depth - pastLedger],
    [-thickness - studDeep, -depth - pastLedger],
  ],
  seed: 52,
  grain: [0, 1],
  light: 0.68,
});

/** A ridge or a ledger cut square, in the same place of the drawing. */
export const ledgerEnd = ({
  thickness: t,
  depth,
}: {
  readonly thickness: number;
  readonly depth: number;
}): Piece => ({
  outline: [
    [-t, 0],
    [0, 0],
    [0, -depth],
    [-t, -depth],
  ],
  seed: 24,
  grain: 'end',
  pith: [-3.4, 0.75],
  light: 0.6,
});

/** A ledger on its wall, seen along it: nails go in by its face, through it and into the stud. */
export const ledgerScene = (shown: Shown, joint: string): JointScene => {
  const { ridge } = shown.level.plan;
  const { thickness: t, depth } = ridge;
  const nails = nailsOf(shown.site.joints[`ledger:ridge.${placeOf(joint).station ?? 1}`]);
  const share = (i: number): number => (i + 0.5) / Math.max(2, nails.length);
  return {
    pieces: [studBehind(ridge), ledgerEnd(ridge)],
    light: [],
    sideNails: nails.map((state, i) => ({
      face: 0,
      w: -depth * share(i),
      proud: state === 'proud' ? proudBy : 0,
      length: nailLong,
      way: 'left',
    })),
    heads: [],
    rule: { zero: [-t, -depth], way: 'right' },
    marks: [],
    spot: [-t, -depth + 0.05],
    extent: [-t - studDeep - 1, 7, -depth - 1.8, 2],
  };
};
