import { signOf } from '../roof/side';
import type { Vec3 } from '../geometry/vector';
import { faceStiffness, nail, rubbing, tack, type NailRow } from './fasteners';
import { less, pointRow, turnRow, type Node, type Row } from './frame';
import type { Framing } from './framing';
import type { Fastening, Gable } from './gable';
import type { RafterParts } from './gableParts';

/** The two joints of a rafter: faces that only push, and nails that hold every way. */

type Parts = Omit<RafterParts, 'beam'>;

const x: Vec3 = [1, 0, 0];
const y: Vec3 = [0, 1, 0];
const z: Vec3 = [0, 0, 1];

/** The plumb cut on the ridge's face: top and bottom edge push, nails hold. */
export const addTop = (
  framing: Framing,
  { gable, parts, ridge }: { readonly gable: Gable; readonly parts: Parts; readonly ridge: Node },
): void => {
  const { shape } = gable;
  const { rafter, top } = parts;
  const sign = signOf(rafter.side);
  const plumb = Math.min(shape.rafter.depth * Math.sqrt(1 + shape.m * shape.m), shape.ridge.depth);
  const gaps = [Math.max(0, -rafter.open), Math.max(0, rafter.open)];
  ['plumbTop', 'plumbBottom'].forEach((what, i) => {
    const point: Vec3 = [top.at[0], top.at[1], shape.topHeight - i * plumb];
    const out: Vec3 = [0, sign, 0];
    framing.link({
      joint: rafter.top.joint,
      what,
      row: less(pointRow(top, point, out), pointRow(ridge, point, out)),
      stiffness: faceStiffness.plumbCut,
      rest: -(gaps[i] as number),
      acts: 'push',
    });
  });
  const against = (way: Vec3): Row => less(pointRow(top, top.at, way), pointRow(ridge, top.at, way));
  const turning = (about: Vec3): Row => less(turnRow(top, about), turnRow(ridge, about));
  if (rafter.top.nails + rafter.top.tacks === 0)
    return addRubbing(framing, rafter.top, [against(x), against(z)]);
  addNails(framing, gable, {
    fastening: rafter.top,
    slides: [against(x), against(y), against(z)],
    turns: [turning(x), turning(y), turning(z)],
    pulls: 1,
  });
};

/** The birdsmouth on the plate: the seat's two edges push up, the heel cut stops what would come inward, nails hold. */
export const addHeel = (
  framing: Framing,
  { gable, parts, plate }: { readonly gable: Gable; readonly parts: Parts; readonly plate: Node },
): void => {
  const { shape, plates } = gable;
  const { rafter, heel } = parts;
  const spot = plates[rafter.side][rafter.station] ?? { up: 0, out: 0 };
  const sign = signOf(rafter.side);
  const { joint } = rafter.heel;
  const at = (from: number, high: number): Vec3 => [heel.at[0], sign * (shape.run - from), high];
  const seat = {
    joint,
    stiffness: faceStiffness.seat,
    rest: spot.up - rafter.deep,
    acts: 'push',
    ground: 'z',
  } as const;
  framing.link({ ...seat, what: 'seatOut', row: pointRow(heel, at(0, 0), z) });
  framing.link({ ...seat, what: 'seatIn', row: pointRow(heel, at(shape.seat, 0), z) });
  const cut = at(0, (-shape.seat * shape.m) / 2);
  const out: Vec3 = [0, sign, 0];
  framing.link({
    joint,
    what: 'heelCut',
    row: less(pointRow(heel, cut, out), pointRow(plate, plate.at, out)),
    stiffness: faceStiffness.heelCut,
    rest: spot.out,
    acts: 'push',
  });
  const middle = at(shape.seat / 2, 0);
  const over = (way: Vec3): Row => less(pointRow(heel, middle, way), pointRow(plate, plate.at, way));
  if (rafter.heel.nails + rafter.heel.tacks === 0)
    return addRubbing(framing, rafter.heel, [over(x), over(y)]);
  addNails(framing, gable, {
    fastening: rafter.heel,
    slides: [over(x), over(y), pointRow(heel, middle, z)],
    turns: [turnRow(heel, x), turnRow(heel, y), less(turnRow(heel, z), turnRow(plate, z))],
    pulls: 2,
  });
};

type Nailed = {
  readonly fastening: Fastening;
  /** Along x, y, z; number `pulls` of them is the one along which nails draw out. */
  readonly slides: readonly Row[];
  readonly turns: readonly Row[];
  readonly pulls: 1 | 2;
};

const addNails = (framing: Framing, { rows }: Gable, { fastening, slides, turns, pulls }: Nailed): void => {
  const { joint, nails, tacks, rest } = fastening;
  const [home, proud] = [rows?.nail ?? nail, rows?.tack ?? tack];
  const sum = (of: (row: NailRow) => number): number => nails * of(home) + tacks * of(proud);
  const links = slides.map((row, i) =>
    framing.link({
      joint,
      what: ['nailX', 'nailY', 'nailZ'][i] as string,
      row,
      stiffness: sum((one) => (i === pulls ? one.pull : one.shear)),
      rest: rest?.[i] ?? 0,
      acts: 'both',
      ...(pulls === 2 && i === 2 ? { ground: 'z' as const } : {}),
    }),
  );
  turns.forEach((row, i) => {
    framing.link({
      joint,
      what: ['turnX', 'turnY', 'turnZ'][i] as string,
      row,
      stiffness: sum((one) => (i === 0 ? one.turnAlong : one.turnAcross)),
      rest: rest?.[3 + i] ?? 0,
      acts: 'both',
    });
  });
  framing.grip({ joint, links, cap: sum((one) => one.cap) });
};

const addRubbing = (framing: Framing, { joint }: Fastening, rows: readonly Row[]): void => {
  rows.forEach((row, i) => {
    framing.link({
      joint,
      what: ['rubX', 'rubY'][i] as string,
      row,
      stiffness: rubbing,
      rest: 0,
      acts: 'both',
    });
  });
};
