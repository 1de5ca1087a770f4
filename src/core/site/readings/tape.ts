import { racked, ridgeOverlength } from '../../level/asFound';
import { againstWall, roofOf } from '../../level/layout';
import type { PlateSpot } from '../../level/planted';
import { hookBias } from '../../level/toolTruth';
import type { End, Side } from '../../roof/side';
import { poleLean, tools } from '../../instruments/rows';
import { spread } from '../../level/draw';
import { clearBay, figuredTop, platesNow, ridgeNow } from '../posed';
import type { Standing } from '../standing';
import { boardDepth } from '../hung';
import { firstOf, plain, type Row, type Shown } from './reach';

/** What a tape shows, and a story pole, which is a tape with one mark. */

const width = (standing: Standing, at: string): number => {
  const { street, yard } = platesNow(standing);
  return yard[at as PlateSpot].y - street[at as PlateSpot].y;
};

const diagonal = (standing: Standing, which: string): number => {
  const { street, yard } = platesNow(standing);
  const [a, b] = which === '1' ? [street.A, yard.B] : [yard.A, street.B];
  const dx = standing.level.plan.length + (which === '1' ? 1 : -1) * racked(standing);
  const dy = b.y - a.y;
  return Math.sqrt(dx * dx + dy * dy);
};

const ridgeHeight = (standing: Standing, end: End): number | undefined => {
  const ridge = ridgeNow(standing);
  if (!ridge) return undefined;
  const { street, yard } = platesNow(standing);
  return ridge[end].z - (street[end].z + yard[end].z) / 2;
};

const ridgeCentre = (standing: Standing, end: End): number | undefined => {
  if (againstWall(standing.level)) return undefined;
  const ridge = ridgeNow(standing);
  const { street } = platesNow(standing);
  return ridge && ridge[end].y - standing.level.plan.ridge.thickness / 2 - street[end].y;
};

/** Near face of a rafter from the datum. */
const faceAt = (standing: Standing, which: string, n: number): number | undefined => {
  const placed = standing.site.members[`rafter.${which as Side}.${n}`];
  return placed && placed.x - standing.level.plan.rafter.thickness / 2;
};

const ridgeLength = (standing: Standing): number => {
  const figured = roofOf(standing.level).ridges[0]?.length ?? 0;
  return figured + ridgeOverlength(standing) - (standing.site.trims['board.ridge']?.end ?? 0);
};

/** An inch more when it is held at its inch mark; with its hook's own error when it is hooked. */
const taped = (standing: Standing, length: number | undefined, from: string | undefined): Shown => {
  if (length === undefined) return undefined;
  if (from === undefined) return length + hookBias(standing);
  return from === 'inch' ? length + 1 : undefined;
};

const row = (
  pattern: RegExp,
  read: (standing: Standing, found: readonly string[]) => number | undefined,
): Row => [pattern, (standing, found, from) => taped(standing, read(standing, found), from)];

/** From rafter to rafter, each hop hooked and read to the division, and added up: what is less than that is lost or gained. */
const hopped = (standing: Standing, which: string, n: number): number | undefined => {
  const { division } = tools.tape;
  let sum = faceAt(standing, which, 1);
  for (let k = 2; k <= n; k++) {
    const [a, b] = [faceAt(standing, which, k - 1), faceAt(standing, which, k)];
    if (a === undefined || b === undefined || sum === undefined) return undefined;
    sum += Math.round((b - a + hookBias(standing)) / division) * division;
  }
  return sum;
};

const layout: Row = [
  /^layout\.(street|yard)\.(\d+)$/,
  (s, [which, n], from) =>
    from === 'last'
      ? hopped(s, which as string, Number(n))
      : taped(s, faceAt(s, which as string, Number(n)), from),
];

export const tapeShows = firstOf([
  row(/^width\.(A|mid|B)$/, (s, [at]) => width(s, at as string)),
  row(/^diagonal\.([12])$/, (s, [which]) => diagonal(s, which as string)),
  row(/^ridge\.([AB])\.height$/, (s, [end]) => ridgeHeight(s, end as End)),
  row(/^ridge\.([AB])\.centre$/, (s, [end]) => ridgeCentre(s, end as End)),
  layout,
  row(/^board\.ridge$/, (s) => ridgeLength(s)),
  row(/^(board\.\d+)\.depth$/, (s, [board]) => boardDepth(s, board as string)),
  // Between two faces the hook is pushed in, and has no say.
  plain(/^bay\.(street|yard)\.(\d+)$/, (s, [which, n]) => clearBay(s, which as Side, Number(n))),
]);

/** Share of its height by which a pole's mark comes down when it is held by eye: half the square of its lean. */
const dipped = ({ seed, site }: Standing, end: End): number => {
  const lean = spread({ seed, place: `pole.${end}`, purpose: `lean.${site.told}` }, poleLean);
  return (lean * lean) / 2;
};

/** The pole stands on a plate's level: how far the ridge's top is over (+) or under its mark. Leaning, its mark is low. */
export const poleShows = firstOf([
  [
    /^ridge\.([AB])\.height$/,
    (s, [end], from) => {
      const height = ridgeHeight(s, end as End);
      if (height === undefined || (from !== undefined && from !== 'plumb')) return undefined;
      const top = figuredTop(s.level);
      return height - top * (1 - (from === 'plumb' ? 0 : dipped(s, end as End)));
    },
  ],
]);
