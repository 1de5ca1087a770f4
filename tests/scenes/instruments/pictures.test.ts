import { afterAll, describe, expect, test, vi } from 'vitest';
import type { Into } from '../../../src/scenes/closeUp/drawJoint';
import { drawReading } from '../../../src/scenes/instruments/drawReading';
import type { ReadingPicture } from '../../../src/scenes/instruments/readingPicture';
import { partsOf, scaledFor } from '../../../src/scenes/instruments/scaledFor';
import type { Point } from '../../../src/scenes/ink/pencil';
import { recorder, type Drawn } from './recorder';

/** Every picture of a tool says, drawn, exactly what the tool shows: the thing read lies at the tick it should. */

afterAll(() => void vi.unstubAllGlobals());

/** As pages make them, CSS pixels: a phone on its side, a phone upright, a desk. */
const sizes = [[230, 84], [230, 126], [340, 112], [340, 140], [252, 132], [252, 207]] as const; // prettier-ignore

const square = { tool: 'square', turned: false, slope: 0.75, plumb: 6.875 } as const;

type Case = { readonly name: string; readonly of: (shown: number) => ReadingPicture } & Read;

/** Which way its scale runs, and where the drawing has the thing that is read, pixels along the scale. */
type Read = {
  readonly way: 'across' | 'up';
  readonly edge: (drawn: Drawn, picture: ReadingPicture, into: Into) => number;
};

const ys = (path: readonly Point[]): readonly number[] => path.map((p) => p[1]);
const xs = (path: readonly Point[]): readonly number[] => path.map((p) => p[0]);

/** Outlines of lumber that go from side to side of a picture and beyond. */
const across = (drawn: Drawn): readonly Point[][] =>
  drawn.paths.filter((path) => path.length === 4 && Math.max(...xs(path)) - Math.min(...xs(path)) > 900);

const cases: readonly Case[] = [
  {
    name: 'the tip of a bob at rest',
    of: (shown) => ({ tool: 'bob', shown, still: true }),
    way: 'across',
    edge: ({ paths }) => {
      const bob = paths.find((path) => path.length === 10) as Point[];
      const low = Math.max(...ys(bob));
      const tip = bob.filter(([, y]) => y === low).map(([x]) => x);
      return (Math.min(...tip) + Math.max(...tip)) / 2;
    },
  },
  {
    name: 'the blade of a square off a cut',
    of: (shown) => ({ ...square, shown }),
    way: 'across',
    edge: ({ rects }, picture, into) =>
      rects.filter(({ x, height }) => x >= partsOf(into, picture).near.x && height > into.area.height)[0]
        ?.x ?? NaN,
  },
  {
    name: 'the lower edge of a straightedge',
    of: (shown) => ({ tool: 'straightedge', shown, station: 4 }),
    way: 'up',
    edge: (drawn) => Math.max(...ys(across(drawn).at(-1) as Point[])),
  },
  {
    name: 'the top of a ridge beside a pole',
    of: (shown) => ({ tool: 'storyPole', shown, plumb: true }),
    way: 'up',
    edge: ({ paths }, _, { area }) =>
      Math.min(
        ...ys(paths.find((path) => path.length === 4 && Math.min(...xs(path)) < -area.width) as Point[]),
      ),
  },
  {
    name: 'water in a hose',
    of: (shown) => ({ tool: 'waterLevel', shown, together: false }),
    way: 'up',
    edge: ({ paths }) => (paths.filter((path) => path.length === 2).at(-1) as Point[])[0]?.[1] ?? NaN,
  },
];

const shownValues = [-9 / 8, -3 / 8, -1 / 16, 0, 1 / 32, 1 / 4, 5 / 8, 1.3];

/** Ticks along a scale: two points, square to it, many alike. */
const ticksOf = ({ paths }: Drawn, way: Read['way']): readonly number[] => {
  const [along, square] = way === 'up' ? [1, 0] : [0, 1];
  const strokes = paths.filter((path) => path.length === 2 && path[0]?.[along] === path[1]?.[along]);
  const edges = strokes.map((path) => path[0]?.[square] as number);
  const edge = edges.sort((a, b) => count(edges, b) - count(edges, a))[0];
  return strokes.filter((path) => path[0]?.[square] === edge).map((path) => path[0]?.[along] as number);
};
const count = (all: readonly number[], one: number): number => all.filter((other) => other === one).length;

