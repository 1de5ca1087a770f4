import type {
  GablePlan,
  GambrelPlan,
  HipPlan,
  RoofPlan,
  Section,
  ShedPlan,
  SteppedPlan,
} from '../core/roof/plan';
import { hair } from '../core/units/hair';
import { inch, mmPerInch, type Inch } from '../core/units/inch';
import { gradient } from '../core/units/slope';
import { shortInches } from '../core/units/lengthText';
import { complaint, type Complaint } from './complaint';
import { roofDefaults, roofLimits, slopeLimits, type Limit, type RoofLength } from './roofLimits';
import type { RoofFile } from './roofSchema';
import { lengthWanted } from './roofSchemaParts';
import { sizeOf, slopeOf, unitsOf, type Units } from './fileLengths';
import { at, keysOf, said } from './shape';
import { dormerOf } from './dormerSizes';
import { upperEndsOf } from './shedSizes';
import { fromStanding, standingOf } from './standingSizes';
import { sectionsOf } from './steppedSizes';
import { wingOf } from './wingSizes';

/** The lengths of a roof file: in inches, within limits, the missing ones filled in. */

/** What is wrong with the lengths that are there. Anything that is no number and no text is left to the schema. */
export const wrongSizes = (file: unknown): readonly Complaint[] => {
  const units = unitsOf(file);
  return [
    ...Object.entries(roofLimits).flatMap(([path, limit]) =>
      eachOf(file, path).flatMap((one) => wrongSize(one, { value: at(file, keysOf(one)), limit, units })),
    ),
    ...slopePaths.flatMap((path) => eachOf(file, path).flatMap((one) => wrongSlope(file, one, units))),
    ...wrongPosts(file, units),
  ];
};

const slopePaths = [
  'slope',
  'endSlope',
  'upperSlope',
  'yard.slope',
  'wings.*.slope',
  'dormers.*.slope',
  'sections.*.slope',
];

/** A path, or with `*` in it that of each item there is. */
const eachOf = (file: unknown, path: string): readonly string[] => {
  const [list, rest] = path.split('.*.');
  if (list === undefined || rest === undefined) return [path];
  const items = at(file, keysOf(list));
  return Array.isArray(items) ? items.map((_, i) => `${list}.${i}.${rest}`) : [];
};

type Sized = { readonly value: unknown; readonly limit: Limit; readonly units: Units };

const wrongSize = (path: string, { value, limit, units }: Sized): readonly Complaint[] => {
  if (typeof value !== 'string' && !Number.isFinite(value)) return [];
  const size = sizeOf(value, units);
  if (size === undefined) return [complaint(path, `is ${said(value)}`, lengthWanted)];
  const fits = size >= limit.min - hair && size <= limit.max + hair;
  return fits ? [] : [complaint(path, `is ${said(value)}`, rangeText(limit, units))];
};

const rangeText = ({ min, max }: Limit, units: Units): string =>
  units === 'mm'
    ? `${shortInches(min * mmPerInch)} to ${shortInches(max * mmPerInch)} mm`
    : `${min} to ${max} in`;

/** Each post's place that is no length; what is no number and no text is left to the schema. */
const wrongPosts = (file: unknown, units: Units): readonly Complaint[] => {
  const places = at(file, ['posts', 'at']);
  if (!Array.isArray(places)) return [];
  return places.flatMap((place: unknown, i) =>
    typeof place === 'string' && sizeOf(place, units) === undefined
      ? [complaint(`posts.at.${i}`, `is ${said(place)}`, lengthWanted)]
      : [],
  );
};

const wrongSlope = (file: unknown, path: string, units: Units): readonly Complaint[] => {
  const run = at(file, [...keysOf(path), 'run']);
  const rise = at(file, [...keysOf(path), 'rise']);
  const over = sizeOf(run, units);
  const up = sizeOf(rise, units);
  const unread = [
    ...(typeof run === 'string' && over === undefined
      ? [complaint(`${path}.run`, `is ${said(run)}`, lengthWanted)]
      : []),
    ...(typeof rise === 'string' && up === undefined
      ? [complaint(`${path}.rise`, `is ${said(rise)}`, lengthWanted)]
      : []),
  ];
  if (over === undefined || up === undefined) return unread;
  if (!(over > 0)) return [complaint(`${path}.run`, `is ${said(run)}`, 'more than 0, usually 12')];
  const m = up / over;
  const fits = m >= slopeLimits.min - hair && m <= slopeLimits.max + hair;
  return fits
    ? []
    : [complaint(`${path}.rise`, `is ${said(rise)} in ${said(run)}`, 'a slope of 1 to 36 in 12')];
};

