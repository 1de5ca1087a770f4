import type { Vec2 } from '../geometry/vector';
import { hair } from '../units/hair';
import { heightOver } from './heightOver';
import { handsOf, leftOf, type Edge } from './edges';
import type { Cheek, FiguredHip, Turn } from './figuredSlants';
import { frameOf, type Eave, type Opening, type RoofForm } from './form';
import { reachesHostRidge, reachIn, valleySides, type Framing } from './framing';
import type { RoofPlan, Section } from './plan';
import { sidesOf, wallsOf } from './planes';
import { cheekOf, halfAcross, skewOf, type Skew } from './skew';
import { dot2, type Limit, type Plane } from './surface';

/** Hips and valleys: from a plate's corner up, their tops along the line where two planes meet. */

/** All that one hip's or valley's cuts come to. */
export type HipCuts = Omit<FiguredHip, 'id' | 'count' | 'side'>;

/** Plumb, from the plate to the plane of the top edges, at the reference face of an eave. Inches. */
export const heightAt = ({ rafter }: RoofPlan, eave: Eave): number => heightOver(rafter.depth, eave);

export const eaveOf = ({ eaves }: RoofForm, one: Plane): Eave =>
  eaves.find(({ plane }) => plane === one) as Eave;

/** Of what a hip or valley is cut; a break has no rafter along it. */
export const woodOf = (form: RoofForm, edge: Edge): Section | undefined => {
  if (edge.kind === 'hip') return frameOf(form, edge.planes[0].body).hip;
  if (edge.kind === 'sleeper' || edge.kind === 'break') return undefined;
  return frameOf(form, valleySides(form, edge).wing.body).wing?.valley;
};

export const hipCuts = (plan: RoofPlan, framing: Framing, edge: Edge): HipCuts | undefined => {
  const { form } = framing;
  const wood = woodOf(form, edge);
  if (!wood) return undefined;
  const { run, m } = edge;
  const g = Math.sqrt(1 + m * m);
  const { left, right } = handsOf(edge);
  const { shortening, cheeks } =
    edge.kind === 'hip' ? hipTop(plan, form, edge) : valleyTop(framing, edge, wood);
  const foot = valleyFoot(form, edge, wood);
  const drop = Math.max(...[left, right].map(({ plane }) => fallAcross(plane, edge) * (wood.thickness / 2)));
  const lowered = edge.kind === 'hip' && frameOf(form, left.body).hip?.fit === 'dropped';
  const heightAbovePlate = heightAt(plan, startOf(form, edge)) - (lowered ? drop : 0);
  return {
    section: { thickness: wood.thickness, depth: wood.depth },
    run,
    lineLength: run * g,
    bodyLength: (run - shortening - (foot?.shortening ?? 0)) * g,
    tailLength: foot ? 0 : Math.min(...tailReaches(form, edge)) * g,
    heightAbovePlate,
    seat: foot ? 0 : Math.max(0, (wood.depth * g - heightAbovePlate) / m),
    slope: { rise: m, run: 1 },
    cheeks: [...(foot?.cheeks ?? []), ...cheeks],
    shorteningTop: shortening,
    shorteningBottom: foot?.shortening ?? 0,
    backing: [backing(left.plane, edge), backing(right.plane, edge)],
    drop,
  };
};

/** The eave a hip or valley starts over: of a valley in an opening that of the dormer. */
export const startOf = (form: RoofForm, edge: Edge): Eave =>
  eaveOf(form, openingAt(form, edge) ? valleySides(form, edge).wing.plane : handsOf(edge).left.plane);

/** That a valley stands in. */
export const openingAt = (form: RoofForm, edge: Edge): Opening | undefined =>
  edge.kind === 'valley' ? frameOf(form, valleySides(form, edge).wing.body).wing?.opening : undefined;

/** How much a plane falls for each inch level and square to the hip, away from it. */
const fallAcross = ({ m, up }: Plane, edge: Edge): number => m * Math.abs(dot2(up, leftOf(edge)));

/** Of a side's bevel, square to the hip: its slope along the hip times the cotangent of its angle with that eave. */
const backing = ({ up }: Plane, { m, line }: Edge): Turn => {
  const { cos, sin } = skewOf(line.way, up);
  return { rise: m * sin, run: Math.sqrt(1 + m * m) * cos };
};

type Top = { readonly shortening: number; readonly cheeks: readonly Cheek[] };

const hipTop = (plan: RoofPlan, form: RoofForm, edge: Edge): Top => {
  const { hip, ridge } = frameOf(form, edge.planes[0].body);
  const till = tillOf(edge);
  if (till && hip) return meetingFaces(edge, [headerFace(form, edge, till)], hip);
  return hip?.top === 'againstRidge' && ridge ? againstRidge(ridge, edge, hip) : betweenCommons(plan, edge);
};

