import { depthOf, lengthOf, medianOf, pixelAt, type Looked, type Pixel, type Scale } from './scaleSeen';

/** Finds on a picture the thing that a tool is read by, from its pixels alone. All places in device pixels. */

/** A band of lines square to the way that is looked along. */
type Band = { readonly from: number; readonly to: number };

/** What is seen along the way, the middle tone of a band: grain and brush marks even out. */
const alongBand = (looked: Looked, { from, to }: Band): readonly Pixel[] => {
  const [low, high] = [Math.max(0, Math.ceil(from)), Math.min(depthOf(looked), Math.floor(to))];
  const lines = Array.from({ length: Math.max(0, high - low) }, (_, i) => low + i);
  return Array.from({ length: lengthOf(looked) }, (_, along) => {
    const all = lines.map((line) => pixelAt(looked, along, line));
    const middle = (of: (one: Pixel) => number): number => medianOf(all.map(of));
    return {
      red: middle(({ red }) => red),
      green: middle(({ green }) => green),
      blue: middle(({ blue }) => blue),
      cover: middle(({ cover }) => cover),
    };
  });
};

/** How different two pixels look on a middle gray, 0…255. */
const apart = (a: Pixel, b: Pixel): number => {
  const on = (one: number, cover: number): number => one * cover + 128 * (1 - cover);
  return Math.max(
    Math.abs(on(a.red, a.cover) - on(b.red, b.cover)),
    Math.abs(on(a.green, a.cover) - on(b.green, b.cover)),
    Math.abs(on(a.blue, a.cover) - on(b.blue, b.cover)),
  );
};

/**
 * The middle of the drawn line near a place where one material ends and another begins: what looks like neither side.
 * `room`: how far from the place the line may reach, and how far the materials go on at least.
 */
const lineAt = (seen: readonly Pixel[], at: number, room: number): number => {
  const [before, after] = [seen[Math.round(at - 2 * room)], seen[Math.round(at + 2 * room)]];
  if (!before || !after) return NaN;
  let [sum, moment] = [0, 0];
  for (let i = Math.round(at - 1.5 * room); i <= Math.round(at + 1.5 * room); i++) {
    const here = seen[i];
    const off = here ? Math.max(0, Math.min(apart(here, before), apart(here, after)) - 14) : 0;
    sum += off;
    moment += off * (i + 0.5);
  }
  return moment / sum;
};

const lastWhere = (seen: readonly Pixel[], is: (one: Pixel) => boolean): number => {
  for (let i = seen.length - 1; i >= 0; i--) if (is(seen[i] as Pixel)) return i;
  return NaN;
};

const solid = ({ cover }: Pixel): boolean => cover > 0.8;
/** Light that comes through: the brightest there is, with more red than blue or white. */
const lit = ({ red, green, cover }: Pixel): boolean => cover > 0.95 && red > 246 && green > 228;

/** Room that a drawn edge takes, CSS pixels to a side. */
const room = 3;

type Finder = (looked: Looked, scale: Scale) => number;

/** The end of the work under the blade. */
const tape: Finder = (looked, { edge }) => {
  const { ratio } = looked;
  const seen = alongBand(looked, { from: edge + 8 * ratio, to: depthOf(looked) - 2 * ratio });
  return lineAt(seen, lastWhere(seen, solid), room * ratio);
};

/** The far face of the gap: where the light ends over the rule. */
const rule: Finder = (looked, { edge }) => {
  const seen = alongBand(looked, { from: 4 * looked.ratio, to: edge - 4 * looked.ratio });
  return lineAt(seen, lastWhere(seen, lit), room * looked.ratio);
};

/** The low end's underside, beside the rule: the dark line under blue steel. */
const level: Finder = (looked, { edge, grows }) => {
  const { ratio } = looked;
  const [near, far] = [20 * ratio, 40 * ratio];
  const seen = alongBand(
    looked,
    grows > 0 ? { from: edge - far, to: edge - near } : { from: edge + near, to: edge + far },
  );
  const steel = ({ red, blue, cover }: Pixel): boolean => cover > 0.95 && blue > red + 14 && blue > 70;
  const last = lastWhere(seen, steel);
  let [sum, moment] = [0, 0];
  for (let i = last; i < last + 4 * ratio; i++) {
    const { red, cover } = seen[i] as Pixel;
    const off = Math.max(0, 79 - red) * (cover > 0.6 ? 1 : 0);
    sum += off;
    moment += off * (i + 0.5);
  }
  return moment / sum;
};