/** The plan of a file whose shape and sizes were found right. */
export const planOf = (file: RoofFile): RoofPlan => {
  const size = sizesIn(file);
  if (file.kind === 'shed') return shedOf(file, size);
  if (file.kind === 'gambrel') return gambrelOf(file, size);
  if (file.kind === 'stepped') return steppedOf(file, size);
  return file.kind === 'hip' ? hipOf(file, size) : gableOf(file, size);
};

type SharedPlan = Omit<ShedPlan, 'kind' | 'rakeOverhang' | 'ledger' | 'datum'>;

type Sizes = (path: RoofLength) => Inch;

const sizesIn =
  (file: RoofFile): Sizes =>
  (path) => {
    const value = at(file, keysOf(path));
    return (
      sizeOf(value, unitsOf(file)) ??
      inch(path in roofDefaults ? roofDefaults[path as keyof typeof roofDefaults] : 0)
    );
  };

const datumOf = ({ datum }: RoofFile): GablePlan['datum'] =>
  datum === undefined || datum === 'ridgeEnd' ? 'endA' : datum;

const gableOf = (file: RoofFile, size: Sizes): GablePlan => {
  const yard = yardOf(file, size);
  const posts = postsOf(file, size);
  const ridged = ridgedOf(file, size);
  const standing = standingOf(file, size);
  const shared = { ...sharedOf(file, size), ...fromStanding(sharedOf(file, size), standing) };
  const main = { ...shared, ...ridged, rakeOverhang: size('rakeOverhang') };
  const wings = file.wings?.map((_, i) => wingOf(file, i, { ...main, ...(yard && { yard }) }));
  const dormers = file.dormers?.map((_, i) => dormerOf(file, i, { ...main, ...(yard && { yard }) }));
  return {
    kind: 'gable',
    ...shared,
    ...ridged,
    rakeOverhang: size('rakeOverhang'),
    ...rakeOf(file, size),
    datum: datumOf(file),
    ...studsOf(file, size),
    ...(yard && { yard }),
    ...(posts && { posts }),
    ...(standing && { standing }),
    ...(wings && { wings }),
    ...(dormers && { dormers }),
  };
};

const rakeOf = ({ rake }: RoofFile, size: Sizes): Pick<GablePlan, 'rake'> => {
  if (!rake) return {};
  const stock = rake.rafter ? ('rake.rafter' as const) : ('rafter' as const);
  return {
    rake: {
      rafter: { thickness: size(`${stock}.thickness`), depth: size(`${stock}.depth`) },
      lookouts: rake.lookouts !== false && {
        spacing: size('rake.lookouts.spacing'),
        thickness: size('rake.lookouts.thickness'),
        width: size('rake.lookouts.width'),
        back: rake.lookouts?.back ?? roofDefaults.lookoutsBack,
      },
    },
  };
};

const studsOf = ({ gableStuds }: RoofFile, size: Sizes): Pick<GablePlan, 'gableStuds'> =>
  gableStuds
    ? { gableStuds: { spacing: size('gableStuds.spacing'), thickness: size('gableStuds.thickness') } }
    : {};

const yardOf = ({ yard, slope, units }: RoofFile, size: Sizes): GablePlan['yard'] =>
  yard && {
    slope: slopeOf(yard.slope ?? slope, units),
    plateHeight: size('yard.plateHeight'),
    overhang: size(yard.overhang === undefined ? 'overhang' : 'yard.overhang'),
    seat: size(yard.seat === undefined ? 'seat' : 'yard.seat'),
  };

const postsOf = (file: RoofFile, size: Sizes): GablePlan['posts'] =>
  file.posts && {
    at: file.posts.at.map((place) => sizeOf(place, unitsOf(file)) ?? inch(NaN)),
    below: size('posts.below'),
  };

const shedOf = (file: RoofFile, size: Sizes): ShedPlan => ({
  kind: 'shed',
  ...sharedOf(file, size),
  rakeOverhang: size('rakeOverhang'),
  ...rakeOf(file, size),
  ...upperEndsOf(file, size),
  ...(file.between && { between: { clearance: size('between.clearance') } }),
  ...studsOf(file, size),
  datum: datumOf(file),
});

const hipOf = (file: RoofFile, size: Sizes): HipPlan => {
  const shared = sharedOf(file, size);
  const ridged = ridgedOf(file, size);
  return {
    kind: 'hip',
    ...shared,
    ...ridged,
    endSlope: file.endSlope ? slopeOf(file.endSlope, file.units) : shared.slope,
    hip: file.hip ? { thickness: size('hip.thickness'), depth: size('hip.depth') } : ridged.ridge,
    hipTop: file.hipTop ?? 'betweenCommons',
    hipFit: file.hipFit ?? 'backed',
    datum: 'ridgeEnd',
    ...gabletOf(file, size, ridged.ridge),
  };
};

