import { useEffect, useRef, useState } from 'preact/hooks';
import type { StageCorner } from '../present/stagePort';
import type { Attempt } from '../core/site/attempt';
import type { Desk } from './desk';
import { useSignal } from './useSignal';

/** One state of the site to look at. */
export type Look = {
  /** So many acts: what the picture is kept by. */
  readonly steps: number;
  /** The run as it stood then; asked for only where it has to be drawn. */
  readonly stood: () => Attempt;
  readonly member: string | undefined;
  readonly corner: StageCorner;
};

/** Pictures kept for sliding back, device pixels in all: some ten of a large screen. Ours. */
const mostPixels = 14_000_000;

type Size = { readonly width: number; readonly height: number; readonly ratio: number };

/** The room a canvas has, CSS pixels, and device pixels to one of them. */
export const sizeOf = (canvas: HTMLCanvasElement): Size => ({
  width: canvas.clientWidth,
  height: canvas.clientHeight,
  ratio: Math.min(2, window.devicePixelRatio || 1),
});

/**
 * The roof as it stood, large. Each state is drawn once and kept. While somebody slides on, what is no longer looked at is
 * not drawn: only the last one asked for is, once there is a moment for it.
 */
export const Standing = ({
  desk,
  label,
  look,
}: {
  readonly desk: Desk;
  readonly label: string;
  readonly look: Look;
}) => {
  const host = useRef<HTMLCanvasElement>(null);
  const kept = useRef(new Map<string, HTMLCanvasElement>());
  const { theme, lang } = useSignal(desk.settings);
  const [room, setRoom] = useState('');
  useEffect(() => {
    if (!host.current) return;
    const watch = new ResizeObserver(([entry]) => {
      const { width = 0, height = 0 } = entry?.contentRect ?? {};
      setRoom(`${Math.round(width)} ${Math.round(height)}`);
    });
    watch.observe(host.current);
    return () => watch.disconnect();
  }, []);
  const { steps, member, corner } = look;
  useEffect(() => {
    const canvas = host.current;
    if (!canvas || room === '' || canvas.clientWidth === 0) return;
    const key = [steps, member, corner, theme, lang, room].join(' ');
    const known = kept.current.get(key);
    if (known) return lay(canvas, known);
    const timer = setTimeout(() => {
      const size = sizeOf(canvas);
      const drawn = desk.drawings.standing(
        { attempt: look.stood(), corner, selected: member, theme, lang },
        size,
      );
      keep(kept.current, key, drawn);
      lay(canvas, drawn);
    });
    return () => clearTimeout(timer);
  }, [steps, member, corner, theme, lang, room]);
  return <canvas ref={host} class="standing" role="img" aria-label={label} data-steps={steps} />;
};

const lay = (canvas: HTMLCanvasElement, drawn: HTMLCanvasElement): void => {
  if (canvas.width !== drawn.width || canvas.height !== drawn.height) {
    canvas.width = drawn.width;
    canvas.height = drawn.height;
  }
  const ink = canvas.getContext('2d');
  ink?.clearRect(0, 0, canvas.width, canvas.height);
  ink?.drawImage(drawn, 0, 0);
};

/** The oldest go first. */
const keep = (kept: Map<string, HTMLCanvasElement>, key: string, drawn: HTMLCanvasElement): void => {
  kept.set(key, drawn);
  const room = Math.max(2, Math.floor(mostPixels / Math.max(1, drawn.width * drawn.height)));
  for (const old of kept.keys()) {
    if (kept.size <= room) break;
    kept.delete(old);
  }
};
