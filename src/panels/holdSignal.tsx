import { useEffect, useRef, useState } from 'preact/hooks';
import type { Action } from '../core/site/action';
import type { Offer } from '../present/offers/offer';
import { askedBy, atRest, follow, type Following } from '../present/heldSignal';
import { wordsOf, type Desk } from './desk';
import { Measure } from './measure';
import { useSignal } from './useSignal';

type Props = {
  readonly desk: Desk;
  readonly offer: Offer;
  readonly onAct: (action: Action) => void;
};

/** A signal the load follows as long as it is given: held down, or begun with one press and ended with the next. */
export const HoldSignal = ({ desk, offer, onAct }: Props) => {
  const words = wordsOf(desk);
  const { units } = useSignal(desk.settings);
  const [now, setNow] = useState<Following>();
  const [on, setOn] = useState(false);
  const onActNow = useRef(onAct);
  onActNow.current = onAct;
  const hand = useRef<Hand | undefined>(undefined);
  const way = offer.id === 'signal.lower' ? -1 : 1;
  const bounds = offer.picker?.kind === 'length' ? offer.picker : { from: 1 / 16, to: 6 };
  hand.current ??= handOn({
    most: bounds.to,
    moved: (following) => {
      setNow(following);
      desk.aim.value?.lift(way * following.by);
    },
    ended: (following) => {
      setNow(undefined);
      onActNow.current(offer.act(askedBy(following, bounds.from)));
      desk.aim.value?.lift(undefined);
    },
  });
  useEffect(() => () => hand.current?.drop(), []);
  const hold = (held: boolean): void => {
    setOn(held);
    hand.current?.give(held);
  };
  const onKey = (event: KeyboardEvent): void => {
    if (event.key !== ' ' && event.key !== 'Enter') return;
    event.preventDefault();
    if (!event.repeat) hold(event.type === 'keydown');
  };
  return (
    <div class="holding">
      <button
        type="button"
        class="btn hold"
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          hold(true);
        }}
        onPointerUp={() => hold(false)}
        onPointerCancel={() => hold(false)}
        onKeyDown={onKey}
        onKeyUp={onKey}
        onBlur={() => on && hold(false)}
      >
        {words.views.hold[way === 1 ? 'hoist' : 'lower']}
      </button>
      <button type="button" class="btn twin" aria-pressed={on} onClick={() => hold(!on)}>
        {on ? words.views.hold.stop : words.views.hold.start}
      </button>
      <span class="moved tn" aria-hidden="true">
        {now && <Measure inches={Math.round(now.by * 16) / 16} units={units} words={words} />}
      </span>
    </div>
  );
};

type Hand = { readonly give: (held: boolean) => void; readonly drop: () => void };

type Load = {
  readonly most: number;
  readonly moved: (following: Following) => void;
  readonly ended: (following: Following) => void;
};

/** Follows the signal frame by frame until the load is at rest again. */
const handOn = ({ most, moved, ended }: Load): Hand => {
  let following = atRest;
  let held = false;
  let running = 0;
  let last = 0;
  const frame = (time: number): void => {
    following = follow(following, Math.min(0.1, (time - last) / 1000), { held, most });
    last = time;
    if (!held && following.speed === 0) {
      running = 0;
      const came = following;
      following = atRest;
      if (came.by > 0) ended(came);
      return;
    }
    moved(following);
    running = requestAnimationFrame(frame);
  };
  return {
    give: (next) => {
      held = next;
      if (!held || running !== 0) return;
      last = performance.now();
      running = requestAnimationFrame(frame);
    },
    drop: () => cancelAnimationFrame(running),
  };
};
