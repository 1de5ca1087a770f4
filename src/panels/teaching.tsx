import type { Signal } from '@preact/signals-core';
import { offersTeaching } from '../present/teaching';
import { wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';

/** What can be laid over the drawing to learn from it. */
export const Teaching = ({ desk, shown }: { readonly desk: Desk; readonly shown: boolean }) => {
  const session = useSignal(desk.session);
  const words = wordsOf(desk).views;
  if (!shown || !session || !offersTeaching(session.attempt.value.mode)) return null;
  return (
    <div class="teaching">
      <Toggle name={words.loads.show} on={desk.loads} id="loads" />
      <Toggle name={words.strip.show} on={desk.strip} id="strip" />
    </div>
  );
};

type Switch = { readonly name: string; readonly on: Signal<boolean>; readonly id: string };

const Toggle = ({ name, on, id }: Switch) => (
  <button
    type="button"
    class="btn small"
    data-teach={id}
    aria-pressed={useSignal(on)}
    onClick={() => (on.value = !on.value)}
  >
    {name}
  </button>
);