const gabletOf = (
  file: RoofFile,
  size: Sizes,
  ridge: Section,
): Pick<HipPlan, 'gablet' | 'rakeOverhang' | 'gableStuds'> => {
  const { gablet } = file;
  if (!gablet) return {};
  const header = gablet.header
    ? { thickness: size('gablet.header.thickness'), depth: size('gablet.header.depth') }
    : ridge;
  const ends = (['A', 'B'] as const).filter((end) => gablet.ends?.includes(end) ?? true);
  return {
    gablet: { back: size('gablet.back'), ends, header, doubled: gablet.doubled ?? false },
    rakeOverhang: size('rakeOverhang'),
    ...studsOf(file, size),
  };
};

const gambrelOf = (file: RoofFile, size: Sizes): GambrelPlan => {
  const shared = sharedOf(file, size);
  return {
    kind: 'gambrel',
    ...shared,
    ...ridgedOf(file, size),
    ...(file.halfCircle
      ? inHalfCircle(shared)
      : { upperSlope: slopeOf(file.upperSlope ?? file.slope, file.units), breakIn: size('breakIn') }),
    breakOn: breakOnOf(file, size),
    breakTies: file.breakTies !== false && { every: file.breakTies?.every ?? roofDefaults.breakTiesEvery },
    rakeOverhang: size('rakeOverhang'),
    ...studsOf(file, size),
    datum: datumOf(file),
  };
};

/**
 * A line that climbs m from the end of a half circle of radius R meets it again 2R / (1 + m²) in, and the one from there to
 * its top climbs (m − 1) / (m + 1).
 */
const inHalfCircle = (
  plan: Pick<GambrelPlan, 'slope' | 'span' | 'reference' | 'sheathing'>,
): Pick<GambrelPlan, 'upperSlope' | 'breakIn'> => {
  const m = gradient(plan.slope);
  const clad = plan.reference === 'sheathing' ? plan.sheathing : 0;
  return {
    upperSlope: { rise: m - 1, run: m + 1 },
    breakIn: inch((plan.span + 2 * clad) / (1 + m * m)),
  };
};

const breakOnOf = ({ breakOn, purlin }: RoofFile, size: Sizes): GambrelPlan['breakOn'] => {
  if (breakOn === 'gussets')
    return { what: 'gussets', thickness: size('gussets.thickness'), reach: size('gussets.reach') };
  const stock = purlin ? 'purlin' : 'ridge';
  const section = { thickness: size(`${stock}.thickness`), depth: size(`${stock}.depth`) };
  return {
    what: 'purlin',
    purlin: section,
    seat: purlin?.seat === undefined ? section.thickness : size('purlin.seat'),
  };
};

const steppedOf = (file: RoofFile, size: Sizes): SteppedPlan => {
  const shared = sharedOf(file, size);
  const ridged = ridgedOf(file, size);
  const posts = postsOf(file, size);
  return {
    kind: 'stepped',
    ...(posts && { posts }),
    ...shared,
    ...ridged,
    rakeOverhang: size('rakeOverhang'),
    sections: sectionsOf(file, { ...shared, ...ridged }),
    ...studsOf(file, size),
    datum: datumOf(file),
  };
};

type Ridged = Pick<GablePlan, 'ridge' | 'joists' | 'collars'>;

const ridgedOf = (file: RoofFile, size: Sizes): Ridged => ({
  ridge: { thickness: size('ridge.thickness'), depth: size('ridge.depth') },
  joists: file.joists !== false && {
    every: file.joists?.every ?? roofDefaults.joistsEvery,
    height: size('joists.height'),
  },
  collars: file.collars !== false && { every: file.collars?.every ?? roofDefaults.collarsEvery },
});

const sharedOf = (file: RoofFile, size: Sizes): SharedPlan => {
  const vents = ventsOf(file, size);
  return {
    slope: slopeOf(file.slope, file.units),
    span: size('span'),
    length: size('length'),
    overhang: size('overhang'),
    spacing: size('spacing'),
    rafter: { thickness: size('rafter.thickness'), depth: size('rafter.depth') },
    plate: { width: size('plate.width') },
    seat: size('seat'),
    reference: file.reference ?? 'plate',
    sheathing: size('sheathing'),
    blockAllowance: size('blockAllowance'),
    blockStands: file.blockStands ?? 'plumb',
    ...(vents && { vents }),
  };
};

const ventsOf = ({ vents }: RoofFile, size: Sizes): RoofPlan['vents'] => {
  if (vents?.shape === 'notch')
    return { shape: 'notch', depth: size('vents.depth'), leave: size('vents.leave') };
  return vents && { shape: 'holes', count: vents.count, diameter: size('vents.diameter') };
};
