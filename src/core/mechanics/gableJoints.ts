import { faceStiffness, nail, rubbing, tack, type NailRow } from './fasteners';
import type { Node, Row } from './frame';
import type { Framing } from './framing';
import type { Fastening, Gable } from './gable';
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
  const place = (row: Row): Row => between(row, top, ridge);
  const edge = { joint, stiffness: faceStiffness.plumbCut, acts: 'push' } as const;
  const edgeAt = (what: 'plumbTop' | 'plumbBottom', rest: number): number =>
    framing.link({ ...edge, what, row: place(rows[what]), rest });
  const faces = {
    plumbTop: edgeAt('plumbTop', Math.min(0, rafter.open)),
    plumbBottom: edgeAt('plumbBottom', -Math.max(0, rafter.open)),
  };
  addNails(framing, gable, { fastening: rafter.top, rows: rows.top, place, pulls: 1 });
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
  const place = (row: Row): Row => between(row, heel, plate);
  const rest = spot.up - rafter.deep;
  const { seatOpen = 0, eased = 0 } = rafter;
  const seat = { joint, stiffness: faceStiffness.seat, acts: 'push', ground: 'z' } as const;
  const restOut = rest + Math.min(0, seatOpen);
  const restIn = rest - Math.max(0, seatOpen);
  const cut = { joint, what: 'heelCut', stiffness: faceStiffness.heelCut, acts: 'push' } as const;
  const faces = {
    seatOut: framing.link({ ...seat, what: 'seatOut', row: place(rows.seatOut), rest: restOut }),
    seatIn: framing.link({ ...seat, what: 'seatIn', row: place(rows.seatIn), rest: restIn }),
    heelCut: framing.link({ ...cut, row: place(rows.heelCut), rest: spot.out - eased }),
  };
  addNails(framing, gable, { fastening: rafter.heel, rows: rows.heel, place, pulls: 2 });
  return faces;
};

type Nailed = {
  readonly fastening: Fastening;
  readonly rows: NailRows;
  readonly place: (row: Row) => Row;
  /** Number of the slide along which nails draw out: across at the ridge, up at the plate. */
  readonly pulls: 1 | 2;
};

const slideNames = ['nailX', 'nailY', 'nailZ'] as const;
const turnNames = ['turnX', 'turnY', 'turnZ'] as const;

const addNails = (framing: Framing, gable: Gable, so: Nailed): void => {
  const { joint, nails, tacks, rest } = so.fastening;
  if (nails + tacks === 0) return addRubbing(framing, so);
  const [home, proud] = [gable.rows?.nail ?? nail, gable.rows?.tack ?? tack];
  const sum = (of: (row: NailRow) => number): number => nails * of(home) + tacks * of(proud);
  const [shear, pull] = [sum((one) => one.shear), sum((one) => one.pull)];
  const [along, across] = [sum((one) => one.turnAlong), sum((one) => one.turnAcross)];
  const links = so.rows.slides.map((row, i) =>
    framing.link({
      joint,
      what: slideNames[i] as string,
      row: so.place(row),
      stiffness: i === so.pulls ? pull : shear,
      rest: rest?.[i] ?? 0,
      acts: 'both',
      // Up is the one way in which a plate is not part of the frame.
      ...(so.pulls === 2 && i === 2 ? { ground: 'z' as const } : {}),
    }),
  );
  so.rows.turns.forEach((row, i) => {
    const stiffness = i === 0 ? along : across;
    framing.link({
      joint,
      what: turnNames[i] as string,
      row: so.place(row),
      stiffness,
      rest: rest?.[3 + i] ?? 0,
      acts: 'both',
    });
  });
  framing.grip({ joint, links, cap: sum((one) => one.cap) });
};

/** Wood on wood: sideways at the ridge along x and z, at the plate along x and y. */
const addRubbing = (framing: Framing, { fastening, rows, place, pulls }: Nailed): void => {
  rows.slides.forEach((row, i) => {
    if (i === pulls) return;
    framing.link({
      joint: fastening.joint,
      what: 'rub',
      row: place(row),
      stiffness: rubbing,
      rest: 0,
      acts: 'both',
    });
  });
};
