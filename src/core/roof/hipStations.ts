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
