import { hair, hairsIn } from '../units/hair';
import { rafterCuts, type RafterCuts } from './common';
import type { Walls } from './figuredSlants';
import { bearsAt, frameOf, openingIn, tailedAt, type Eave, type RoofForm } from './form';
import type { Framing } from './framing';
import { startsAtEave, topOf as topKind, type Piece } from './pieces';
import type { RoofPlan } from './plan';
import type { Wall } from './side';

/** Commons of one eave and the plane they lie in: all that ridges, blocks, ties and cautions are figured from. */
export type RoofPlane = {
  readonly eave: Eave;
  readonly cuts: RafterCuts;
  readonly count: number;
  /** Its rafters end at a break, under those of a flatter plane. */
  readonly atBreak: boolean;
};

/** Planes with the same numbers share their rafters and blocks, and are told once. */
export type PlaneGroup = RoofPlane & {
  readonly side: Walls;
  readonly walls: readonly Wall[];
  /** The part of the roof it is all of, as ids call it; nothing of the main roof, or of several. */
  readonly part?: string;
};

/**
 * Each eave's commons. What comes to the ridge's end from between two hips is shortened by half a rafter there. A plane at
 * a ridge or header is figured even where the layout happens to put no common in it: the height of those is its.
 */
export const commonsOf = ({ form, edges, pieces }: Framing, plan: RoofPlan): readonly RoofPlane[] => {
  const ridges = edges.filter(({ kind }) => kind === 'ridge');
  const atRidge = ridges.flatMap(({ planes }) => planes.map(({ plane }) => plane));
  return form.eaves.flatMap((eave) => {
    const own = pieces.filter((piece) => piece.eave === eave && isCommon(piece));
    const stands = eave.dormer !== undefined || eave.plane.till !== undefined;
    if (own.length === 0 && !stands && !atRidge.includes(eave.plane)) return [];
    const shortening = shorteningAt(plan, form, { eave, piece: own[0] });
    const { highPlate } = frameOf(form, eave.body);
    const bare = own.filter(({ at }) => tailedAt(eave, at) !== eave).length;
    const atBreak = own[0] !== undefined && topKind(own[0]) === 'break';
    const alike = (one: Eave, count: number): RoofPlane => ({
      eave: one,
      cuts: mitered(
        one,
        rafterCuts(one, { rafter: plan.rafter, shortening, ...(highPlate && { highPlate }) }),
      ),
      count,
      atBreak,
    });
    const tailless = bare > 0 ? [alike({ ...eave, overhang: 0 }, bare)] : [];
    return [alike(eave, own.length - bare), ...tailless];
  });
};

/** From a miter at the break up, both long points are on the top edge. */
const mitered = ({ stands }: Eave, cuts: RafterCuts): RafterCuts =>
  stands && !stands.purlin ? { ...cuts, stockLength: cuts.edgeLength } : cuts;

/** From the plate to the ridge; where it does not come to the figured ridge the plan is not one this is figured for. */
export const isCommon = (piece: Piece): boolean =>
  startsAtEave(piece) &&
  topKind(piece) !== 'slope' &&
  Math.abs(piece.to - piece.eave.run) < hair &&
  !isTapered(piece);

/** The outer rafters of a dormer lie on the trimmers with a cut of their own. */
const isTapered = ({ eave: { dormer }, at }: Piece): boolean => dormer?.ends.includes(at) === true;

/** Level, at a rafter's upper end: half of what it meets there, or the whole ledger. Inches. */
export const shorteningAt = (
  plan: RoofPlan,
  form: RoofForm,
  { eave, piece }: { readonly eave: Eave; readonly piece: Piece | undefined },
): number => {
  if (eave.dormer) return eave.dormer.shortening;
  const opening = piece && topKind(piece) === 'header' ? openingIn(form, eave, piece.at) : undefined;
  if (opening) return opening.plan.header.thickness / 2;
  const { ledger, highPlate, ridge, header } = frameOf(form, eave.body);
  if (ledger) return ledger.thickness;
  if (header && eave.plane.till) return header.thickness;
  if (piece && topKind(piece) === 'break') return 0;
  if (highPlate) return 0;
  const atRidge = piece === undefined || topKind(piece) === 'ridge';
  return (atRidge && ridge ? ridge : plan.rafter).thickness / 2;
};

