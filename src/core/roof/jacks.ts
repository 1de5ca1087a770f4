import type { Vec2 } from '../geometry/vector';
import { hair } from '../units/hair';
import { deckOf, handsOf, hasPlane, type Edge } from './edges';
import type { FiguredJacks } from './figuredSlants';
import { frameOf, type Eave, type RoofForm } from './form';
import type { Framing } from './framing';
import { heightAt, woodOf } from './hips';
import { startsAtEave, topOf, type Piece } from './pieces';
import type { RoofPlan } from './plan';
import { shorteningAt, sidesOf, wallsOf } from './planes';
import { cheekOf, halfAcross, skewOf, type Skew } from './skew';
import { dot2, type Stop } from './surface';

/** Rafters that a hip or valley cuts short: from the plate to a hip, from a valley to the ridge, or between two of them. */

/** One that a jack comes to, and how. */
export type Meet = {
  readonly edge: Edge;
  readonly hand: 'left' | 'right';
  readonly skew: Skew;
  /** Level, along the jack, what half of its thickness takes. Inches. */
  readonly shortening: number;
};

/** One jack with what it starts at and comes to; nothing is the plate, or what ends commons. */
export type Jack = {
  readonly piece: Piece;
  readonly bottom?: Meet;
  readonly top?: Meet;
  /** Level, theoretical, and what comes off at the upper end. Inches. */
  readonly run: number;
  readonly shortening: number;
};

export const jacksOf = (plan: RoofPlan, { form, edges, pieces }: Framing): readonly Jack[] =>
  pieces.flatMap((piece) => {
    const bottom = startsAtEave(piece) ? undefined : meetAt(form, edges, { piece, stops: piece.low });
    const top = topOf(piece) === 'slope' ? meetAt(form, edges, { piece, stops: piece.high }) : undefined;
    if (!top && (!bottom || topOf(piece) === 'slope')) return [];
    if (!bottom && !startsAtEave(piece)) return [];
    const run = piece.to - piece.from;
    const shortening = top?.shortening ?? shorteningAt(plan, form, { eave: piece.eave, piece });
    const jack = { piece, run, shortening, ...(bottom && { bottom }), ...(top && { top }) };
    return bottom && !leavesWood(plan, jack) ? [] : [jack];
  });

const meetAt = (
  form: RoofForm,
  edges: readonly Edge[],
  { piece, stops }: { readonly piece: Piece; readonly stops: readonly Stop[] },
): Meet | undefined => {
  const { plane } = piece.eave;
  const other = stops.find((stop) => stop.what === 'plane');
  const edge = edges.find(
    (one) =>
      one.kind !== 'ridge' && hasPlane(one, plane) && other !== undefined && hasPlane(one, other.plane),
  );
  const thickness = edge && (edge.kind === 'sleeper' ? 0 : woodOf(form, edge)?.thickness);
  if (!edge || thickness === undefined) return undefined;
  const skew = skewOf(plane.up, edge.line.way);
  const hand =
    edge.kind !== 'hip' ? sideOn(edge, piece) : handsOf(edge).left.plane === plane ? 'left' : 'right';
  return { edge, hand, skew, shortening: halfAcross(thickness, skew) };
};

/** Which side of a valley a jack is on: past where the planes part, both are in the host's. */
const sideOn = ({ line: { way } }: Edge, { eave: { plane }, low }: Piece): 'left' | 'right' => {
  const left: Vec2 = [-way[1], way[0]];
  const starts = low.some(({ what }) => what === 'plane');
  return dot2(left, plane.up) > 0 === starts ? 'left' : 'right';
};

/** Both faces are cut to their whole width: the shorter side of the jack has a length. */
const leavesWood = ({ rafter }: RoofPlan, { run, bottom, top, shortening }: Jack): boolean => {
  const lost = (meet: Meet | undefined): number =>
    meet ? (rafter.thickness / 2) * (meet.skew.cos / meet.skew.sin) : 0;
  return run - shortening - (bottom?.shortening ?? 0) - lost(bottom) - lost(top) > hair;
};

/** One entry for each side of the hips and valleys and each kind of eave. */
export const figuredJacks = (
  plan: RoofPlan,
  form: RoofForm,
  jacks: readonly Jack[],
): readonly FiguredJacks[] => {
  const groups: [Jack, ...Jack[]][] = [];
  for (const jack of jacks) {
    const same = groups.find(([first]) => isAlike(first, jack));
    if (same) same.push(jack);
    else groups.push([jack]);
  }
  return groups.map((group, i) => entry(plan, form, { group, id: `jack.${i + 1}` }));
};

const isEnd = ({ piece }: Jack): boolean => piece.eave.plane.up[1] === 0;

