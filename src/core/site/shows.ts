import { boardTruth, levelBias, plateLine, racked, ridgeOverlength, type PlateSpot } from '../level/asFound';
import { spread } from '../level/draw';
import { roofOf } from '../level/layout';
import { faultRow } from '../faults/rows';
import { gaugeBlock, levelLength, tools } from '../instruments/rows';
import type { ToolId } from '../instruments/tool';
import type { End, Side } from '../roof/side';
import { clearBay, pose } from './posed';
import { openItems } from './punch';
import type { RafterPose } from './pose';
import type { Standing } from './standing';
import { plateAt, platePose } from './truePlate';

/** Where and with what a reading is taken. `from` is the end the level's mark lies toward. */
export type Reach = { readonly tool: ToolId; readonly at: string; readonly from?: string };

/**
 * What the tool shows there, in inches or as the word an eye would use; the learner reads it off the picture and says it.
 * Undefined where this tool cannot show anything. Noise keeps its place: the same reading shows the same again.
 */
export const shows = (standing: Standing, reach: Reach): number | string | undefined => {
  const value = readers[reach.tool](standing, reach.at, reach.from);
  if (typeof value !== 'number') return value;
  const noise = spread(
    { seed: standing.seed, place: `${reach.tool}@${reach.at}`, purpose: 'noise' },
    tools[reach.tool].noise,
  );
  return Math.round((value + noise) * 256) / 256;
};

type Reader = (standing: Standing, at: string, from?: string) => number | string | undefined;
const nothing: Reader = () => undefined;

/** First row whose pattern fits the place reads it. */
const first =
  (
    rows: readonly (readonly [
      RegExp,
      (standing: Standing, found: readonly string[]) => number | undefined,
    ])[],
  ): Reader =>
  (standing, at) => {
    for (const [pattern, read] of rows) {
      const found = pattern.exec(at);
      if (found) return read(standing, found.slice(1));
    }
    return undefined;
  };

const side = (word: string | undefined): Side => (word === 'yard' ? 'yard' : 'street');

const width = (standing: Standing, at: string): number => {
  const { street, yard } = pose(standing).plates;
  return yard[at as PlateSpot].y - street[at as PlateSpot].y;
};

const diagonal = (standing: Standing, which: string): number => {
  const { street, yard } = pose(standing).plates;
  const [a, b] = which === '1' ? [street.A, yard.B] : [yard.A, street.B];
  const dx = standing.level.plan.length + (which === '1' ? 1 : -1) * racked(standing);
  const dy = b.y - a.y;
  return Math.sqrt(dx * dx + dy * dy);
};

const ridgeHeight = (standing: Standing, end: End): number | undefined => {
  const ridge = pose(standing).ridge;
  if (!ridge) return undefined;
  const { street, yard } = pose(standing).plates;
  return ridge[end].z - (street[end].z + yard[end].z) / 2;
};

const ridgeCentre = (standing: Standing, end: End): number | undefined => {
  const { ridge, plates } = pose(standing);
  return ridge && ridge[end].y - standing.level.plan.ridge.thickness / 2 - plates.street[end].y;
};

const rafter = (standing: Standing, which: string, n: string): RafterPose | undefined =>
  pose(standing).rafters[`rafter.${side(which)}.${Number(n)}`];

/** Top edge of a rafter over the figured one at the heel, as a string stretched on the end rafters of its side finds it. */
export const offPlane = (standing: Standing, which: Side, station: number): number | undefined => {
  const rafters = pose(standing).rafters;
  const here = rafters[`rafter.${which}.${station}`];
  const last = roofOf(standing.level).layout.stations.length;
  const a = rafters[`rafter.${which}.1`];
  const b = rafters[`rafter.${which}.${last}`];
  if (!here || !a || !b) return undefined;
  const t = (here.x.heel - a.x.heel) / (b.x.heel - a.x.heel);
  return here.heel.z - (a.heel.z + (b.heel.z - a.heel.z) * t);
};

const strung = (standing: Standing, which: string, n: string): number | undefined => {
  if (!standing.site.lines[`string.${side(which)}`]) return undefined;
  const off = offPlane(standing, side(which), Number(n));
  return off === undefined ? undefined : gaugeBlock - off;
};

const fromDatum = (standing: Standing, which: string, n: string): number | undefined => {
  const placed = standing.site.members[`rafter.${side(which)}.${Number(n)}`];
  return placed && placed.x - standing.level.plan.rafter.thickness / 2;
};