/** Longest rafter first, of equal ones the one that comes first on the roof. */
export const grouped = (planes: readonly RoofPlane[], form: RoofForm): readonly PlaneGroup[] => {
  const groups: RoofPlane[][] = [];
  for (const plane of planes) {
    const same = groups.find(([first]) => first !== undefined && isSame(first, plane));
    if (same) same.push(plane);
    else groups.push([plane]);
  }
  return groups
    .flatMap((group): readonly PlaneGroup[] => {
      const [first] = group;
      if (!first) return [];
      const count = group.reduce((sum, one) => sum + one.count, 0);
      return [{ ...first, count, ...standing(group, form) }];
    })
    .sort((a, b) => hairsIn(b.cuts.edgeLength) - hairsIn(a.cuts.edgeLength));
};

/** The walls of a group, and the roof part that it is all of, where that has a name. */
const standing = (
  group: readonly RoofPlane[],
  form: RoofForm,
): Pick<PlaneGroup, 'walls' | 'side' | 'part'> => {
  const walls = group.map(({ eave }) => eave.side);
  const [part, ...others] = new Set(group.map(({ eave }) => partOf(form, eave)));
  if (part === undefined || others.length > 0) return { walls, side: wallsOf(walls) };
  return { walls, part, side: sidesOf(walls) };
};

/** What ids call an eave's part of the roof; the main one's has no name but where it has several planes over one wall. */
export const partOf = (form: RoofForm, { part, body }: Eave): string | undefined =>
  part ?? frameOf(form, body).name;

/** Of a part of a roof that has two eaves of its own. */
export const sidesOf = (walls: readonly Wall[]): Walls => (walls.length > 1 ? 'both' : wallsOf(walls));

/** What several walls together are called. */
export const wallsOf = (walls: readonly Wall[]): Walls => {
  const [first] = walls;
  const has = (wall: Wall): boolean => walls.includes(wall);
  if (has('street') && has('yard')) return has('A') && has('B') ? 'all' : 'both';
  return has('A') && has('B') ? 'ends' : (first ?? 'all');
};

const isSame = (a: RoofPlane, b: RoofPlane): boolean =>
  a.eave.dormer === b.eave.dormer &&
  a.eave.section === b.eave.section &&
  a.eave.opening === b.eave.opening &&
  a.cuts.shortening === b.cuts.shortening &&
  a.eave.run === b.eave.run &&
  a.eave.plane.base === b.eave.plane.base &&
  a.eave.m === b.eave.m &&
  a.eave.overhang === b.eave.overhang &&
  a.eave.seat === b.eave.seat &&
  a.eave.clad === b.eave.clad;

/** Where the plane's top edges meet the ridge's face, or the break, above the street's plate. Inches. */
export const topOf = ({ eave, cuts }: RoofPlane): number =>
  bearsAt(eave) + (cuts.heightAbovePlate + (eave.run - cuts.shortening) * eave.m);

/** Plumb, plate to plane at the outside of the plate itself, whatever face the rafter is cut to. Inches. */
export const planeOverPlate = ({ eave, cuts }: Pick<RoofPlane, 'eave' | 'cuts'>): number =>
  cuts.heightAbovePlate + eave.clad * eave.m;

/** Level, from the end of the plane's run to where it is `height` above the street's plate. Inches. */
export const reachAt = ({ eave, cuts }: RoofPlane, height: number): number =>
  eave.run + (cuts.heightAbovePlate - (height - bearsAt(eave))) / eave.m;
