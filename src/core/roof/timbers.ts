import type { Vec2 } from '../geometry/vector';
import { clearBays } from './bays';
import { breakTimbers, miterCutOf } from './breakTimbers';
import { eaveRows, type EaveRow } from './blocks';
import { deckOf, type Edge } from './edges';
import { bearsAt, frameOf, tailedAt, type Eave, type RoofForm } from './form';
import type { Framing } from './framing';
import { headersOn, headerTimber } from './headers';
import { heightOver } from './heightOver';
import { highPlateTimbers, overHighPlate } from './highPlateTimbers';
import { heightAt, woodOf } from './hips';
import { jacksOf, type Jack, type Meet } from './jacks';
import { lineAt, type Piece } from './pieces';
import type { RoofPlan } from './plan';
import { dormerTimbers } from './dormerTimbers';
import { openingTimbers } from './openingTimbers';
import { commonsOf, isCommon, shorteningAt, type RoofPlane } from './planes';
import { notched, rakeTimbers } from './rakeTimbers';
import { ledgersOf, ridgeTimber, sleeperTimber } from './ridgeTimbers';
import { ridgesOn } from './ridges';
import { atTail, settledFraming } from './settled';
import { slantTimber } from './slantTimbers';
import { stepsOn, stepTimbers } from './steps';
import { dot2, pointOn } from './surface';
import type { Timber } from './timber';
import { beyond, board, levelCut, nameIn, planeCut, plateThick, rafterSide, type Cut } from './timberParts';

/** Every member of a roof in its place, as its figures have it cut: ridge or ledger, rafters, hips, blocks, plates. No ties. */
export const timbersOf = (plan: RoofPlan): readonly Timber[] => {
  const framing = settledFraming(plan);
  const { form, edges, pieces } = framing;
  const planes = commonsOf(framing, plan);
  const ridges = ridgesOn(plan, framing, planes);
  return [
    ...ledgersOf(plan, form, planes),
    ...headersOn(framing, planes).map(headerTimber),
    ...ridges.flatMap((ridge) => ridgeTimber(plan, framing, ridge)),
    ...edges.flatMap((edge) => sleeperTimber(plan, form, edge)),
    ...edges
      .filter(({ kind }) => kind === 'hip' || kind === 'valley')
      .flatMap((edge) => slantTimber(plan, framing, edge)),
    ...jacksOf(plan, framing).map((jack) => jackTimber(plan, framing, jack)),
    ...pieces
      .filter(isCommon)
      .map((piece) =>
        notched(plan, form, { piece, timber: commonTimber(plan, { ...framing, planes }, piece) }),
      ),
    ...rakeTimbers(plan, form, planes),
    ...dormerTimbers(plan, framing),
    ...eaveRows(framing).flatMap((row) => blocksOn(plan, form, row)),
    ...form.eaves
      .filter(({ stands, opening }) => !stands && !opening)
      .map((eave) => plateUnder(plan, form, eave)),
    ...openingTimbers(plan, framing),
    ...breakTimbers(plan, framing, planes),
    ...highPlateTimbers(plan, framing),
    ...stepTimbers(stepsOn(plan, ridges)),
  ];
};

const rafterTimber = (
  plan: RoofPlan,
  form: RoofForm,
  { piece, till, notch }: { piece: Piece; till: number; notch?: Timber['outline'] },
): Timber => {
  const { at } = piece;
  const eave = tailedAt(piece.eave, at);
  return {
    id: `rafter.${nameIn(form, eave)}.${at}`,
    origin: lineAt(eave, at).from,
    direction: eave.plane.up,
    outline: rafterSide(eave, {
      depth: plan.rafter.depth,
      over: heightOver(plan.rafter.depth, eave),
      till,
      ...(notch && { notch }),
    }).map(([along, z]) => [along, z + bearsAt(eave)] as const),
    thickness: plan.rafter.thickness,
    cuts: [],
  };
};

const commonTimber = (
  plan: RoofPlan,
  { planes, ...framing }: Framing & { readonly planes: readonly RoofPlane[] },
  piece: Piece,
): Timber => {
  const { form } = framing;
  const { eave } = piece;
  const miter = miterCutOf(plan, { ...framing, planes }, eave);
  const till = miter?.till ?? piece.to - shorteningAt(plan, form, { eave, piece });
  const cuts = [...tailCutsOf(framing, piece), ...(miter?.cuts ?? [])];
  const high = overHighPlate(plan, form, eave);
  return { ...rafterTimber(plan, form, { piece, till, ...high }), cuts };
};

const tailCutsOf = (framing: Framing, piece: Piece): readonly Cut[] =>
  atTail(framing, piece).map((edge) => faceOf(framing.form, piece, { edge, up: false }));

/** Cut by the faces of what it stands between. */
const jackTimber = (plan: RoofPlan, framing: Framing, jack: Jack): Timber => {
  const { form } = framing;
  const { piece, bottom, top, shortening } = jack;
  const till = top ? piece.to + past(plan, top) : piece.to - shortening;
  const cuts = [
    ...(bottom ? footCuts(plan, form, jack) : []),
    ...(top ? [faceOf(form, piece, { edge: top.edge, up: true })] : []),
    ...tailCutsOf(framing, piece),
  ];
  const whole = rafterTimber(plan, form, { piece, till });
  if (!bottom) return { ...whole, cuts };
  const outline = overValley(plan, piece, { from: piece.from - past(plan, bottom), till });
  return { ...whole, id: `${whole.id}.${Math.round(piece.from)}`, outline, cuts };
};

