import type { Vec3 } from '../geometry/vector';
import { poundsAnInch } from '../stock/lumber';
import { sawn } from '../stock/wood';
import { braceEnd, nail, postHead, rubbing, sling, steadyHands, tieEnd } from './fasteners';
import { alongRow, less, pointRow, type Beam, type Node, type Row } from './frame';
import type { Framing } from './framing';
import type { Gable, GableTie, Support } from './gable';
import type { GableParts, RafterParts } from './gableParts';
import { stiffnessOf } from './section';

/** What holds a gable besides its rafters: ties, posts, hands, slings and braces. None has nodes of its own. */

type Parts = Omit<GableParts, 'frame'>;

/** How a place along the ridge moves. */
export const ridgeRow = (
  { ridge, ridgeBeams }: Pick<Parts, 'ridge' | 'ridgeBeams'>,
  at: number,
  way: Vec3,
): Row => {
  const last = ridgeBeams.length - 1;
  const i = ridgeBeams.findIndex((_, n) => at <= (ridge[n + 1] as Node).at[0] || n === last);
  const beam = ridgeBeams[i] as Beam;
  const t = (at - (ridge[i] as Node).at[0]) / beam.axes.length;
  return alongRow(beam, Math.min(1, Math.max(0, t)), way);
};

export const addSupports = (framing: Framing, gable: Gable, parts: Parts): void => {
  const length = (gable.stations[gable.stations.length - 1] ?? 0) - (gable.stations[0] ?? 0);
  for (const support of gable.supports) {
    const { name, x, aside } = support;
    const row = (way: Vec3): Row => ridgeRow(parts, x, way);
    const { across, along } = sideways(support, gable, length);
    const steady = { joint: name, acts: 'both' } as const;
    const toward = { ...steady, what: 'across', row: row([0, 1, 0]), ground: 'y' } as const;
    framing.link({ ...toward, stiffness: across, rest: aside });
    framing.link({ ...steady, what: 'along', row: row([1, 0, 0]), ground: 'x', stiffness: along, rest: 0 });
    addLift(framing, gable, { support, row });
  }
};

const lifts = { post: postHead, hands: steadyHands.up, sling: sling.up } as const;

/** Under the ridge, pushing only; a post under load leans its head over. */
const addLift = (
  framing: Framing,
  { shape }: Gable,
  { support, row }: { readonly support: Support; readonly row: (way: Vec3) => Row },
): void => {
  const { name, kind, high, below = 0 } = support;
  if (high === undefined) return;
  const thrust = framing.link({
    joint: name,
    what: 'up',
    row: row([0, 0, 1]),
    stiffness: lifts[kind],
    rest: high,
    acts: 'push',
    ground: 'z',
  });
  const height = shape.topHeight - shape.ridge.depth + below;
  if (kind === 'post') framing.prop({ thrust, height, rows: [row([1, 0, 0]), row([0, 1, 0])] });
};

/**
 * How a support steadies the ridge, lb/in: a fixed post by its side brace across and by rubbing along, hands by hand, a
 * sling by swinging back.
 */
const sideways = (
  { kind, fixed }: Support,
  { shape }: Gable,
  length: number,
): { readonly across: number; readonly along: number } => {
  if (kind === 'post') return { across: fixed ? braceEnd.stiffness : rubbing, along: rubbing };
  if (kind === 'hands') return { across: steadyHands.level, along: steadyHands.level };
  const swing = (poundsAnInch(shape.ridge, shape.ridgeWood) * length) / 2 / sling.length;
  return { across: swing, along: swing };
};

export const addBraces = (framing: Framing, gable: Gable, parts: Parts): void => {
  for (const { name, way, x, rest = 0 } of gable.braces) {
    const row = ridgeRow(parts, x, way === 'along' ? [1, 0, 0] : [0, 1, 0]);
    const ground = way === 'along' ? 'x' : 'y';
    const link = framing.link({
      joint: name,
      what: way,
      row,
      stiffness: braceEnd.stiffness,
      rest,
      acts: 'both',
      ground,
    });
    framing.grip({ joint: name, links: [link], cap: braceEnd.cap });
  }
};

export const addTies = (framing: Framing, gable: Gable, parts: Parts): void => {
  for (const tie of gable.ties) {
    const row = tieRow(parts, tie);
    if (!row) continue;
    const stiffness = tieStiffness(gable, tie);
    const link = framing.link({
      joint: tie.name,
      what: 'tie',
      row,
      stiffness,
      rest: tie.rest ?? 0,
      acts: 'both',
    });
    framing.grip({ joint: tie.name, links: [link], cap: Math.min(tieEnd.cap, tie.nails * nail.cap) });
  }
};

/** Two nailed ends and the stick between them, one after the other. */
const tieStiffness = ({ shape }: Gable, { kind, section, height, nails }: GableTie): number => {
  const span = 2 * shape.run;
  const length = kind === 'upper' ? Math.max(12, span * (1 - height / shape.topHeight)) : span;
  const end = (tieEnd.stiffness * nails) / 3;
  return 1 / (2 / end + length / stiffnessOf(section, sawn).axial);
};

/** How far the two ends of a tie part across the building. */
export const tieRow = (
  parts: Parts,
  { kind, station, height }: Pick<GableTie, 'kind' | 'station' | 'height'>,
): Row | undefined => {
  const across: Vec3 = [0, 1, 0];
  if (kind === 'plates') {
    const [street, yard] = [parts.plates.street[station], parts.plates.yard[station]];
    return street && yard && less(pointRow(yard, yard.at, across), pointRow(street, street.at, across));
  }
  const [street, yard] = [parts.rows.street[station], parts.rows.yard[station]];
  if (!street || !yard) return undefined;
  const at = (one: RafterParts): Row =>
    kind === 'heels'
      ? pointRow(one.heel, [one.heel.at[0], one.heel.at[1], height], across)
      : alongRow(one.beam, (height - one.heel.at[2]) / (one.top.at[2] - one.heel.at[2]), across);
  return less(at(yard), at(street));
};