/** The bottom of the water's curve, in the middle of the hose beside the rule. */
const waterLevel: Finder = (looked, { edge }) => {
  const { ratio } = looked;
  const foot = lengthOf(looked) - 3;
  const filled = (column: number): boolean => pixelAt(looked, foot, column).cover > 0.25;
  let right = Math.round(edge - 3 * ratio);
  while (right > 0 && !filled(right)) right--;
  let left = right;
  while (left > 0 && filled(left - 1)) left--;
  const middle = (left + right + 1) / 2;
  const seen = alongBand(looked, { from: middle - 2 * ratio, to: middle + 2 * ratio });
  return lineAt(
    seen,
    seen.findIndex(({ cover }) => cover > 0.6),
    room * ratio,
  );
};

/** The tip of a bob at rest: the middle of what hangs nearest over the rule. */
const bob: Finder = (looked, { edge }) => {
  const middles: number[] = [];
  for (let line = Math.round(edge - 14 * looked.ratio); line < edge - 8 * looked.ratio; line++) {
    const seen = alongBand(looked, { from: line, to: line + 1 });
    middles.push((seen.findIndex(solid) + lastWhere(seen, solid) + 1) / 2);
  }
  return medianOf(middles);
};

/** The top of the ridge, left of the rule that stands beside it. */
const storyPole: Finder = (looked, { edge }) => {
  const { ratio } = looked;
  const seen = alongBand(looked, { from: edge - 18 * ratio, to: edge - 5 * ratio });
  return lineAt(seen, seen.findIndex(solid), room * ratio);
};

/** The lower edge of the board that lies over, left of the rule: light begins under it. */
const straightedge: Finder = (looked, { edge }) => {
  const { ratio } = looked;
  const seen = alongBand(looked, { from: edge - 20 * ratio, to: edge - 6 * ratio });
  return lineAt(seen, seen.findIndex(lit), room * ratio);
};

export const thingRead = { tape, rule, level, waterLevel, bob, storyPole, straightedge } as const;
export type ReadOff = keyof typeof thingRead;

/** The vial of a level: the middle between its two lines, how far they stand apart, and the bubble's middle. */
export type Vial = { readonly lines: number; readonly apart: number; readonly bubble: number };

const green = ({ red, green: g, blue, cover }: Pixel): boolean => cover > 0.95 && g - blue > 22 && g >= red;
const white = ({ red, blue, cover }: Pixel): boolean => cover > 0.95 && blue > 226 && red - blue > 1;

/** Read off a picture whose vial lies across. */
export const vialSeen = (png: Looked['png'], ratio: number): Vial => {
  const looked: Looked = { png, way: 'across', ratio };
  const rows = Array.from({ length: png.height }, (_, y) => alongBand(looked, { from: y, to: y + 1 }));
  const glass = rows.filter((row) => row.filter(green).length > 20 * ratio);
  const lines = glass.map((row) => linesIn(row)).filter((runs) => runs.length === 2);
  const [one, two] = [
    medianOf(lines.map(([line]) => line as number)),
    medianOf(lines.map(([, line]) => line as number)),
  ];
  const middles = glass.flatMap((row) => {
    const [from, to] = [row.findIndex(white), lastWhere(row, white)];
    const clear = [from, to].every((end) =>
      [one, two].every((line) => Math.abs(end + 0.5 - line) > 1.8 * ratio),
    );
    return from >= 0 && clear ? [(from + to + 1) / 2] : [];
  });
  return { lines: (one + two) / 2, apart: two - one, bubble: medianOf(middles) };
};

/** Middles of the nearly black runs of a row inside the glass. */
const linesIn = (row: readonly Pixel[]): readonly number[] => {
  const runs: number[] = [];
  const [low, high] = [row.findIndex(green), lastWhere(row, green)];
  let from = -1;
  for (let i = low; i <= high; i++) {
    const { red, blue } = row[i] as Pixel;
    const on = red < 62 && blue < 80;
    if (on && from < 0) from = i;
    if (!on && from >= 0) {
      runs.push((from + i) / 2);
      from = -1;
    }
  }
  return runs;
};