/** To the face of a valley, or to the tops of sleepers. */
const footCuts = (plan: RoofPlan, form: RoofForm, { piece, bottom }: Jack): readonly Cut[] => {
  if (!bottom) return [];
  const deck = deckOf(form, bottom.edge);
  if (!deck) return [faceOf(form, piece, { edge: bottom.edge, up: false })];
  return [beyond(planeCut(deck.plane, heightAt(plan, piece.eave)))];
};

/** From a valley up; near its foot still on the plate. */
const overValley = (
  { rafter }: RoofPlan,
  { eave }: Piece,
  { from, till }: { readonly from: number; readonly till: number },
): Timber['outline'] => {
  const { m, seat, plane } = eave;
  const over = plane.base + heightOver(rafter.depth, eave);
  const plumb = rafter.depth * Math.sqrt(1 + m * m);
  const low: Timber['outline'] =
    !eave.opening && from < seat && seat < till
      ? [
          [seat, plane.base],
          [from, plane.base],
        ]
      : [[from, over + m * from - plumb]];
  return [[till, over + m * till], [till, over + m * till - plumb], ...low, [from, over + m * from]];
};

/** Enough wood past the line to be cut to it. */
const past = ({ rafter: { thickness } }: RoofPlan, { skew }: Meet): number =>
  thickness + (thickness / 2) * (skew.cos / skew.sin);

/** The face of a hip or valley that a jack is cut to, at its upper or lower end. */
const faceOf = (
  form: RoofForm,
  { eave: { plane } }: Piece,
  { edge, up }: { readonly edge: Edge; readonly up: boolean },
): Cut => {
  const { way } = edge.line;
  const across: Vec2 = [-way[1], way[0]];
  const forward = dot2(across, plane.up) > 0 === up;
  const normal: Vec2 = forward ? across : [way[1], -way[0]];
  return levelCut(normal, dot2(normal, edge.from) - (woodOf(form, edge)?.thickness ?? 0) / 2);
};

/** Between neighbours, plumb over the plate's outer face, beveled to the plane; they stand in the middle of their bay. */
const blocksOn = (plan: RoofPlan, form: RoofForm, { eave, runs }: EaveRow): readonly Timber[] => {
  if (plan.blockStands !== 'plumb') return [];
  const over = heightOver(plan.rafter.depth, eave);
  const base = bearsAt(eave);
  const bays = runs.flatMap((run) =>
    clearBays(run, plan.rafter.thickness).map((clear, i) => ({
      clear,
      mid: ((run[i] as number) + (run[i + 1] as number)) / 2,
    })),
  );
  return bays.flatMap(({ clear, mid }, i): readonly Timber[] => {
    const length = clear - plan.blockAllowance;
    if (length <= 0) return [];
    const { up } = eave.plane;
    const line = lineAt(eave, mid);
    return [
      {
        id: `block.${nameIn(form, eave)}.${i + 1}`,
        origin: pointOn(line, eave.clad + plan.rafter.thickness / 2),
        direction: [Math.abs(up[1]), Math.abs(up[0])],
        outline: [
          [-length / 2, base],
          [length / 2, base],
          [length / 2, base + 2 * over + plan.rafter.depth * eave.m],
          [-length / 2, base + 2 * over + plan.rafter.depth * eave.m],
        ],
        thickness: plan.rafter.thickness,
        cuts: [planeCut(eave.plane, over + (base - eave.plane.base))],
      },
    ];
  });
};

/**
 * Under an eave, from corner to corner on the long walls and between them on the ends; a wing's comes to the main wall, or
 * to its sheathing where that is whole. */
const plateUnder = (plan: RoofPlan, form: RoofForm, eave: Eave): Timber => {
  const { plane, clad } = eave;
  const { foot, up, base } = plane;
  const { width } = plan.plate;
  const in2 = clad + width / 2;
  const along = alongPlate(plan, form, eave);
  const isEnd = up[1] === 0;
  const origin: Vec2 = isEnd ? [foot[0] + up[0] * in2, 0] : [0, foot[1] + up[1] * in2];
  return board(
    `plate.${nameIn(form, eave)}`,
    { from: origin, line: { from: origin, way: isEnd ? [0, 1] : [1, 0] } },
    { along, up: [base - plateThick, base], thickness: width },
  );
};

const alongPlate = (plan: RoofPlan, form: RoofForm, eave: Eave): Vec2 => {
  const { width } = plan.plate;
  if (eave.dormer) return [eave.dormer.from, eave.dormer.to];
  const { wing, body, section } = frameOf(form, eave.body);
  if (section) return [section.from, section.to];
  if (wing) {
    const gable = body.limits.find(({ id }) => id === 'gable');
    const sign = gable && gable.normal[1] < 0 ? -1 : 1;
    const host = form.eaves.find((one) => one.body === wing.host.body && one.plane.up[1] === -sign);
    const wall = host ? host.run - (wing.over ? 0 : host.clad) : 0;
    const ends = [sign * wall, sign * (gable?.reach ?? 0)] as const;
    return [Math.min(...ends), Math.max(...ends)];
  }
  return eave.plane.up[1] === 0 ? [-plan.span / 2 + width, plan.span / 2 - width] : [0, plan.length];
};
