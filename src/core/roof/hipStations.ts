import { hair } from '../units/hair';

/** Rafter centres where hips close a roof: laid out from the ends of the ridge, and on the ends from the middle. Inches. */

type Marks = {
  readonly spacing: number;
  readonly thickness: number;
  /** Whether commons stand at the ridge's ends and one in the middle of each end. */
  readonly commons: boolean;
};

const times = (count: number, mark: (k: number) => number): readonly number[] =>
  Array.from({ length: Math.max(0, count) }, (_, i) => mark(i + 1));

/** How many marks of a spacing lie strictly inside a distance. */
const within = (distance: number, spacing: number): number => Math.ceil((distance - hair) / spacing) - 1;

/**
 * Along a long wall. From one end of the ridge to the other every so far, and so far past both toward the corners. A mark nearer
 * to the far end's own than two thicknesses is left out, as beside a flush rafter.
 */
export const ridgeEndStations = ({
  spacing,
  thickness,
  commons,
  from,
  to,
  past,
}: Marks & { readonly from: number; readonly to: number; readonly past: number }): readonly number[] => {
  const clear = (x: number): boolean => to - x >= 2 * thickness - hair;
  const between = times(within(to - from, spacing), (k) => from + k * spacing).filter(clear);
  const beyond = within(past, spacing);
  const ends = commons ? (to - from > hair ? [from, to] : [from]) : [];
  return [
    ...times(beyond, (k) => from - k * spacing),
    ...between,
    ...times(beyond, (k) => to + k * spacing),
    ...ends,
  ].sort((a, b) => a - b);
};

/** Along an end wall, from its middle both ways so far past it. */
export const endStations = ({
  spacing,
  commons,
  past,
}: Marks & { readonly past: number }): readonly number[] => {
  const beyond = within(past, spacing);
  return [
    ...times(beyond, (k) => -k * spacing),
    ...(commons ? [0] : []),
    ...times(beyond, (k) => k * spacing),
  ].sort((a, b) => a - b);
};

/** One end of a long wall's layout. */
export type RowEnd = {
  /** Its mark: the end of the ridge, or the outer rafter of the pair at a small gable. */
  readonly at: number;
  /** Whether a rafter stands there, or two side by side. */
  readonly rafters: 0 | 1 | 2;
  /** How far out from it marks go, and how near to it they may come. */
  readonly past: number;
  readonly clear: number;
};

/** As `ridgeEndStations`, where the two ends differ or are small gables. */
export const gabletStations = (
  { spacing, thickness }: Pick<Marks, 'spacing' | 'thickness'>,
  [a, b]: readonly [RowEnd, RowEnd],
): readonly number[] => {
  const own = ({ at, rafters }: RowEnd, inward: 1 | -1): readonly number[] =>
    Array.from({ length: rafters }, (_, i) => at + inward * i * thickness);
  const out = ({ at, past, clear }: RowEnd, outward: 1 | -1): readonly number[] =>
    times(within(past, spacing), (k) => at + outward * k * spacing).filter(
      (x) => Math.abs(x - at) >= clear - hair,
    );
  const [ofA, ofB] = [own(a, 1), own(b, -1)];
  const [from, to] = [ofA.at(-1) ?? a.at, ofB.at(-1) ?? b.at];
  const between = times(within(b.at - a.at, spacing), (k) => a.at + k * spacing).filter(
    (x) => (a.rafters < 2 || x - from >= 2 * thickness - hair) && to - x >= 2 * thickness - hair,
  );
  return [...out(a, -1), ...ofA, ...between, ...ofB, ...out(b, 1)].sort((x, y) => x - y);
};
