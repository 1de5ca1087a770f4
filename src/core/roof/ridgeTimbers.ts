import type { Vec2 } from '../geometry/vector';
import { deckOf, type Edge } from './edges';
import { frameOf, type Frame, type RoofForm } from './form';
import type { Framing } from './framing';
import { eaveOf, heightAt } from './hips';
import type { RoofPlan } from './plan';
import { topOf, type RoofPlane } from './planes';
import { ledgerPast } from './rake';
import type { RidgeOn } from './ridges';
import { dot2, type Of } from './surface';
import type { Timber } from './timber';
import { beyond, board, levelCut, planeCut, type Cut } from './timberParts';

/** Ridges, ledgers and sleepers in their place. */

/** A wing's ridge is cut to what it comes to: its length is that of its middle. */
export const ridgeTimber = (
  plan: RoofPlan,
  framing: Framing,
  { edge, frame, ends, figured }: RidgeOn,
): readonly Timber[] => {
  if (!frame.ridge) return [];
  // A long valley ends at the host's ridge and cuts nothing off it.
  const inner =
    frame.wing &&
    framing.edges.find(
      ({ parts, planes }) => parts !== undefined && planes.some((of) => of.body === frame.body),
    );
  const [low, high] = ends.map(({ past: more, more: board }) => more + board) as [number, number];
  const slack = inner ? frame.ridge.thickness : 0;
  const timber = board(figured.id, edge, {
    along: [-low - (low < 0 ? slack : 0), edge.run + high + (high < 0 ? slack : 0)],
    up: [figured.topHeight - frame.ridge.depth, figured.topHeight],
    thickness: frame.ridge.thickness,
  });
  if (frame.wing?.over) return [{ ...timber, cuts: deckCuts(plan, framing, frame) }];
  if (!inner) return [timber];
  return [
    { ...timber, cuts: [ridgeCut(inner, frame.wing?.valley.thickness ?? 0, edge), ...hostCuts(frame)] },
  ];
};

/** To the tops of the sleepers. */
const deckCuts = (plan: RoofPlan, { form, edges }: Framing, { body }: Frame): readonly Cut[] => {
  const foot = edges.find(({ kind, planes }) => kind === 'sleeper' && planes.some((of) => of.body === body));
  const deck = foot && deckOf(form, foot);
  const eave = form.eaves.find((one) => one.body === body);
  return deck && eave ? [beyond(planeCut(deck.plane, heightAt(plan, eave)))] : [];
};

/** The face of the host's ridge. */
const hostCuts = ({ body, wing }: Frame): readonly Cut[] =>
  body.limits
    .filter(({ id }) => id === 'host')
    .map(({ normal, reach }) => levelCut(normal, reach - (wing?.host.ridge?.thickness ?? 0) / 2));

const ridgeCut = ({ from, line: { way } }: Edge, thickness: number, ridge: Edge): Cut => {
  const across: Vec2 = [-way[1], way[0]];
  const mid: Vec2 = [(ridge.from[0] + ridge.to[0]) / 2, (ridge.from[1] + ridge.to[1]) / 2];
  const beyond = dot2(across, from) - dot2(across, mid) > 0;
  const normal: Vec2 = beyond ? across : [way[1], -way[0]];
  return levelCut(normal, dot2(normal, from) - thickness / 2);
};

/** Its back on the wall, its top flush with the rafters where they meet its face. */
export const ledgersOf = (
  plan: RoofPlan,
  { frames }: RoofForm,
  [plane]: readonly RoofPlane[],
): readonly Timber[] => {
  const [{ ledger }] = frames;
  if (!ledger || !plane) return [];
  const top = topOf(plane);
  const from: Vec2 = [0, -ledger.thickness / 2];
  return [
    board(
      'ledger',
      { from, line: { from, way: [1, 0] } },
      {
        along: [-ledgerPast(plan), plan.length + ledgerPast(plan)],
        up: [top - ledger.depth, top],
        thickness: ledger.thickness,
      },
    ),
  ];
};

/** Lies on the sheathing under the jacks that stand on it, along the line of their top edges; its edges drawn plumb. */
export const sleeperTimber = (plan: RoofPlan, form: RoofForm, edge: Edge): readonly Timber[] => {
  const deck = deckOf(form, edge);
  const own = edge.planes.find((of) => of !== deck);
  const wood = own && frameOf(form, own.body).wing?.over?.sleeper;
  if (edge.kind !== 'sleeper' || !deck || !own || !wood) return [];
  const { way } = edge.line;
  const left: Vec2 = [-way[1], way[0]];
  const [inward, out] = dot2(left, own.plane.up) > 0 ? [left, way] : [[way[1], -way[0]] as const, way];
  const top = planeCut(deck.plane, heightAt(plan, eaveOf(form, own.plane)));
  const thick = wood.thickness * Math.sqrt(1 + deck.plane.m * deck.plane.m);
  const low = top.reach - thick;
  const span = 4 * plan.span * (1 + edge.m);
  return [
    {
      id: `sleeper.${own.plane.id}`,
      origin: [edge.from[0] + (inward[0] * wood.depth) / 2, edge.from[1] + (inward[1] * wood.depth) / 2],
      direction: out,
      outline: [
        [-wood.depth, low - span],
        [edge.run + wood.depth, low - span],
        [edge.run + wood.depth, low + span],
        [-wood.depth, low + span],
      ],
      thickness: wood.depth,
      cuts: [top, beyond({ normal: top.normal, reach: low }), ...middleCut(form, own), wallCut(deck)],
    },
  ];
};

/** Sleepers end with the sheathing, over the wall. */
const wallCut = ({ plane: { up, foot } }: Of): Cut => levelCut([-up[0], -up[1]], -dot2(up, foot));

/** Two sleepers meet over the middle of their wing. */
const middleCut = (form: RoofForm, { plane: { up, foot } }: Of): readonly Cut[] => {
  const eave = form.eaves.find(({ plane }) => plane.up === up && plane.foot === foot);
  return eave ? [levelCut(up, dot2(up, foot) + eave.run)] : [];
};
