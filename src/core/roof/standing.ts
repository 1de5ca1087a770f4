import { shortInches } from '../units/lengthText';
import { isOver } from '../units/hair';
import { gradient, type Slope } from '../units/slope';
import { openOffSlope } from '../stock/drying';
import type { Caution, FiguredStanding } from './figured';
import type { GablePlan, RoofPlan, Section, Standing } from './plan';

/**
 * A new gable that goes on from one that stands, the top edges of both in the same planes. What was measured on the
 * standing roof gives the slope, the seat and the layout of the new one.
 */

/** A body's limit where another roof goes on in the same planes: no gable, no rake. */
export const standingLimit = 'standing';

type Measured = {
  readonly span: number;
  readonly standing: Pick<Standing, 'heightAbovePlate' | 'ridgeTop' | 'ridgeThickness' | 'nominal'>;
};

/** Level, from the outside of the plate to the face of the standing ridge. Inches. */
export const toRidgeFace = ({ span, standing }: Measured): number => span / 2 - standing.ridgeThickness / 2;

/** The slope that stands: (ridge top − height above plate) over the run to the ridge's face. One on nothing measured is the nominal. */
export const standingSlope = (so: Measured): Slope => {
  const { ridgeTop, heightAbovePlate, nominal } = so.standing;
  if (ridgeTop === undefined) return nominal;
  return { rise: ridgeTop - heightAbovePlate, run: toRidgeFace(so) };
};

/** Level, on the plate itself: what brings a rafter's top edge to a height above the plate, (D·g − H)/m. Inches. */
export const standingBearing = (
  { depth }: Section,
  { slope, heightAbovePlate }: { readonly slope: Slope; readonly heightAbovePlate: number },
): number => {
  const m = gradient(slope);
  return (depth * Math.sqrt(1 + m * m) - heightAbovePlate) / m;
};

/** From end A. The standing roof's last rafter first, as x; then the new ones from there, the last flush with the free gable. */
export const standingRow = ({
  length,
  spacing,
  rafter: { thickness },
  standing: { end, lastRafter },
}: Pick<GablePlan, 'length' | 'spacing' | 'rafter'> & { readonly standing: Standing }): {
  readonly standing: number;
  readonly stations: readonly number[];
} => {
  const last = length - thickness / 2;
  const many = Math.floor((length + lastRafter) / spacing);
  const marks = Array.from({ length: many }, (_, i) => (i + 1) * spacing - lastRafter);
  const fromJoint = [...marks.filter((x) => !isOver(2 * thickness, last - x)), last];
  return end === 'A'
    ? { standing: -lastRafter, stations: fromJoint }
    : { standing: length + lastRafter, stations: fromJoint.map((x) => length - x).reverse() };
};

/** What the crew has to know at the joint. */
export const figuredStanding = (plan: RoofPlan): FiguredStanding | undefined => {
  if (plan.kind !== 'gable' || !plan.standing) return undefined;
  const { standing, rafter, slope } = plan;
  const row = standingRow({ ...plan, standing });
  const first = standing.end === 'A' ? row.stations[0] : row.stations.at(-1);
  const firstBay = Math.abs((first ?? 0) - row.standing) - rafter.thickness;
  const [m, nominal] = [gradient(slope), gradient(standing.nominal)];
  const g = (by: number): number => Math.sqrt(1 + by * by);
  return {
    end: standing.end,
    slope: { rise: m, run: 1 },
    riseOffNominal: (m - nominal) * toRidgeFace({ span: plan.span, standing }),
    nominalGap: Math.abs(openOffSlope(rafter.depth, { cut: nominal, lies: m })),
    lastRafter: row.standing,
    firstBay,
    underside: (rafter.depth - standing.rafterDepth) * g(m),
  };
};

const show = (value: number): string => `${shortInches(value)} in`;
const inTwelve = (m: number): string => `${shortInches(12 * m)} in 12`;

/** Heights on a roof that stands are read to the sixteenth; ours. Inches. */
const read = 1 / 16;

/** A seat that nobody gave is mended where it comes from. */
export const atStanding = (plan: RoofPlan, cautions: readonly Caution[]): readonly Caution[] =>
  plan.kind === 'gable' && plan.standing
    ? cautions.map((one) => (one.at === 'seat' ? { ...one, at: 'standing.heightAbovePlate' } : one))
    : cautions;

export const standingCautions = (plan: RoofPlan): readonly Caution[] => {
  const told = figuredStanding(plan);
  if (plan.kind !== 'gable' || !plan.standing || !told) return [];
  return [slopeOff(plan.standing, told), stockDiffers(plan.standing, told)].filter(
    (one) => one !== undefined,
  );
};

/** A rafter that lies steeper than it was cut for touches with the bottom of its plumb cut, a flatter one with the top. */
const slopeOff = (
  { nominal }: Standing,
  { slope, riseOffNominal, nominalGap }: FiguredStanding,
): Caution | undefined => {
  const off = Math.abs(riseOffNominal);
  if (!isOver(off, read)) return undefined;
  const [more, open] = riseOffNominal > 0 ? ['more', 'top'] : ['less', 'bottom'];
  return {
    code: 'standingSlope',
    at: 'standing.ridgeTop',
    text: `What stands rises ${inTwelve(slope.rise)}, not ${inTwelve(gradient(nominal))}: ${show(off)} ${more} by the ridge. The new rafters are figured to what stands. Cut to ${inTwelve(gradient(nominal))} their plumb cuts would stay ${show(nominalGap)} open at the ${open}.`,
  };
};

const stockDiffers = ({ rafterDepth }: Standing, { underside }: FiguredStanding): Caution | undefined => {
  const off = Math.abs(underside);
  if (!isOver(off, 0)) return undefined;
  return {
    code: 'standingStock',
    at: 'rafter.depth',
    text: `The standing rafters are ${show(rafterDepth)} deep. With the top edges in one plane the new undersides are ${show(off)} ${underside > 0 ? 'lower' : 'higher'}, plumb: at the ridge, at the plates' seats and at any ceiling.`,
  };
};
