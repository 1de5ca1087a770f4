import { useEffect, useState } from 'preact/hooks';
import type { StagePort } from '../present/stagePort';
import { wordsOf, type Desk } from './desk';
import { useRoom } from './useRoom';
import { useSignal } from './useSignal';

type Props = {
  readonly desk: Desk;
  readonly stage: StagePort | undefined;
  /** Told once the drawing has moved. */
  readonly moved: () => void;
};

/** One press scales by this, and moves by so much of the drawing's smaller side. Ours. */
const step = 1.4;
const shift = 90;

const ways = { left: [1, 0], right: [-1, 0], up: [0, 1], down: [0, -1] } as const;
type Way = keyof typeof ways;
const upAndDown: readonly Way[] = ['up', 'down'];
const around: readonly Way[] = ['left', 'right', ...upAndDown];

/** Moves the sheet without dragging or pinching: buttons, and the arrow keys, + and − while one of them has the focus. */
export const ZoomKeys = ({ desk, stage, moved }: Props) => {
  const view = useSignal(desk.view);
  const [near, setNear] = useState(false);
  const { width, low } = useRoom(useSignal(desk.settings).text);
  useEffect(() => setNear(false), [view]);
  if (view !== 'sheet' || !stage) return null;
  const words = wordsOf(desk).views.zoom;
  // A sheet on a small stage runs past its foot from the start.
  const offered = near ? around : width === 'narrow' || low ? upAndDown : [];
  const then = (deed: () => void) => () => {
    deed();
    moved();
  };
  const scale = (by: number): (() => void) =>
    then(() => {
      stage.zoomBy(by);
      setNear(true);
    });
  const go = (way: Way): (() => void) => then(() => stage.panBy(ways[way][0] * shift, ways[way][1] * shift));
  const whole = then(() => {
    stage.resetZoom();
    setNear(false);
  });
  const keys: Readonly<Record<string, () => void>> = {
    ArrowLeft: go('left'),
    ArrowRight: go('right'),
    ArrowUp: go('up'),
    ArrowDown: go('down'),
    '+': scale(step),
    '-': scale(1 / step),
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const key = keys[event.key];
    if (!key) return;
    event.preventDefault();
    event.stopPropagation();
    key();
  };
  const button = (label: string, sign: string, press: () => void) => (
    <button type="button" class="btn small" key={label} aria-label={label} title={label} onClick={press}>
      <svg width="18" height="18" viewBox="0 0 18 18" aria-hidden="true">
        <path d={sign} fill="none" stroke="currentColor" stroke-width="2" />
      </svg>
    </button>
  );
  return (
    <div class="zoomKeys" role="group" aria-label={words.group} onKeyDown={onKeyDown}>
      {offered.map((way) => button(words[way], signs[way], go(way)))}
      {button(words.whole, signs.whole, whole)}
      {button(words.farther, signs.farther, scale(1 / step))}
      {button(words.closer, signs.closer, scale(step))}
    </div>
  );
};

const signs = {
  left: 'M11 3 5 9l6 6',
  right: 'M7 3l6 6-6 6',
  up: 'M3 11 9 5l6 6',
  down: 'M3 7l6 6 6-6',
  closer: 'M9 3v12M3 9h12',
  farther: 'M3 9h12',
  whole: 'M3 7V3h4M11 3h4v4M15 11v4h-4M7 15H3v-4',
} as const;
