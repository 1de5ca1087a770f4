import type { Signal } from '@preact/signals-core';
import { offersTeaching } from '../present/teaching';
import { wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';

/** What can be laid over the drawing to learn from it. */
export const Teaching = ({ desk }: { readonly desk: Desk }) => {
  const attempt = useSignal(desk.session)?.attempt.value;
  const view = useSignal(desk.view);
  const words = wordsOf(desk).views;
  if (!attempt || view !== 'overview' || attempt.site.down !== undefined) return null;
  if (!offersTeaching(attempt.mode)) return null;
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