/** The limit that cuts a hip short. */
export const tillOf = ({ high }: Edge): Limit | undefined =>
  high.find((stop) => stop.what === 'limit')?.limit;

/** The front of the header at a small gable: all of it stands before the line, as if half of twice as much. */
const headerFace = (form: RoofForm, edge: Edge, { normal }: Limit): Faced => ({
  way: [-normal[1], normal[0]],
  thickness: 2 * (frameOf(form, edge.planes[0].body).header?.thickness ?? 0),
});

/** Into the corner of the commons at the ridge's end: a cheek against each. The middle ends where the first face is met. */
const betweenCommons = ({ rafter }: RoofPlan, edge: Edge): Top => {
  const { left, right } = handsOf(edge);
  const against = ({ up }: Plane): Skew => skewOf(edge.line.way, up);
  const sides = [
    { side: 'left', skew: against(left.plane) },
    { side: 'right', skew: against(right.plane) },
  ] as const;
  return {
    shortening: Math.max(...sides.map(({ skew }) => halfAcross(rafter.thickness, skew))),
    cheeks: sides.map(({ side, skew }) => cheekOf({ end: 'top', side }, skew, edge.m)),
  };
};

/** Against the side of the ridge: one cheek, on the side that looks at it. */
const againstRidge = (ridge: Section, edge: Edge, wood: Section): Top =>
  meetingFaces(edge, [{ way: [1, 0], thickness: ridge.thickness }], wood);

/** Something upright that a hip or valley comes to: the level way it runs, how thick it is, how far past the end its line is. */
export type Faced = { readonly way: Vec2; readonly thickness: number; readonly beyond?: number };

/** The middle ends where it meets the first face; a cheek for each that takes more than the others on one of the sides. */
const meetingFaces = (edge: Edge, faces: readonly Faced[], wood: Section): Top => {
  const { way } = edge.line;
  const met = faces.map((face) => {
    const skew = skewOf(way, face.way);
    const side = lookingAt(edge, face.way);
    const middle = halfAcross(face.thickness, skew) - (face.beyond ?? 0);
    const aside = (((side === 'left' ? 1 : -1) * wood.thickness) / 2) * (skew.cos / skew.sin);
    return { skew, side, middle, sides: [middle + aside, middle - aside] as const };
  });
  const most = ([0, 1] as const).map((i) => Math.max(...met.map(({ sides }) => sides[i])));
  return {
    shortening: Math.max(...met.map(({ middle }) => middle)),
    cheeks: met
      .filter(({ skew, sides }) => skew.cos > hair && sides.some((one, i) => one >= (most[i] ?? 0) - hair))
      .sort((a, b) => (a.side === b.side ? 0 : a.side === 'left' ? -1 : 1))
      .map(({ skew, side }) => cheekOf({ end: 'top', side }, skew, edge.m)),
  };
};

/** To which of its sides, looking up, an end looks that is cut along something that runs this way. */
const lookingAt = (edge: Edge, way: Vec2): 'left' | 'right' => {
  const across: Vec2 = [-way[1], way[0]];
  const out: Vec2 = dot2(across, edge.line.way) > 0 ? across : [way[1], -way[0]];
  return dot2(out, leftOf(edge)) > 0 ? 'left' : 'right';
};

/**
 * Where the wing's ridge comes in as high as the host's, into the corner of both; lower, against the side of the wing's
 * ridge that runs on, or against the long valley beside that ridge's end. The long valley goes to the host's ridge.
 */
const valleyTop = (framing: Framing, edge: Edge, wood: Section): Top =>
  meetingFaces(edge, valleyFaces(framing, edge), wood);

export const valleyFaces = ({ form, edges }: Framing, edge: Edge): readonly Faced[] => {
  const { host, wing } = valleySides(form, edge);
  const { ridge, wing: how } = frameOf(form, wing.body);
  const header = how?.opening?.plan.header;
  const beam = how?.host.ridge;
  if (!how || !ridge || !beam) return [];
  const along = ({ plane: { up } }: typeof host): Vec2 => [-up[1], up[0]];
  const own = { way: along(wing), thickness: ridge.thickness };
  const main = { way: along(host), thickness: beam.thickness };
  if (header) return [{ ...main, thickness: header.thickness }, own];
  if (edge.parts !== undefined) return [main];
  if (reachesHostRidge(edge, host)) return [main, own];
  const long = edges.find((one) => one.parts !== undefined && one.planes.some((of) => of.body === wing.body));
  const past = { ...main, beyond: reachIn(host, { from: edge.from, way: edge.line.way }) - edge.run };
  return long ? [{ way: long.line.way, thickness: how.valley.thickness }, own, past] : [own, past];
};

