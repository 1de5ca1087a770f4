import type { Vec3 } from '../geometry/vector';
import { pointMoves, valueOf, type Node, type Row } from '../mechanics/frame';
import { between, partingsOf } from '../mechanics/partings';
import type { Framed } from './framed';
import type { JointId, RafterId } from './ids';
import type { Fallen } from './pose';

/** `why` is what the site keeps of a fall: see `Fall` in aftermath. */
export const fallenFrom = (frame: Framed | undefined, why: string): Fallen => {
  const way = why === 'alongTheRidge' ? 'along' : why === 'sideways' ? 'sideways' : 'downward';
  if (!frame) return { way, toward: 1, loose: undefined };
  const moves = frame.settled.falls?.way ?? frame.settled.u;
  const most = farthest(frame.parts.ridge, way === 'along' ? [1, 0, 0] : [0, 1, 0], moves);
  return { way, toward: most < 0 ? -1 : 1, loose: mostParted(frame, moves) };
};

/** The largest move of any place of the ridge along a direction, with its sign. */
export const farthest = (ridge: readonly Node[], along: Vec3, moves: Float64Array): number =>
  ridge
    .map((node) => pointMoves(node, { point: node.at, way: along }, moves))
    .reduce((most, move) => (Math.abs(move) > Math.abs(most) ? move : most), 0);

const mostParted = ({ gable, parts }: Framed, moves: Float64Array): JointId | undefined => {
  let most: { readonly joint: JointId; readonly by: number } | undefined;
  for (const [id, { rafter, top, heel }] of parts.rafters) {
    const rows = partingsOf(gable.shape, rafter.side);
    const met = { ridge: parts.ridge[rafter.station], heel: parts.plates[rafter.side][rafter.station] };
    const apart = {
      ridge: met.ridge ? parting(rows.top.slides, [top, met.ridge], moves) : 0,
      heel: met.heel ? parting(rows.heel.slides, [heel, met.heel], moves) : 0,
    };
    for (const kind of ['ridge', 'heel'] as const)
      if (apart[kind] > (most?.by ?? 0)) most = { joint: `${kind}:${id as RafterId}`, by: apart[kind] };
  }
  return most?.joint;
};

const parting = (rows: readonly Row[], [own, met]: readonly [Node, Node], moves: Float64Array): number =>
  Math.sqrt(
    rows.reduce((sum, row) => {
      const part = valueOf(between(row, own, met), moves);
      return sum + part * part;
    }, 0),
  );