const ridgeLength = (standing: Standing): number => {
  const figured = roofOf(standing.level).ridges[0]?.length ?? 0;
  return figured + ridgeOverlength(standing) - (standing.site.trims['board.ridge']?.end ?? 0);
};

/** The pattern lies on the top edge: it shows the plumb cut beyond (+) or short of (−) itself. */
const patterned = (standing: Standing, board: string): number =>
  boardTruth(standing, board).long - (standing.site.trims[board]?.plumb ?? 0);

const looked: Reader = (standing, at) => {
  if (at === 'punch') return openItems(standing).length;
  if (!/^board\.(\d+|ridge)$/.test(at)) return undefined;
  const fault = at === 'board.ridge' ? undefined : boardTruth(standing, at).fault;
  return (fault && faultRow(fault)?.looks) ?? 'clean';
};

/** The level lies along the ridge: rise of end B over its length, its bias turned with it. */
const bubble: Reader = (standing, at, from) => {
  const { ridge } = pose(standing);
  if (at !== 'ridge' || !ridge) return undefined;
  const rise = ((ridge.B.z - ridge.A.z) * levelLength) / standing.level.plan.length;
  return rise + (from === 'B' ? -1 : 1) * levelBias(standing);
};

const readers: Readonly<Record<ToolId, Reader>> = {
  eye: looked,
  tape: first([
    [/^width\.(A|mid|B)$/, (s, [at]) => width(s, at as string)],
    [/^diagonal\.([12])$/, (s, [which]) => diagonal(s, which as string)],
    [/^ridge\.([AB])\.height$/, (s, [end]) => ridgeHeight(s, end as End)],
    [/^ridge\.([AB])\.centre$/, (s, [end]) => ridgeCentre(s, end as End)],
    [/^layout\.(street|yard)\.(\d+)$/, (s, [which, n]) => fromDatum(s, which as string, n as string)],
    [/^bay\.(street|yard)\.(\d+)$/, (s, [which, n]) => clearBay(s, side(which), Number(n))],
    [/^board\.ridge$/, (s) => ridgeLength(s)],
  ]),
  rule: first([
    [
      /^heel:rafter\.(street|yard)\.(\d+)$/,
      (s, [which, n]) => rafter(s, which as string, n as string)?.gaps.seat,
    ],
    [
      /^heelCut:rafter\.(street|yard)\.(\d+)$/,
      (s, [which, n]) => rafter(s, which as string, n as string)?.gaps.heelCut,
    ],
    [
      /^ridge:rafter\.(street|yard)\.(\d+)$/,
      (s, [which, n]) => rafter(s, which as string, n as string)?.gaps.plumbBottom,
    ],
    [
      /^ridgeTop:rafter\.(street|yard)\.(\d+)$/,
      (s, [which, n]) => rafter(s, which as string, n as string)?.gaps.plumbTop,
    ],
    [
      /^blockEnd:(block\.(?:street|yard)\.\d+)\.far$/,
      (s, [id]) => pose(s).blocks[id as `block.yard.${number}`]?.gap,
    ],
  ]),
  level: bubble,
  waterLevel: first([
    [
      /^plate\.(street|yard)\.(A|mid|B)$/,
      (s, [which, at]) => plateSpotHeight(s, side(which), at as PlateSpot),
    ],
  ]),
  string: first([
    [/^plate\.(street|yard)\.mid$/, (s, [which]) => bowed(s, side(which))],
    [/^ridge\.straight$/, (s) => ridgeBowed(s)],
    [/^plane\.(street|yard)\.(\d+)$/, (s, [which, n]) => strung(s, which as string, n as string)],
  ]),
  pattern: first([[/^(board\.\d+)$/, (s, [board]) => patterned(s, board as string)]]),
  square: nothing,
};

const plateSpotHeight = (standing: Standing, which: Side, at: PlateSpot): number =>
  platePose(standing, which)[at].z - platePose(standing, 'street').A.z;

/** How far the middle of a plate stands out (+) of the straight line of its ends, in plan. */
const bowed = (standing: Standing, which: Side): number => {
  const plate = platePose(standing, which);
  const ends =
    (plateLine(standing, { side: which, at: 'A' }) + plateLine(standing, { side: which, at: 'B' })) / 2;
  return plateAt(plate, plate.mid.x).out - standing.level.plan.span / 2 - ends;
};

/** How far the middle of the ridge stands to the yard (+) of a string from end to end of it. */
const ridgeBowed = (standing: Standing): number | undefined => {
  const { ridge } = pose(standing);
  return ridge && ridge.mid.y - (ridge.A.y + ridge.B.y) / 2;
};
