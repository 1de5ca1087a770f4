import { useState } from 'preact/hooks';
import type { Assignment } from '../../content/assignment';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { useSignal } from '../useSignal';
import { OutForm } from './outForm';
import { OutLink } from './outLink';

/** Jobs go out: the form on the left, what can be given out and what was on the right. */
export const OutPage = ({ desk }: { readonly desk: Desk }) => {
  const { out } = classWordsOf(desk).classes;
  const given = useSignal(desk.classes.given);
  const [shown, show] = useState<string>();
  const here = given.find(({ id }) => id === shown);
  return (
    <div class="sheets">
      <section class="paper sheetOf">
        <h2>{out.title}</h2>
        <OutForm desk={desk} made={({ id }) => show(id)} />
      </section>
      <section class="paper sheetOf">
        {here && <OutLink desk={desk} assignment={here} key={here.id} />}
        <h2>{out.given}</h2>
        {given.length === 0 && <p class="dim">{out.none}</p>}
        <ul class="lines">
          {given.map((one) => (
            <Given
              desk={desk}
              assignment={one}
              show={() => show(one.id)}
              on={one.id === shown}
              key={one.id}
            />
          ))}
        </ul>
      </section>
    </div>
  );
};

type GivenProps = {
  readonly desk: Desk;
  readonly assignment: Assignment;
  readonly on: boolean;
  readonly show: () => void;
};

const Given = ({ desk, assignment, on, show }: GivenProps) => {
  const words = classWordsOf(desk);
  const { out } = words.classes;
  const { unnamed } = words.classDoor;
  const { id, label = '', levels, mode } = assignment;
  return (
    <li>
      <span>
        <b>{label === '' ? unnamed : label}</b>
        <span class="dim">
          {out.jobsIn(levels.length)} · {words.ui.mode[mode]} · {id}
        </span>
      </span>
      <button type="button" class="btn small" data-show={id} aria-pressed={on} onClick={show}>
        {out.show}
      </button>
    </li>
  );
};
