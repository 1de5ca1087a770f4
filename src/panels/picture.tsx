import { useEffect, useRef } from 'preact/hooks';

/** A small canvas drawn by somebody else, once for each thing it depends on. Its words are beside it. */
export const Picture = ({
  draw,
  deps,
  label,
  kind = '',
  id,
}: {
  readonly draw: (canvas: HTMLCanvasElement) => void;
  readonly deps: readonly unknown[];
  readonly label: string;
  /** A class for the style sheet: how high it is. */
  readonly kind?: string;
  /** For whatever it describes. */
  readonly id?: string;
}) => {
  const host = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const canvas = host.current;
    if (!canvas) return;
    const ratio = Math.min(2, window.devicePixelRatio || 1);
    canvas.width = Math.max(1, Math.round(canvas.clientWidth * ratio));
    canvas.height = Math.max(1, Math.round(canvas.clientHeight * ratio));
    draw(canvas);
  }, [...deps]);
  return (
    <canvas ref={host} class={kind} role="img" aria-label={label} {...(id === undefined ? {} : { id })} />
  );
};
