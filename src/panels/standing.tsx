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

type Size = { readonly width: number; readonly height: number; readonly ratio: number };

/** The room a canvas has, CSS pixels, and device pixels to one of them. */
export const sizeOf = (canvas: HTMLCanvasElement): Size => ({
  width: canvas.clientWidth,
  height: canvas.clientHeight,
  ratio: Math.min(2, window.devicePixelRatio || 1),
});

/** Pictures kept for sliding back, device pixels in all: a dozen and more of a large screen. Ours. */
const mostPixels = 14_000_000;
/** A hand on the slider rests when it has not moved for this long; then the very state is drawn. ms. Ours. */
const rests = 80;
/** Between two pictures drawn ahead, so that a press is never far from being heard. ms. Ours. */
const breath = 160;

type Kept = Look & { readonly under: string; readonly picture: HTMLCanvasElement };

type StandingProps = {
  readonly desk: Desk;
  readonly label: string;
  readonly look: Look;
  /** Drawn when there is time, to be shown at once while somebody slides past. */
  readonly ahead: readonly Look[];
};

/**
 * The roof as it stood, large. Each state is drawn once and kept. While somebody slides, the nearest kept state before it
 * stands there; the very one is drawn when the hand rests, and what was slid past is not drawn at all.
 */
export const Standing = ({ desk, label, look, ahead }: StandingProps) => {
  const host = useRef<HTMLCanvasElement>(null);
  const kept = useRef<readonly Kept[]>([]);
  const { theme, lang } = useSignal(desk.settings);
  const room = useRoomOf(host);
  const under = [theme, lang, room].join(' ');
  const { steps, member, corner } = look;
  useEffect(() => {
    const canvas = host.current;
    if (!canvas || room === '') return;
    const drawn = (one: Look): Kept => {
      const show = { attempt: one.stood(), corner: one.corner, selected: one.member, theme, lang };
      const now = { ...one, under, picture: desk.drawings.standing(show, sizeOf(canvas)) };
      kept.current = withNew(kept.current, now);
      return now;
    };
    let timer = 0;
    // On paper there is no room for it, and nothing to draw.
    const hasRoom = (): boolean => canvas.clientWidth > 0;
    const goAhead = (): void => {
      const next = ahead.find((one) => !find(kept.current, one, under));
      if (!next || !hasRoom()) return;
      drawn(next);
      timer = window.setTimeout(goAhead, breath);
    };
    const known = find(kept.current, look, under);
    lay(canvas, known ?? before(kept.current, look, under));
    timer = window.setTimeout(
      () => {
        if (!hasRoom()) return;
        if (!known) lay(canvas, drawn(look));
        timer = window.setTimeout(goAhead, breath * 2);
      },
      kept.current.length === 0 ? 0 : rests,
    );
    return () => clearTimeout(timer);
  }, [steps, member, corner, under]);
  return <canvas ref={host} class="standing" role="img" aria-label={label} />;
};

/** How much room a canvas has, as a word; empty until it is known. */
const useRoomOf = (host: { readonly current: HTMLCanvasElement | null }): string => {
  const [room, set] = useState('');
  useEffect(() => {
    if (!host.current) return;
    const watch = new ResizeObserver(([entry]) => {
      const { width = 0, height = 0 } = entry?.contentRect ?? {};
      if (width > 0 && height > 0) set(`${Math.round(width)} ${Math.round(height)}`);
    });
    watch.observe(host.current);
    return () => watch.disconnect();
  }, []);
  return room;
};

const same = (a: Look, b: Look): boolean =>
  a.steps === b.steps && a.member === b.member && a.corner === b.corner;

const find = (kept: readonly Kept[], look: Look, under: string): Kept | undefined =>
  kept.find((one) => one.under === under && same(one, look));

/** The last kept state that stood by then, seen from the same corner. */
const before = (kept: readonly Kept[], { steps, corner }: Look, under: string): Kept | undefined =>
  kept
    .filter((one) => one.under === under && one.corner === corner && one.steps <= steps)
    .sort((a, b) => b.steps - a.steps || Number(b.member === undefined) - Number(a.member === undefined))[0];

/** `data-steps` says which state stands there. */
const lay = (canvas: HTMLCanvasElement, one: Kept | undefined): void => {
  if (!one) return;
  const { picture } = one;
  Object.assign(canvas, { width: picture.width, height: picture.height });
  canvas.getContext('2d')?.drawImage(picture, 0, 0);
  canvas.setAttribute('data-steps', String(one.steps));
};

/** The oldest go first. */
const withNew = (kept: readonly Kept[], now: Kept): readonly Kept[] => {
  const room = Math.max(2, Math.floor(mostPixels / (now.picture.width * now.picture.height)));
  return [...kept, now].slice(-room);
};
