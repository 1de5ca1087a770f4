import type { Vec2 } from '../geometry/vector';
import { scenesOf, type Eave, type RoofForm } from './form';
import { alongPlane, dot2, isSameWay, type Limit, type Line, type Stop } from './surface';

/** Rafters are where the layout cuts the planes: a line up a plane at each station, as far as the plane is the roof. */
export type Piece = {
  readonly eave: Eave;
  readonly at: number;
  /** Level distances in from the reference line. */
  readonly from: number;
  readonly to: number;
  readonly low: readonly Stop[];
  readonly high: readonly Stop[];
};

/** What a rafter comes to at its upper end. */
export type Top = 'ridge' | 'ridgeEnd' | 'wall' | 'header' | 'break' | 'slope';

export const piecesOf = (form: RoofForm): readonly Piece[] => {
  const scenes = scenesOf(form);
  return form.eaves.flatMap((eave) => {
    const bodies = scenes.find((scene) => scene.includes(eave.body)) ?? form.bodies;
    return eave.stations.flatMap((at) =>
      alongPlane(lineAt(eave, at), eave, eave.through?.includes(at) ? [eave.body] : bodies).map(
        (stretch) => ({ eave, at, ...stretch }),
      ),
    );
  });
};

/** Up a plane from its reference line at a station. */
export const lineAt = ({ plane: { foot, up } }: Eave, at: number): Line => ({
  from: up[0] === 0 ? [at, foot[1]] : [foot[0], at],
  way: up,
});

/** Planes of the same body that end a rafter above. */
const meets = ({ eave, high }: Piece): readonly Vec2[] =>
  high.flatMap((stop) => (stop.what === 'plane' && stop.body === eave.body ? [stop.plane.up] : []));

/** What stops a piece at the header of an opening, and at the gable of a dormer that stands on it. */
export const headerLimit = 'header';
export const faceLimit = 'face';

const limitOver = ({ high }: Piece): Limit | undefined => high.find((stop) => stop.what === 'limit')?.limit;

/** A wall, the plane across or a flatter one over it ends a common; two from both hands, where hips meet at the ridge's end, end the one between them. */
export const topOf = (piece: Piece): Top => {
  if (piece.eave.dormer) return 'header';
  const sides = meets(piece).map((up) => dot2(up, piece.eave.plane.up));
  const limit = limitOver(piece);
  if (limit) return limit.id === headerLimit ? 'header' : 'wall';
  if (sides.some((side) => side < 0)) return 'ridge';
  if (sides.some(isSameWay)) return 'break';
  return sides.length > 1 ? 'ridgeEnd' : 'slope';
};

export const startsAtLimit = ({ low }: Piece, id: string): boolean =>
  low.some((stop) => stop.what === 'limit' && stop.limit.id === id);

export const startsAtEave = ({ eave, low }: Piece): boolean =>
  low.some((stop) => stop.what === 'eave' && stop.plane === eave.plane);
