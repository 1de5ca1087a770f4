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

type Spot = { readonly x: number; readonly y: number };

/** What one finger's move means: alone it moves the picture, with another it scales about the middle of both. */
const moveOf = (before: Spot, now: Spot, other: Spot | undefined): Parameters<HandsCalls['move']>[0] => {
  const [dx, dy] = [now.x - before.x, now.y - before.y];
  if (!other) return { x: dx, y: dy, scale: 1, about: [now.x, now.y] };
  const apart = (a: Spot): number => Math.hypot(a.x - other.x, a.y - other.y);
  return {
    x: dx / 2,
    y: dy / 2,
    scale: apart(now) / Math.max(1, apart(before)),
    about: [(now.x + other.x) / 2, (now.y + other.y) / 2],
  };
};

/** Keeps the pointer's later events on the stage. One that is already gone cannot be kept; nothing more comes of it. */
const keep = (host: HTMLElement, pointer: number): void => {
  try {
    host.setPointerCapture(pointer);
  } catch {
    return;
  }
};

/** How much one step of a wheel scales, a pixel of its travel; ours. */
const wheelScale = 0.0015;

export const createHands = (host: HTMLElement, calls: HandsCalls): { readonly destroy: () => void } => {
  const down = new Map<number, Spot>();
  let walked = 0;
  let rest: ReturnType<typeof setTimeout> | undefined;
  const at = (event: PointerEvent | WheelEvent): Spot => {
    const box = host.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const onDown = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    if (down.size === 0) walked = 0;
    down.set(event.pointerId, at(event));
    keep(host, event.pointerId);
  };
  const onMove = (event: PointerEvent): void => {
    const before = down.get(event.pointerId);
    if (!before) return;
    const now = at(event);
    walked += Math.hypot(now.x - before.x, now.y - before.y);
    if (walked <= tapSlack) return;
    const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
    down.set(event.pointerId, now);
    calls.move(moveOf(before, now, other));
  };
  const onUp = (event: PointerEvent): void => {
    const start = down.get(event.pointerId);
    if (!start) return;
    down.delete(event.pointerId);
    if (down.size > 0) return;
    if (walked > tapSlack) calls.settle();
    else if (event.type === 'pointerup') calls.tap(start.x, start.y);
  };
  const onWheel = (event: WheelEvent): void => {
    event.preventDefault();
    const { x, y } = at(event);
    calls.move({ x: 0, y: 0, scale: Math.exp(-event.deltaY * wheelScale), about: [x, y] });
    clearTimeout(rest);
    rest = setTimeout(calls.settle, wheelRest);
  };
  const off = new AbortController();
  const { signal } = off;
  host.addEventListener('pointerdown', onDown, { signal });
  host.addEventListener('pointermove', onMove, { signal });
  host.addEventListener('pointerup', onUp, { signal });
  host.addEventListener('pointercancel', onUp, { signal });
  host.addEventListener('wheel', onWheel, { passive: false, signal });
  return {
    destroy: () => {
      clearTimeout(rest);
      off.abort();
    },
  };
};
