import { gaugeBlock } from '../core/instruments/rows';
import { againstWall, sidesOf, stationsOf } from '../core/level/layout';
import type { Attempt } from '../core/site/attempt';
import { figuredTop, ridgeLine } from '../core/site/posed';
import { shows } from '../core/site/shows';
import type { Messages } from './words/messages';
import { lengthText, type Units } from './words/numbers';

/**
 * What is out of true along the roof, many times larger than the drawing. It shows the frame as it rests, to learn what a
 * small reading comes to; nothing is placed by it.
 */
export type TraceKind = 'height' | 'straight' | 'gap.street' | 'gap.yard';

/** How far off its intended line something lies at places along the ridge: up, to the yard, or toward the string (+). Inches. */
export type Trace = { readonly kind: TraceKind; readonly points: readonly Off[] };
export type Off = { readonly x: number; readonly off: number; readonly station: number };

/** Empty until the ridge is up, and once it came down. */
export const tracesOf = (attempt: Attempt): readonly Trace[] => {
  const { site, level } = attempt;
  if (!site.ridge || site.down !== undefined) return [];
  const stations = stationsOf(level);
  const line = ridgeLine(attempt, stations);
  const top = figuredTop(level);
  const ridge = (kind: TraceKind, off: (at: (typeof line)[number]) => number): Trace => ({
    kind,
    points: line.map((at, i) => ({ x: stations[i] as number, off: off(at), station: i + 1 })),
  });
  return [
    ridge('height', ({ z }) => z - top),
    // A ledger is as straight as its wall.
    ...(againstWall(level) ? [] : [ridge('straight', ({ y }) => y)]),
    ...sidesOf(level).flatMap((side): readonly Trace[] => {
      const points = stations.flatMap((x, i): readonly Off[] => {
        const gap = shows(attempt, { tool: 'string', at: `plane.${side}.${i + 1}` });
        return typeof gap === 'number' ? [{ x, off: gaugeBlock - gap, station: i + 1 }] : [];
      });
      return points.length > 2 ? [{ kind: `gap.${side}`, points }] : [];
    }),
  ];
};

/** How many times larger than along the ridge; the largest that keeps every line in its strip. Ours. */
const series = [1, 2, 5, 10, 20, 50, 100, 200] as const;

export type Room = {
  /** Pixels from end A to end B, and from the intended line to the edge of its strip. */
  readonly long: number;
  readonly half: number;
  readonly length: number;
};

export const timesFor = (traces: readonly Trace[], { long, half, length }: Room): number => {
  const most = Math.max(0, ...traces.flatMap(({ points }) => points.map(({ off }) => Math.abs(off))));
  return series.findLast((n) => (most * n * long) / length <= half) ?? 1;
};

/** Where a trace runs, pixels: right of end A, and below the intended line. */
export const laidOut = (
  { points }: Trace,
  times: number,
  { long, length }: Pick<Room, 'long' | 'length'>,
): readonly (readonly [number, number])[] =>
  points.map(({ x, off }) => [(x * long) / length, (-off * times * long) / length]);

/** A trace in words: where it is furthest off its line, which way, and by how much. */
export const traceText = (words: Messages, { kind, points }: Trace, units: Units): string => {
  const { strip } = words.views;
  const most = points.reduce((far, one) => (Math.abs(one.off) > Math.abs(far.off) ? one : far));
  const length = lengthText(Math.abs(most.off), units);
  if (/^0\D/.test(length)) return strip.on(strip.kind[kind]);
  return strip.off(
    strip.kind[kind],
    `${length} ${strip.way[kind][most.off > 0 ? 'plus' : 'minus']}`,
    most.station,
  );
};