/** Where a line was drawn twice there is no step. */
const least = (steps: readonly number[]): number => Math.min(...steps.filter((step) => step > 1e-6));

const intoFor = (canvas: HTMLCanvasElement, [width, height]: readonly [number, number]): Into =>
  ({
    canvas,
    ratio: 1,
    theme: 'day',
    area: { x: 0, y: 0, width, height },
    words: { eachTick: 'each tick is', sum: 'the sum' },
  }) as unknown as Into;

describe.each(sizes)('a picture of %i by %i', (...size) => {
  describe.each(cases)('of $name', ({ of, way, edge }) => {
    test.each(shownValues)('says %f', (shown) => {
      const { canvas, drawn } = recorder(...size);
      const into = intoFor(canvas, size);
      const picture = of(shown);
      drawReading(into, picture);
      const ticks = [...ticksOf(drawn, way)].sort((a, b) => a - b);
      const sixteenth = least(ticks.slice(1).map((tick, i) => tick - (ticks[i] as number)));
      const read = edge(drawn, picture, into);
      const { zero } = scaledFor(into, picture);
      const signed = picture.tool === 'square' || picture.tool === 'straightedge' ? Math.abs(shown) : shown;
      const says = way === 'up' ? (zero[1] - read) / sixteenth : (read - zero[0]) / sixteenth;
      expect(says / 16).toBeCloseTo(signed, 6);
      expect(sixteenth).toBeGreaterThan(12 - 1e-6);
      expect(read).toBeGreaterThanOrEqual(0);
      expect(read).toBeLessThanOrEqual(way === 'up' ? size[1] : size[0]);
      // Ticks run from the zero, in whole sixteenths, and reach what is read.
      for (const tick of ticks)
        expect(Math.abs(((tick - (way === 'up' ? zero[1] : zero[0])) / sixteenth) % 1)).toSatisfy(
          (rest: number) => rest < 1e-6 || rest > 1 - 1e-6,
        );
      expect(Math.min(...ticks)).toBeLessThanOrEqual(read + 1e-6 + sixteenth);
      expect(Math.max(...ticks)).toBeGreaterThanOrEqual(read - 1e-6 - sixteenth);
      // Somewhere on the scale a number stands, so that it is known where on it one looks.
      expect(drawn.texts.some(({ text }) => /^\d+$/.test(text))).toBe(true);
    });
  });
});

/** A tape that shows both its ends has a picture of its own height. */
const doubles: readonly (readonly [number, number])[] = [
  [230, 126],
  [340, 140],
  [252, 132],
];

describe.each(doubles)('a tape held otherwise, %i by %i', (...size) => {
  test.each(['inch', 'last'] as const)('from %s has no hook in the reading and lies large enough', (from) => {
    const { canvas, drawn } = recorder(size[0], size[1]);
    const into = intoFor(canvas, [size[0], size[1]]);
    const picture: ReadingPicture = { tool: 'tape', shown: 94.625, from };
    drawReading(into, picture);
    const { near } = partsOf(into, picture);
    const blade = drawn.paths.filter(
      (path) => path.length === 2 && path[0]?.[0] === path[1]?.[0] && (path[0]?.[1] ?? 0) > near.y,
    );
    const ticks = xs(blade.map((path) => path[0] as Point));
    const sixteenth = (ticks[1] as number) - (ticks[0] as number);
    expect(sixteenth).toBeGreaterThanOrEqual(11.9);
    const edges = drawn.paths.filter(
      (path) => path.length === 4 && Math.max(...ys(path)) > near.y + near.height,
    );
    const mark = Math.max(...xs(edges.at(-1) as Point[]));
    expect(ticks.some((tick) => Math.abs(tick - mark) < 1e-6)).toBe(true);
    expect(drawn.texts.some(({ text }) => text === '94' || text === '95')).toBe(true);
  });
});
