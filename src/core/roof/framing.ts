import { hair } from '../units/hair';
import { edgesOf, hasPlane, type Edge } from './edges';
import { frameOf, openingIn, type Eave, type RoofForm } from './form';
import { faceLimit, headerLimit, lineAt, piecesOf, startsAtEave, type Piece } from './pieces';
import { alongPlane, dot2, pointOn, type Line, type Of, type Stop } from './surface';

/** A roof's planes with the lines its members follow: where planes meet, and where the layout cuts them. */
export type Framing = {
  readonly form: RoofForm;
  readonly edges: readonly Edge[];
  readonly pieces: readonly Piece[];
};

export const framingOf = (form: RoofForm): Framing => {
  const met = edgesOf(form);
  const edges = met.map((edge) => lengthened(form, met, edge));
  const long = edges.filter(({ parts }) => parts !== undefined);
  const whole = piecesOf(form);
  const pieces = long.length === 0 ? whole : whole.flatMap((piece) => splitBy(piece, long));
  return { form, edges, pieces: pieces.flatMap((piece) => inOpening(form, piece)) };
};

/** The host's plane of a valley and the wing's. */
export const valleySides = (
  form: RoofForm,
  { planes: [a, b] }: Edge,
): { readonly host: Of; readonly wing: Of } =>
  frameOf(form, b.body).wing?.host.body === a.body ? { host: a, wing: b } : { host: b, wing: a };

/** Whether the wing's ridge comes in as high as the host's, so that a valley ends at both. */
export const reachesHostRidge = (edge: Edge, host: Of): boolean =>
  edge.parts === undefined &&
  edge.high.some((stop) => stop.what === 'plane' && stop.body === host.body && stop.plane !== host.plane);

/** Level, from a point of a plane along a way to where the plane ends: at the ridge, for those that lead there. Inches. */
export const reachIn = (host: Of, line: Line): number => alongPlane(line, host, [host.body])[0]?.to ?? 0;

/** A long valley runs on in the host's plane to the host's ridge. */
const lengthened = (form: RoofForm, met: readonly Edge[], edge: Edge): Edge => {
  if (edge.kind !== 'valley') return edge;
  const { host, wing } = valleySides(form, edge);
  const frame = frameOf(form, wing.body).wing;
  if (frame?.framing !== 'longValley' || reachesHostRidge(edge, host)) return edge;
  if (!frame.isLong(edge.from)) return edge;
  const ridge = met.find((one) => one.kind === 'ridge' && hasPlane(one, host.plane));
  const [way] = alongPlane({ from: edge.from, way: edge.line.way }, host, [host.body]);
  if (!ridge || !way || way.to <= edge.run + hair) return edge;
  return {
    ...edge,
    to: pointOn({ from: edge.from, way: edge.line.way }, way.to),
    run: way.to,
    high: way.high,
    parts: edge.run,
  };
};

/** A piece of the host's plane that the rest of a long valley crosses is two: one below it and one above. */
const splitBy = (piece: Piece, long: readonly Edge[]): readonly Piece[] => {
  const { plane, body } = piece.eave;
  for (const edge of long) {
    const other = edge.planes.find((of) => of.body !== body);
    if (!hasPlane(edge, plane) || !other) continue;
    const u = crossing(piece, edge);
    if (u === undefined || u <= piece.from + hair || u >= piece.to - hair) continue;
    const stop = { what: 'plane', plane: other.plane, body: other.body } as const;
    return [
      { ...piece, to: u, high: [stop] },
      { ...piece, from: u, low: [stop] },
    ];
  }
  return [piece];
};

/**
 * Over the valleys of an opening a piece of the host's plane is two: one up to the header and one from there to the ridge.
 * The pair at a gable that stands on the main rafters lies on those.
 */
const inOpening = (form: RoofForm, piece: Piece): readonly Piece[] => {
  const { eave, at, from, low } = piece;
  if (eave.opening?.face === at) return [{ ...piece, low: [stopAt(eave, from, faceLimit)] }];
  const opening = openingIn(form, eave, at);
  // Over the main wall nothing is left of them but what the sheathing takes.
  if (opening?.plan.front === 0 && startsAtEave(piece)) return [];
  if (!opening || !low.some((stop) => stop.what === 'plane' && stop.body !== eave.body)) return [piece];
  const header = stopAt(eave, opening.meet, headerLimit);
  const over: Piece = { ...piece, from: opening.meet, low: [header] };
  return from < opening.meet - hair ? [{ ...piece, to: opening.meet, high: [header] }, over] : [over];
};

const stopAt = ({ plane: { up, foot } }: Eave, inFrom: number, id: string): Stop => ({
  what: 'limit',
  limit: { id, normal: up, reach: dot2(up, foot) + inFrom },
});

/** Level, from the eave up a piece to where an edge's line crosses it; nothing where that lies beyond the edge's ends. */
const crossing = ({ eave, at }: Piece, { from, line: { way }, run }: Edge): number | undefined => {
  const start = lineAt(eave, at).from;
  const { up } = eave.plane;
  const cross = up[0] * way[1] - up[1] * way[0];
  if (Math.abs(cross) < hair) return undefined;
  const off = [from[0] - start[0], from[1] - start[1]] as const;
  const u = (off[0] * way[1] - off[1] * way[0]) / cross;
  const along = dot2(way, [start[0] + up[0] * u - from[0], start[1] + up[1] * u - from[1]]);
  return along > -hair && along < run + hair ? u : undefined;
};
