import type { Vec2 } from '../geometry/vector';
import { rafterCuts } from './common';
import type { Eave, RoofForm } from './form';
import { heightOver } from './heightOver';
import { lineAt, type Piece } from './pieces';
import type { Lookouts, Rake, RoofPlan } from './plan';
import { shorteningAt, type RoofPlane } from './planes';
import { backsOf, lookoutMarks, lookoutsOf, rakeOf, reachOf } from './rake';
import { ends, type End } from './side';
import type { Timber } from './timber';

/** Rake rafters and lookouts in their places, and the notches that lookouts lie in. */
export const rakeTimbers = (
  plan: RoofPlan,
  { frames }: RoofForm,
  planes: readonly RoofPlane[],
): readonly Timber[] => {
  const rake = rakeOf(plan);
  if (!rake) return [];
  const { lookouts } = rake;
  const own = planes.filter(({ eave }) => eave.body === frames[0].body);
  return own.flatMap((plane) => [
    ...ends.map((end) => rakeTimber(plan, rake, { plane, end })),
    ...(lookouts ? ends.flatMap((end) => lookoutTimbers(plan, lookouts, { plane, end })) : []),
  ]);
};

type At = { readonly plane: RoofPlane; readonly end: End };

/** x of a point so far outside a gable. */
const outside = ({ length }: RoofPlan, end: End, by: number): number => (end === 'A' ? -by : length + by);

const rakeTimber = (plan: RoofPlan, { rafter }: Rake, { plane: { eave, cuts }, end }: At): Timber => {
  const { m, overhang, plane } = eave;
  const top = topAlong(plan, eave);
  const under = (u: number): number => top(u) - rafter.depth * Math.sqrt(1 + m * m);
  const [low, high] = [-overhang, eave.run - cuts.shortening];
  return {
    id: `rake.${eave.side}.${end}`,
    origin: lineAt(eave, outside(plan, end, reachOf(plan) + rafter.thickness / 2)).from,
    direction: plane.up,
    outline: [
      [high, top(high)],
      [high, under(high)],
      [low, under(low)],
      [low, top(low)],
    ],
    thickness: rafter.thickness,
    cuts: [],
  };
};

/** A lookout seen from its end: drawn across, and as thick as it is long. */
const lookoutTimbers = (
  plan: RoofPlan,
  lookouts: Lookouts,
  { plane: { eave, cuts }, end }: At,
): readonly Timber[] => {
  const length = backsOf(plan, eave.stations, lookouts)[end] + reachOf(plan);
  const middle = outside(plan, end, reachOf(plan) - length / 2);
  return lookoutMarks(plan, lookouts, { ...eave, edgeLength: cuts.edgeLength }).map((mark, i) => ({
    id: `lookout.${eave.side}.${end}.${i + 1}`,
    origin: lineAt(eave, middle).from,
    direction: eave.plane.up,
    outline: acrossAt(plan, eave, { lookouts, mark }),
    thickness: length,
    cuts: [],
  }));
};

/** Height of the top edges' plane, level distances in from the reference face. */
const topAlong = ({ rafter }: RoofPlan, { m, seat, plane: { base } }: Eave): ((u: number) => number) => {
  const over = base + heightOver(rafter.depth, { m, seat });
  return (u) => over + m * u;
};

/** Corners of a lookout at its mark: along the plane first, then down into the notch, and back. */
const acrossAt = (
  plan: RoofPlan,
  eave: Eave,
  { lookouts: { width, thickness }, mark }: { readonly lookouts: Lookouts; readonly mark: number },
): readonly [low: Vec2, lowDeep: Vec2, highDeep: Vec2, high: Vec2] => {
  const { m, overhang } = eave;
  const g = Math.sqrt(1 + m * m);
  const top = topAlong(plan, eave);
  const at = (along: number): Vec2 => [along / g - overhang, top(along / g - overhang)];
  const deep = ([u, z]: Vec2): Vec2 => [u + (thickness * m) / g, z - thickness / g];
  const [low, high] = [at(mark - width / 2), at(mark + width / 2)];
  return [low, deep(low), deep(high), high];
};

/** A rafter with the notches that lookouts pass through it in; any other as it is. */
export const notched = (
  plan: RoofPlan,
  form: RoofForm,
  { piece, timber }: { readonly piece: Piece; readonly timber: Timber },
): Timber => {
  const lookouts = lookoutsOf(plan);
  if (!lookouts || piece.eave.body !== form.frames[0].body) return timber;
  const { eave, at } = piece;
  const nth = eave.stations.indexOf(at);
  if (Math.min(nth, eave.stations.length - 1 - nth) >= lookouts.back) return timber;
  const { edgeLength } = rafterCuts(eave, {
    rafter: plan.rafter,
    shortening: shorteningAt(plan, form, { eave, piece }),
  });
  const notches = lookoutMarks(plan, lookouts, { ...eave, edgeLength }).flatMap((mark) =>
    acrossAt(plan, eave, { lookouts, mark }),
  );
  // Its outline begins at the top of the plumb cut and ends at the top of the tail: notches come after that, going up.
  return { ...timber, outline: [...timber.outline, ...notches] };
};
