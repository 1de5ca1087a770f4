import type { Vec3 } from '../../core/geometry/vector';
import type { Point } from '../ink/pencil';
import type { Dimension } from './dimension';
import { standsOn, type SheetLay, type SheetView } from './sheetLay';
import type { Inked } from './sheetParts';
import { atWall } from './wallBehind';

/** Lengths as figured, each on the line it measures. What was read stands on the sheet of readings, never here. */

/** From the work to the line of figures, CSS pixels. */
const firstLine = 15;
/** A bay narrower than this has no room for its figure, CSS pixels. */
const bayRoom = 40;
/** Where lines are brought out from under the work, inches. */
const under = -12;

type Measured = Pick<Inked, 'input' | 'scheme' | 'lay'>;

export const dimensionsOf = (measured: Measured): readonly Dimension[] => [
  ...onPlan(measured),
  ...alongSide(measured),
  ...acrossSection(measured),
];

/** Between two places of a view, on a level line at y or an upright one at x. */
const between = (
  {
    lay,
    view,
    on,
  }: { readonly lay: SheetLay; readonly view: SheetView; readonly on: { x: number } | { y: number } },
  a: Vec3,
  b: Vec3,
): readonly Dimension[] => {
  const [p, q] = [standsOn(lay, view, a), standsOn(lay, view, b)];
  if (!p || !q) return [];
  const inches = Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]) + Math.abs(a[2] - b[2]);
  const to = ([x, y]: Point): Point => ('y' in on ? [x, on.y] : [on.x, y]);
  return [{ from: to(p), to: to(q), inches, inFeet: inches >= 24, off: [p, q] }];
};

/** The building's length over the plan and its width beside it. */
const onPlan = ({ input, scheme: { half, yard, length }, lay }: Measured): readonly Dimension[] => {
  const { plan } = lay.views;
  if (!plan) return [];
  const step = firstLine * input.ratio;
  const of = { lay, view: 'plan' } as const;
  return [
    ...between({ ...of, on: { y: plan.box.y - step } }, [0, yard, 0], [length, yard, 0]),
    ...between({ ...of, on: { x: plan.box.x - step } }, [0, yard, 0], [0, -half, 0]),
  ];
};

/** From station to station, in inches as layout is said; where bays are too narrow for that, from end A to the chosen one. */
const alongSide = ({ input, scheme: { stations }, lay }: Measured): readonly Dimension[] => {
  const { side } = lay.views;
  if (!side) return [];
  const y = side.box.y + side.box.height + firstLine * 0.9 * input.ratio;
  const from = (a: number, b: number): readonly Dimension[] =>
    between({ lay, view: 'side', on: { y } }, [a, 0, under], [b, 0, under]).map((one) => ({
      ...one,
      inFeet: false,
    }));
  const wide = ((stations[2] ?? 0) - (stations[1] ?? 0)) * lay.scale >= bayRoom * input.ratio;
  if (wide) return stations.slice(1).flatMap((x, i) => from(stations[i] ?? 0, x));
  const chosen = stations[input.station - 1];
  return chosen === undefined || input.station === 1 ? [] : from(stations[0] ?? 0, chosen);
};

/** Over which share of the half width the height stands: the yard's, or the street's where the yard is a wall. */
const heightAt = 0.86;

/** Overhang, width, overhang under the section, and the height of the ridge's top over the plate in it. */
const acrossSection = ({ input, scheme, lay }: Measured): readonly Dimension[] => {
  const { half, yard, top, sides } = scheme;
  const { section, side } = lay.views;
  if (!section || !side) return [];
  const { overhang } = input.shown.level.plan;
  const y = side.box.y + side.box.height + firstLine * 0.9 * input.ratio;
  const across = (a: number, b: number): readonly Dimension[] =>
    between({ lay, view: 'section', on: { y } }, [0, a, under], [0, b, under]);
  const out = (atWall(scheme) ? -half : half) * heightAt;
  const x = section.origin[0] - out * lay.scale;
  const high = between({ lay, view: 'section', on: { x } }, [0, half, top], [0, half, 0]);
  return [
    ...(sides.includes('yard') ? across(half + overhang, half) : []),
    ...across(yard, -half),
    ...across(-half, -half - overhang),
    ...high.map(({ from, to, inches, inFeet = false }) => ({ from, to, inches, inFeet })),
  ];
};