/** Looking down a valley of an opening: the inner trimmer, and the lower header where its gable stands on that. */
export const footFaces = ({ plan: { header }, faces, plates }: Opening, { from }: Edge): readonly Faced[] => {
  const [first, last] = faces.map((face) => Math.abs(face - from[0])) as [number, number];
  const trimmer: Faced = { way: [0, 1], thickness: 2 * Math.min(first, last) };
  return plates === undefined ? [trimmer, { way: [1, 0], thickness: 4 * header.thickness }] : [trimmer];
};

/** An edge the other way, and a cheek seen from there. */
export const turned = (edge: Edge): Edge => ({
  ...edge,
  from: edge.to,
  to: edge.from,
  line: { from: edge.to, way: [-edge.line.way[0], -edge.line.way[1]] },
});

/** The lower end of a valley that hangs on what it comes down to. */
const valleyFoot = (form: RoofForm, edge: Edge, wood: Section): Top | undefined => {
  const opening = openingAt(form, edge);
  if (!opening) return undefined;
  const { shortening, cheeks } = meetingFaces(turned(edge), footFaces(opening, edge), wood);
  const seen = { left: 'right', right: 'left' } as const;
  return { shortening, cheeks: cheeks.map((cheek) => ({ ...cheek, end: 'bottom', side: seen[cheek.side] })) };
};

/** The sides of a valley come to the walls before its middle comes to their corner: its heel is cut where the first does. */
export const heelOf = ({ line, planes }: Edge, thickness: number): number =>
  Math.max(
    ...planes
      .map(({ plane }) => skewOf(line.way, plane.up))
      .map(({ cos, sin }) => (thickness / 2) * (sin / cos)),
  );

/** Level along the hip, from the plate's corner to the tail lines of both sides. Inches. */
export const tailReaches = ({ eaves }: RoofForm, { planes, line }: Edge): readonly number[] =>
  planes.map(({ plane }) => {
    const eave = eaves.find((one) => one.plane === plane) as Eave;
    return eave.overhang / dot2(plane.up, line.way);
  });

/** Hips or valleys with the same numbers told together. */
export const figuredSlants = (
  plan: RoofPlan,
  framing: Framing,
  which: 'hip' | 'valley',
): readonly FiguredHip[] => {
  const { form, edges } = framing;
  const groups: { readonly cuts: HipCuts; readonly of: Eave[]; count: number }[] = [];
  for (const edge of edges.filter(({ kind }) => kind === which)) {
    const cuts = hipCuts(plan, framing, edge);
    if (!cuts) continue;
    const of = edge.planes.map(({ plane }) => eaveOf(form, plane));
    const same = groups.find((group) => isSame(group.cuts, cuts));
    if (same) {
      same.count += 1;
      same.of.push(...of);
    } else groups.push({ cuts, of, count: 1 });
  }
  const alone = groups.length === 1;
  return groups.map(({ cuts, of, count }, i) => ({
    id: alone ? which : `${which}.${i + 1}`,
    count,
    side: which === 'hip' ? wallsOf(of.map(({ side }) => side)) : cornersOf(form, of),
    ...(which === 'hip' && endOf(form, of)),
    ...cuts,
  }));
};

/** Valleys are told by the wing's eaves they start at. */
const cornersOf = (form: RoofForm, of: readonly Eave[]): FiguredHip['side'] =>
  sidesOf([...new Set(of.filter(({ body }) => frameOf(form, body).wing).map(({ side }) => side))]);

/** The end that hips stand at, where a small gable may make it differ from the other. */
const endOf = (form: RoofForm, of: readonly Eave[]): Pick<FiguredHip, 'end'> => {
  const ends = new Set(of.map(({ side }) => side).filter((side) => side === 'A' || side === 'B'));
  const [end, ...others] = ends;
  const cut = of.some(({ body }) => frameOf(form, body).header);
  return cut && end && others.length === 0 ? { end } : {};
};

const close = (a: number, b: number): boolean => Math.abs(a - b) < hair;
const sameTurn = (a: Turn, b: Turn): boolean => close(a.rise * b.run, b.rise * a.run);

const isSame = (a: HipCuts, b: HipCuts): boolean =>
  close(a.section.thickness, b.section.thickness) &&
  close(a.section.depth, b.section.depth) &&
  close(a.run, b.run) &&
  close(a.bodyLength, b.bodyLength) &&
  close(a.tailLength, b.tailLength) &&
  sameTurn(a.backing[0], b.backing[0]) &&
  sameTurn(a.backing[1], b.backing[1]) &&
  a.cheeks.length === b.cheeks.length &&
  a.cheeks.every(
    (cheek, i) => cheek.side === b.cheeks[i]?.side && sameTurn(cheek.cheekAngle, b.cheeks[i].cheekAngle),
  );
