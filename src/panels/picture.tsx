import { useEffect, useRef } from 'preact/hooks';
import { inSight } from './later';
import type { Settle } from './settle';

type Props = {
  /** `off`: how far what it shows still is from its rest. */
  readonly draw: (canvas: HTMLCanvasElement, off: number) => void;
  readonly deps: readonly unknown[];
  readonly label: string;
  /** A class for the style sheet: how high it is. */
  readonly kind?: string;
  /** For whatever it describes. */
  readonly id?: string;
  /** Not needed for the page to be used: it comes once it is in sight and nothing else waits. */
  readonly waits?: boolean;
  /** Comes to rest in so long; drawn at rest at once where it is absent. */
  readonly settle?: Settle | undefined;
};

/** A small canvas drawn by somebody else, once for each thing it depends on. Its words are beside it. */
export const Picture = ({ draw, deps, label, kind = '', id, settle, waits = false }: Props) => {
  const host = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const canvas = host.current;
    if (!canvas) return;
    if (waits) return inSight(canvas, () => begin(canvas, draw));
    if (!settle) return begin(canvas, draw);
    measured(canvas);
    return comeToRest(settle, (off) => draw(canvas, off));
  }, [...deps]);
  return (
    <canvas ref={host} class={kind} role="img" aria-label={label} {...(id === undefined ? {} : { id })} />
  );
};

/** As many pixels as the screen has for it. */
const measured = (canvas: HTMLCanvasElement): void => {
  const ratio = Math.min(2, window.devicePixelRatio || 1);
  canvas.width = Math.max(1, Math.round(canvas.clientWidth * ratio));
  canvas.height = Math.max(1, Math.round(canvas.clientHeight * ratio));
};

const begin = (canvas: HTMLCanvasElement, draw: Props['draw']): void => {
  measured(canvas);
  draw(canvas, 0);
};

/** Draws frame after frame until it rests. Returns how to stop it. */
const comeToRest = ({ length, off }: Settle, draw: (off: number) => void): (() => void) => {
  const start = performance.now();
  let next = 0;
  const frame = (): void => {
    const t = Math.min(1, Math.max(0, (performance.now() - start) / length));
    draw(off(t));
    if (t < 1) next = requestAnimationFrame(frame);
  };
  frame();
  return () => cancelAnimationFrame(next);
};
