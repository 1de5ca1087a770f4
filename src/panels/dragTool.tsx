import { signal, type Signal } from '@preact/signals-core';
import { useEffect, useMemo } from 'preact/hooks';
import type { Spot } from '../present/offers/offer';
import { spotsFor } from '../present/offers/spots';
import type { Tool } from '../present/offers/toolset';
import type { Desk } from './desk';
import { ToolIcon } from './toolIcons';
import { useSignal } from './useSignal';

/** A tool carried from the rail to its place: the place under it is chosen on the way, and letting go puts it to work. */

type Carried = { readonly tool: Tool; readonly x: number; readonly y: number };

export type Carrying = {
  readonly carried: Signal<Carried | undefined>;
  readonly onPointerDown: (event: PointerEvent, tool: Tool) => void;
};

/** A press that moved less than this is a tap, CSS pixels. */
const tapSlack = 10;

export const useCarrying = (desk: Desk, drop: (spot: Spot) => void): Carrying => {
  const carrying = useMemo(() => carryingOn(desk), [desk]);
  carrying.drop = drop;
  useEffect(() => () => carrying.stop(), []);
  return carrying;
};

type Running = Carrying & { drop: (spot: Spot) => void; readonly stop: () => void };

const carryingOn = (desk: Desk): Running => {
  const carried = signal<Carried | undefined>(undefined);
  let off = new AbortController();
  const stop = (): void => {
    off.abort();
    carried.value = undefined;
  };
  const running: Running = {
    carried,
    drop: () => undefined,
    stop,
    onPointerDown: (down, tool) => {
      if (down.button !== 0) return;
      off.abort();
      off = new AbortController();
      const { signal: until } = off;
      const move = (event: PointerEvent): void => {
        if (event.pointerId !== down.pointerId) return;
        const far = Math.hypot(event.clientX - down.clientX, event.clientY - down.clientY);
        if (!carried.value && far < tapSlack) return;
        if (!carried.value) take(desk, tool);
        carried.value = { tool, x: event.clientX, y: event.clientY };
        choose(desk, spotUnder(desk, event));
      };
      const up = (event: PointerEvent): void => {
        if (event.pointerId !== down.pointerId) return;
        const spot = carried.value && event.type === 'pointerup' ? spotUnder(desk, event) : undefined;
        if (carried.value) swallowClick();
        stop();
        if (spot) running.drop(spot);
      };
      document.addEventListener('pointermove', move, { signal: until });
      document.addEventListener('pointerup', up, { signal: until });
      document.addEventListener('pointercancel', up, { signal: until });
    },
  };
  return running;
};

/** A drag that ends where it began is no tap on what is there. */
const swallowClick = (): void => {
  const eat = (event: Event): void => {
    event.stopPropagation();
    event.preventDefault();
  };
  document.addEventListener('click', eat, { capture: true, once: true });
  setTimeout(() => document.removeEventListener('click', eat, { capture: true }), 0);
};

const take = (desk: Desk, tool: Tool): void => {
  desk.tool.value = tool;
  desk.spot.value = undefined;
};

const choose = (desk: Desk, spot: Spot | undefined): void => {
  if (spot && desk.spot.value !== spot.id) desk.spot.value = spot.id;
};

/** The tool's place on the member under the pointer; of several the one that is closest. */
const spotUnder = (desk: Desk, { clientX: x, clientY: y }: PointerEvent): Spot | undefined => {
  const attempt = desk.session.value?.attempt.value;
  const aim = desk.aim.value;
  const id = aim?.at(x, y);
  if (!attempt || !aim || id === undefined) return undefined;
  const own = spotsFor(attempt, desk.tool.value).filter((spot) => spot.id === id || spot.member === id);
  const far = (spot: Spot): number => {
    const at = aim.placeOf(spot.id);
    return at ? Math.hypot(at.x - x, at.y - y) : Infinity;
  };
  return own.reduce<Spot | undefined>(
    (best, spot) => (best && far(best) <= far(spot) ? best : spot),
    undefined,
  );
};

/** The tool on its way, under the hand. */
export const CarriedTool = ({ carrying }: { readonly carrying: Carrying }) => {
  const carried = useSignal(carrying.carried);
  if (!carried) return null;
  return (
    <div class="carried" aria-hidden="true" style={{ left: `${carried.x}px`, top: `${carried.y}px` }}>
      <ToolIcon tool={carried.tool} />
    </div>
  );
};
