import { figure } from '../core/roof/figure';
import type { RoofPlan } from '../core/roof/plan';
import { inch, mmPerInch, type Inch } from '../core/units/inch';
import { parseLength } from '../core/units/lengthText';
import { complaint, type Complaint, type Read } from './complaint';
import { readJson } from './readJson';
import { roofSchema, type RoofFile } from './roofSchema';
import { readShape, said } from './shape';

/** A roof file's text to a plan in inches that can be figured, or what is wrong with it. */
export const readRoofText = (text: string): Read<RoofPlan> => {
  const json = readJson(text);
  return json.ok ? readRoof(json.value) : json;
};

/** The same from plain data. `base` goes before every path, for a roof that sits inside another file. */
export const readRoof = (value: unknown, base = ''): Read<RoofPlan> => {
  const read = readPlain(value);
  if (read.ok || base === '') return read;
  return {
    ok: false,
    complaints: read.complaints.map((c) => ({ ...c, path: c.path === '$' ? base : `${base}.${c.path}` })),
  };
};

const readPlain = (value: unknown): Read<RoofPlan> => {
  const shape = readShape(roofSchema, value);
  if (!shape.ok) return shape;
  const { plan, complaints } = measured(shape.value);
  if (complaints.length > 0) return { ok: false, complaints };
  const wrong = cannotBeFramed(plan);
  return wrong.length === 0 ? { ok: true, value: plan } : { ok: false, complaints: wrong };
};

/** Least and most of every length, inches. The least is what a saw can cut; the most keeps every figure finite. */
type Limit = { readonly min: number; readonly max: number; readonly zero?: boolean };
const stick: Limit = { min: 0.25, max: 96 };
const reach: Limit = { min: 0, max: 240, zero: true };
const spans: Limit = { min: 12, max: 12_000 };
const runs: Limit = { min: 12, max: 2_000_000 };
const spacings: Limit = { min: 6, max: 96 };
const small: Limit = { min: 0, max: 12, zero: true };

type Sizer = {
  readonly size: (path: string, value: number | string, limit: Limit) => Inch;
  readonly complaints: Complaint[];
};

const sizer = (units: 'in' | 'mm'): Sizer => {
  const complaints: Complaint[] = [];
  const size = (path: string, value: number | string, limit: Limit): Inch => {
    const inches =
      typeof value === 'number' ? (units === 'mm' ? value / mmPerInch : value) : parseLength(value);
    const fits =
      inches !== undefined && Number.isFinite(inches) && inches <= limit.max && inches >= limit.min;
    if (!fits)
      complaints.push(
        complaint(
          path,
          `is ${said(value)}`,
          inches === undefined
            ? `a length such as 24, "5 1/2\\"", "12' 3-7/16\\"" or "305 mm"`
            : `${limit.zero ? 0 : limit.min} to ${limit.max} in`,
        ),
      );
    return inch(fits ? inches : limit.max);
  };
  return { size, complaints };
};

/** Every length in inches, defaults filled in, each limit held. */
const measured = (file: RoofFile): { readonly plan: RoofPlan; readonly complaints: readonly Complaint[] } => {
  const { size, complaints } = sizer(file.units ?? 'in');
  const section = (path: string, { thickness, depth }: RoofFile['rafter']) => ({
    thickness: size(`${path}.thickness`, thickness, stick),
    depth: size(`${path}.depth`, depth, stick),
  });
  const plan: RoofPlan = {
    kind: file.kind,
    slope: slopeOf(file, complaints),
    span: size('span', file.span, spans),
    length: size('length', file.length, runs),
    overhang: size('overhang', file.overhang, reach),
    rakeOverhang: size('rakeOverhang', file.rakeOverhang ?? 0, reach),
    spacing: size('spacing', file.spacing, spacings),
    rafter: section('rafter', file.rafter),
    ridge: section('ridge', file.ridge),
    plate: { width: size('plate.width', file.plate.width, stick) },
    seat: size('seat', file.seat, stick),
    reference: file.reference ?? 'plate',
    sheathing: size('sheathing', file.sheathing ?? '1/2"', small),
    blockAllowance: size('blockAllowance', file.blockAllowance ?? '1/16"', small),
    blockStands: file.blockStands ?? 'plumb',
    datum: file.datum ?? 'endA',
    joists: joistsOf(file, { size, complaints }),
    collars:
      file.collars === false
        ? false
        : { every: everyOf('collars.every', file.collars?.every ?? 2, complaints) },
  };
  return { plan, complaints };
};

const joistsOf = ({ joists }: RoofFile, { size, complaints }: Sizer): RoofPlan['joists'] => {
  if (joists === false) return false;
  return {
    every: everyOf('joists.every', joists?.every ?? 1, complaints),
    height: size('joists.height', joists?.height ?? 0, reach),
  };
};

const everyOf = (path: string, value: number, complaints: Complaint[]): number => {
  if (value >= 1 && value <= 100) return value;
  complaints.push(complaint(path, `is ${value}`, 'a whole number, 1 to 100'));
  return 1;
};

/** Slopes that can be framed: 1 to 36 in 12. */
const slopeOf = ({ slope }: RoofFile, complaints: Complaint[]): RoofPlan['slope'] => {
  const { rise, run } = slope;
  if (!(run > 0 && Number.isFinite(run)))
    complaints.push(complaint('slope.run', `is ${run}`, 'more than 0, usually 12'));
  else if (!(rise > 0 && (rise * 12) / run >= 1 && (rise * 12) / run <= 36))
    complaints.push(
      complaint('slope.rise', `is ${rise}`, `a slope of 1 to 36 in 12: here ${run / 12} to ${run * 3}`),
    );
  return slope;
};

/** Sizes that are each possible but do not go together. */
const cannotBeFramed = (plan: RoofPlan): readonly Complaint[] => {
  const cuts = figure({ ...plan, length: inch(Math.min(plan.length, 1200)) }).commonRafters[0];
  if (!cuts) return [];
  const bearing = plan.reference === 'sheathing' ? plan.seat - plan.sheathing : plan.seat;
  const no: Complaint[] = [];
  if (bearing > plan.plate.width)
    no.push(
      complaint(
        'seat',
        `is ${plan.seat} in on a plate of ${plan.plate.width} in`,
        `at most ${plan.plate.width} in`,
      ),
    );
  if (bearing <= 0)
    no.push(
      complaint('seat', 'does not reach the plate behind the sheathing', `more than ${plan.sheathing} in`),
    );
  if (cuts.notchDepth >= plan.rafter.depth)
    no.push(
      complaint(
        'seat',
        `of ${plan.seat} in cuts the rafter through`,
        `less than ${cuts.maxSeat * 4} in; ${cuts.maxSeat} in keeps a quarter of the depth`,
      ),
    );
  if (plan.seat + plan.ridge.thickness / 2 >= cuts.run)
    no.push(
      complaint(
        'span',
        'leaves no room for a rafter between seat and ridge',
        `more than ${2 * (plan.seat + plan.ridge.thickness / 2)} in`,
      ),
    );
  if (plan.length < 2 * plan.rafter.thickness)
    no.push(complaint('length', 'is too short for two rafters', `at least ${2 * plan.rafter.thickness} in`));
  if (plan.spacing <= plan.rafter.thickness)
    no.push(complaint('spacing', 'is no wider than a rafter', `more than ${plan.rafter.thickness} in`));
  return no;
};
