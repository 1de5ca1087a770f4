/** Fingers and mouse on the stage: a tap picks; on the overview a drag moves, a wheel or two fingers scale. CSS pixels. */
export type HandsCalls = {
  readonly tap: (x: number, y: number) => void;
  /** Moved by x and y, and scaled about a point, since the last call. */
  readonly move: (by: {
    readonly x: number;
    readonly y: number;
    readonly scale: number;
    readonly about: readonly [number, number];
  }) => void;
  /** Hands are off: draw it sharp again. */
  readonly settle: () => void;
};

/** A press that moved less than this is a tap, CSS pixels. */
const tapSlack = 6;
/** Wheel quiet for this long counts as let go, ms. */
const wheelRest = 220;

export const createHands = (host: HTMLElement, calls: HandsCalls): { readonly destroy: () => void } => {
  const down = new Map<number, { x: number; y: number }>();
  let walked = 0;
  let moved = false;
  let rest: ReturnType<typeof setTimeout> | undefined;
  const at = (event: PointerEvent | WheelEvent): { x: number; y: number } => {
    const box = host.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const onDown = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    if (down.size === 0) {
      walked = 0;
      moved = false;
    }
    down.set(event.pointerId, at(event));
    try {
      host.setPointerCapture(event.pointerId);
    } catch {
      // A pointer that is already gone cannot be captured; its up event will not come either.
    }
  };
  const onMove = (event: PointerEvent): void => {
    const before = down.get(event.pointerId);
    if (!before) return;
    const now = at(event);
    walked += Math.hypot(now.x - before.x, now.y - before.y);
    if (walked <= tapSlack) return;
    const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
    down.set(event.pointerId, now);
    moved = true;
    const half = other ? 0.5 : 1;
    const scale = other
      ? Math.hypot(now.x - other.x, now.y - other.y) /
        Math.max(1, Math.hypot(before.x - other.x, before.y - other.y))
      : 1;
    const about = other
      ? ([(now.x + other.x) / 2, (now.y + other.y) / 2] as const)
      : ([now.x, now.y] as const);
    calls.move({ x: (now.x - before.x) * half, y: (now.y - before.y) * half, scale, about });
  };
  const onUp = (event: PointerEvent): void => {
    const start = down.get(event.pointerId);
    if (!start) return;
    down.delete(event.pointerId);
    if (down.size > 0) return;
    if (moved) calls.settle();
    else if (event.type === 'pointerup') calls.tap(start.x, start.y);
  };
  const onWheel = (event: WheelEvent): void => {
    event.preventDefault();
    const { x, y } = at(event);
    calls.move({ x: 0, y: 0, scale: Math.exp(-event.deltaY * 0.0015), about: [x, y] });
    clearTimeout(rest);
    rest = setTimeout(calls.settle, wheelRest);
  };
  host.addEventListener('pointerdown', onDown);
  host.addEventListener('pointermove', onMove);
  host.addEventListener('pointerup', onUp);
  host.addEventListener('pointercancel', onUp);
  host.addEventListener('wheel', onWheel, { passive: false });
  return {
    destroy: () => {
      clearTimeout(rest);
      host.removeEventListener('pointerdown', onDown);
      host.removeEventListener('pointermove', onMove);
      host.removeEventListener('pointerup', onUp);
      host.removeEventListener('pointercancel', onUp);
      host.removeEventListener('wheel', onWheel);
    },
  };
};