const isAlike = (a: Jack, b: Jack): boolean =>
  isEnd(a) === isEnd(b) &&
  Math.abs(a.piece.eave.m - b.piece.eave.m) < hair &&
  a.piece.eave.overhang === b.piece.eave.overhang &&
  meetsAlike(a.bottom, b.bottom) &&
  meetsAlike(a.top, b.top) &&
  (topOf(a.piece) === 'header') === (topOf(b.piece) === 'header');

const meetsAlike = (a: Meet | undefined, b: Meet | undefined): boolean =>
  a === b ||
  (a !== undefined &&
    b !== undefined &&
    a.edge.kind === b.edge.kind &&
    a.hand === b.hand &&
    Math.abs(a.skew.cos - b.skew.cos) < hair &&
    Math.abs(a.shortening - b.shortening) < hair);

type Group = { readonly group: readonly [Jack, ...Jack[]]; readonly id: string };

const entry = (plan: RoofPlan, form: RoofForm, { group, id }: Group): FiguredJacks => {
  const ordered = [...group].sort((a, b) => a.run - b.run);
  const runs = ordered
    .map(({ run }) => run)
    .filter((run, i, all) => i === 0 || run - (all[i - 1] as number) > hair);
  const longest = ordered.at(-1) ?? group[0];
  const { eave } = longest.piece;
  const { shortening, bottom, top } = longest;
  const g = Math.sqrt(1 + eave.m * eave.m);
  const off = bottom?.shortening ?? 0;
  const { run } = longest;
  const walls = [...new Set(group.map(({ piece }) => piece.eave.side))];
  const isPart = group.every(({ piece }) => frameOf(form, piece.eave.body).name !== undefined);
  return {
    id,
    kind: kindOf(longest),
    count: group.length,
    side: isPart ? sidesOf(walls) : wallsOf(walls),
    ...handsTold(longest),
    run,
    lineLength: run * g,
    bodyLength: (run - shortening - off) * g,
    tailLength: bottom ? 0 : eave.overhang * g,
    heightAbovePlate: heightAt(plan, eave),
    seat: bottom ? 0 : eave.seat,
    slope: { rise: eave.m, run: 1 },
    cheeks: [
      ...(bottom && bottom.edge.kind !== 'sleeper'
        ? [cheekOf({ end: 'bottom', side: towardEdge(eave, bottom, 'left') }, bottom.skew, eave.m)]
        : []),
      ...(top ? [cheekOf({ end: 'top', side: towardEdge(eave, top, 'right') }, top.skew, eave.m)] : []),
    ],
    ...(bottom && footOf(form, eave, bottom)),
    shorteningTop: shortening,
    shorteningBottom: off,
    difference: plan.spacing * Math.abs(climb(eave, top) - climb(eave, bottom)) * g,
    lineLengths: runs.map((one) => one * g),
    lengths: runs.map((one) => (one - shortening - off) * g),
    counts: runs.map((one) => group.filter((jack) => Math.abs(jack.run - one) <= hair).length),
  };
};

/** On a sleeper a jack stands with a level cut, the saw tilted to the pitch of what the sleeper lies on. */
const footOf = (form: RoofForm, { m }: Eave, { edge }: Meet): Pick<FiguredJacks, 'foot'> => {
  const deck = deckOf(form, edge);
  return deck ? { foot: { level: { rise: m, run: 1 }, sawTilt: { rise: deck.plane.m, run: 1 } } } : {};
};

const kindOf = ({ piece, bottom, top }: Jack): FiguredJacks['kind'] => {
  if (!bottom) return top?.edge.kind === 'hip' ? 'hipJack' : 'plateToValley';
  if (!top && topOf(piece) === 'header') return 'valleyToHeader';
  if (!top) return bottom.edge.kind === 'sleeper' ? 'blindJack' : 'valleyJack';
  return top.edge.kind === 'hip' ? 'hipValleyCripple' : 'valleyCripple';
};

const handsTold = ({ bottom, top }: Jack): Pick<FiguredJacks, 'hipSide' | 'valleySide'> => ({
  ...(top?.edge.kind === 'hip' && { hipSide: top.hand }),
  ...(bottom ? { valleySide: bottom.hand } : top?.edge.kind === 'valley' ? { valleySide: top.hand } : {}),
});

/** Up a plane, how far a line across it goes for each inch along the eave. */
const climb = ({ plane: { up } }: Eave, meet: Meet | undefined): number => {
  if (!meet) return 0;
  const { way } = meet.edge.line;
  return dot2(way, up) / dot2(way, [-up[1], up[0]]);
};

/** Which of its own sides, looking up the jack, a cheek looks to, if it is this one where the line runs to the left. */
const towardEdge = (
  { plane: { up } }: Eave,
  { edge }: Meet,
  whereLeft: 'left' | 'right',
): 'left' | 'right' => {
  const runsLeft = dot2([-up[1], up[0]], edge.line.way) > 0;
  if (runsLeft) return whereLeft;
  return whereLeft === 'left' ? 'right' : 'left';
};
