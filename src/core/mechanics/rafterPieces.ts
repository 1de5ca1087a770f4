import type { Beam, Node } from './frame';
import type { Framing, Piece } from './framing';
import type { Fastening, Gable, GableRafter, GableShape, PlateSpot } from './gable';
import type { FaceName, RafterParts } from './gableParts';

/** What a rafter adds to a frame, kept from one frame to the next: an act changes few rafters, and most stay where they were. */

type Faces = RafterParts['faces'];
type Added = { readonly beam: Beam; readonly faces: Faces };

/** All that the links, loads and beam of a rafter come from. */
export type Made = {
  readonly rafter: GableRafter;
  readonly spot: PlateSpot;
  readonly nodes: readonly Node[];
  readonly rows: Gable['rows'];
};

type Kept = { readonly made: Made; readonly piece: Piece; readonly beam: Beam; readonly faces: Faces };

/** Adds a rafter to a frame: the very pieces of last time where nothing about it has changed, else afresh. */
export const addPiece = (
  framing: Framing,
  { shape, made }: { readonly shape: GableShape; readonly made: Made },
  afresh: () => Added,
): Added => {
  const kept = byShape.get(shape) ?? new Map<string, Kept>();
  byShape.set(shape, kept);
  const last = kept.get(made.rafter.name);
  if (last && isSame(last.made, made)) {
    const first = framing.again(last.piece);
    return { beam: last.beam, faces: counted(last.faces, first) };
  }
  const { piece, first, told } = framing.noted(afresh);
  kept.set(made.rafter.name, { made, piece, beam: told.beam, faces: counted(told.faces, -first) });
  return told;
};
const byShape = new WeakMap<GableShape, Map<string, Kept>>();

const counted = (faces: Faces, from: number): Faces => {
  const at = (face: FaceName): number => faces[face] + from;
  return {
    plumbTop: at('plumbTop'),
    plumbBottom: at('plumbBottom'),
    seatOut: at('seatOut'),
    seatIn: at('seatIn'),
    heelCut: at('heelCut'),
  };
};

const isSame = (a: Made, b: Made): boolean =>
  a.rows === b.rows &&
  a.spot.up === b.spot.up &&
  a.spot.out === b.spot.out &&
  isSameRafter(a.rafter, b.rafter) &&
  a.nodes.every((node, i) => isSameNode(node, b.nodes[i] as Node));

const isSameNode = (a: Node, b: Node): boolean =>
  a === b || (a.at.every((x, i) => x === b.at[i]) && a.dofs.every((dof, i) => dof === b.dofs[i]));

const isSameRafter = (a: GableRafter, b: GableRafter): boolean =>
  a === b ||
  (isSameFastening(a.top, b.top) &&
    isSameFastening(a.heel, b.heel) &&
    own.every((name) => a[name] === b[name]));

const own = [
  'name',
  'side',
  'station',
  'long',
  'open',
  'deep',
  'seatOpen',
  'eased',
  'twist',
  'wood',
] as const satisfies readonly (keyof GableRafter)[];

const isSameFastening = (a: Fastening, b: Fastening): boolean =>
  a.nails === b.nails && a.tacks === b.tacks && a.rest === b.rest && a.joint === b.joint;
