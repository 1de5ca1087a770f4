import { faceStiffness, nail, rubbing, tack, type NailRow } from './fasteners';
import type { Node, Row } from './frame';
import type { Framing } from './framing';
import { signOf } from '../roof/side';
import type { Fastening, Gable, Nails } from './gable';
import type { FaceName, RafterParts } from './gableParts';
import { between, partingsOf, type NailRows } from './partings';

/** The two joints of a rafter: faces that only push, and nails that hold every way. */

type Parts = Omit<RafterParts, 'beam' | 'faces'>;
type Faces<T extends FaceName> = Readonly<Record<T, number>>;

/** The plumb cut on the ridge's face: top and bottom edge push, nails hold. */
export const addTop = (
  framing: Framing,
  { gable, parts, ridge }: { readonly gable: Gable; readonly parts: Parts; readonly ridge: Node },
): Faces<'plumbTop' | 'plumbBottom'> => {
  const { rafter, top } = parts;
  const rows = partingsOf(gable.shape, rafter.side);
  const { joint } = rafter.top;
  const { plumbCut: stiffness } = faceStiffness;
  const off = signOf(rafter.side) * (rafter.top.rest?.[1] ?? 0);
  const { open } = rafter;
  const edgeAt = (what: 'plumbTop' | 'plumbBottom', rest: number, apart: number): number =>
    framing.link({ joint, what, row: between(rows[what], top, ridge), stiffness, rest, acts: 'push', apart });
  const faces = {
    plumbTop: edgeAt('plumbTop', Math.min(0, open), off + Math.max(0, -open)),
    plumbBottom: edgeAt('plumbBottom', -Math.max(0, open), off + Math.max(0, open)),
  };
  addNails(framing, gable, { fastening: rafter.top, rows: rows.top, end: top, met: ridge, pulls: 1 });
  return faces;
};

/** The birdsmouth on the plate: the seat's two edges push up, the heel cut stops what would come inward, nails hold. */
export const addHeel = (
  framing: Framing,
  { gable, parts, plate }: { readonly gable: Gable; readonly parts: Parts; readonly plate: Node },
): Faces<'seatOut' | 'seatIn' | 'heelCut'> => {
  const { rafter, heel } = parts;
  const spot = gable.plates[rafter.side][rafter.station] ?? { up: 0, out: 0 };
  const rows = partingsOf(gable.shape, rafter.side);
  const { joint } = rafter.heel;
  const { seat, heelCut: cut } = faceStiffness;
  const high = spot.up - rafter.deep;
  const { seatOpen = 0, eased = 0 } = rafter;
  const off = (rafter.heel.rest?.[2] ?? high) - high;
  const edgeAt = (what: 'seatOut' | 'seatIn', rest: number, apart: number): number => {
    const row = between(rows[what], heel, plate);
    return framing.link({ joint, what, row, stiffness: seat, rest, acts: 'push', apart, ground: 'z' });
  };
  const row = between(rows.heelCut, heel, plate);
  const rest = spot.out - eased;
  const out = signOf(rafter.side) * (rafter.heel.rest?.[1] ?? 0);
  const faces = {
    seatOut: edgeAt('seatOut', high + Math.min(0, seatOpen), off + Math.max(0, -seatOpen)),
    seatIn: edgeAt('seatIn', high - Math.max(0, seatOpen), off + Math.max(0, seatOpen)),
    heelCut: framing.link({
      joint,
      what: 'heelCut',
      row,
      stiffness: cut,
      rest,
      acts: 'push',
      apart: out - rest,
    }),
  };
  addNails(framing, gable, { fastening: rafter.heel, rows: rows.heel, end: heel, met: plate, pulls: 2 });
  return faces;
};

type Nailed = {
  readonly fastening: Fastening;
  readonly rows: NailRows;
  /** The rafter's end, and what it meets. */
  readonly end: Node;
  readonly met: Node;
  /** Number of the slide along which nails draw out: across at the ridge, up at the plate. */
  readonly pulls: 1 | 2;
};

const slideNames = ['nailX', 'nailY', 'nailZ'] as const;
const turnNames = ['turnX', 'turnY', 'turnZ'] as const;

const addNails = (framing: Framing, gable: Gable, so: Nailed): void => {
  const { fastening, rows, end, met, pulls } = so;
  const { joint, nails, tacks, rest } = fastening;
  if (nails + tacks === 0) return addRubbing(framing, so);
  const held = holdOf(gable, fastening);
  // Up is the one way in which a plate is not part of the frame.
  const onPlate = pulls === 2 ? 'z' : undefined;
  const links: number[] = [];
  for (let i = 0; i < 3; i++) {
    const row = between(rows.slides[i] as Row, end, met);
    const stiffness = i === pulls ? held.pull : held.shear;
    const ground = i === 2 ? onPlate : undefined;
    const at = rest?.[i] ?? 0;
    links.push(
      framing.link({ joint, what: slideNames[i] as string, row, stiffness, rest: at, acts: 'both', ground }),
    );
  }
  for (let i = 0; i < 3; i++) {
    const row = between(rows.turns[i] as Row, end, met);
    const stiffness = i === 0 ? held.turnAlong : held.turnAcross;
    const at = rest?.[3 + i] ?? 0;
    framing.link({ joint, what: turnNames[i] as string, row, stiffness, rest: at, acts: 'both' });
  }
  framing.grip({ joint, links, cap: held.cap });
};

/** What so many nails and tacks hold together. */
export const holdOf = ({ rows }: Pick<Gable, 'rows'>, { nails, tacks }: Nails): NailRow => {
  const [home, proud] = [rows?.nail ?? nail, rows?.tack ?? tack];
  return {
    shear: nails * home.shear + tacks * proud.shear,
    pull: nails * home.pull + tacks * proud.pull,
    turnAlong: nails * home.turnAlong + tacks * proud.turnAlong,
    turnAcross: nails * home.turnAcross + tacks * proud.turnAcross,
    cap: nails * home.cap + tacks * proud.cap,
  };
};

/** Wood on wood: sideways at the ridge along x and z, at the plate along x and y. */
const addRubbing = (framing: Framing, { fastening, rows, end, met, pulls }: Nailed): void => {
  const { joint } = fastening;
  rows.slides.forEach((slide, i) => {
    if (i === pulls) return;
    const row = between(slide, end, met);
    framing.link({ joint, what: 'rub', row, stiffness: rubbing, rest: 0, acts: 'both' });
  });
};
