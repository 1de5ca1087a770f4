import { vi } from 'vitest';
import type { Point } from '../../../src/scenes/ink/pencil';

/** A pen that draws nothing and remembers what it was asked to draw, in device pixels. */
export type Drawn = {
  readonly paths: Point[][];
  readonly rects: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  }[];
  readonly texts: { readonly text: string; readonly at: Point }[];
};

type FourNumbers = readonly [number, number, number, number];

/** Digits and letters take about this share of their size; close enough to be drawn or not. */
const letterWide = 0.46;

const sizeOf = (font: string): number => Number(/([\d.]+)px/.exec(font)?.[1] ?? 10);

/** A canvas whose pen records into `drawn`; transformed drawing (grain, lettering on a slant) is left out. */
const recording = (width: number, height: number, drawn: Drawn): HTMLCanvasElement => {
  let path: Point[] = [];
  const wash = { addColorStop: () => undefined };
  const add = (x: number, y: number): void => void path.push([x, y]);
  const own: Record<string, unknown> = {
    font: '10px sans-serif',
    beginPath: () => {
      path = [];
      drawn.paths.push(path);
    },
    moveTo: add,
    lineTo: add,
    quadraticCurveTo: (...[, , x, y]: FourNumbers) => add(x, y),
    fillRect: (...[x, y, width, height]: FourNumbers) => void drawn.rects.push({ x, y, width, height }),
    fillText: (text: string, x: number, y: number) => void drawn.texts.push({ text, at: [x, y] }),
    measureText: (text: string) => ({ width: text.length * letterWide * sizeOf(String(own['font'])) }),
    createLinearGradient: () => wash,
    createRadialGradient: () => wash,
    createImageData: (w: number, h: number) => ({ data: new Uint8ClampedArray(w * h * 4) }),
  };
  const pen: object = new Proxy(own, {
    get: (known, key) => (key in known ? known[key as string] : () => undefined),
  });
  const canvas = { width, height, getContext: () => pen };
  own['canvas'] = canvas;
  return canvas as unknown as HTMLCanvasElement;
};

/** A canvas to draw into and what comes of it. Sheets for grain are made and forgotten. */
export const recorder = (width: number, height: number): { canvas: HTMLCanvasElement; drawn: Drawn } => {
  const nothing = (): Drawn => ({ paths: [], rects: [], texts: [] });
  vi.stubGlobal('document', { createElement: () => recording(1, 1, nothing()) });
  const drawn = nothing();
  return { canvas: recording(width, height, drawn), drawn };
};
