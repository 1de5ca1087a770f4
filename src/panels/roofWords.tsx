import { useId, useState } from 'preact/hooks';
import type { Attempt } from '../core/site/attempt';
import { observe } from '../core/site/observe';
import { groupName, roofGroups, roofSaid, thingSaid, type Group, type Sight } from '../present/roofTold';
import { memberName } from '../present/words/names';
import { wordsOf, type Desk } from './desk';
import { pickSaid, toTheWork } from './pickSaid';
import { useSignal } from './useSignal';

type Props = { readonly desk: Desk; readonly attempt: Attempt };

/** The roof in words: a summary, and bay by bay every member as a button. A bay is told once it is opened; it is seen while it has the focus. */
export const RoofWords = ({ desk, attempt }: Props) => {
  const { roof } = wordsOf(desk).spoken;
  useSignal(desk.settings);
  const [open, setOpen] = useState(false);
  const [note, setNote] = useState('');
  const id = useId();
  const seen = observe(attempt);
  const choose = (member: string): void => {
    const said = pickSaid(desk, attempt, member);
    setNote(said ?? '');
    if (said === undefined) toTheWork();
  };
  const onKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    toTheWork();
  };
  return (
    <section class="roofWords paper" aria-labelledby={id} onKeyDown={onKey}>
      <h2 id={id}>{roof.title}</h2>
      <p>{roofSaid(wordsOf(desk), seen)}</p>
      {attempt.site.down === undefined && (
        <button type="button" class="btn small" aria-expanded={open} onClick={() => setOpen(!open)}>
          {roof.open}
        </button>
      )}
      <p role="status" class="note">
        {note}
      </p>
      {open && attempt.site.down === undefined && (
        <ul class="bays">
          {roofGroups(seen).map((group) => (
            <Bay key={group.station} desk={desk} seen={seen} group={group} choose={choose} />
          ))}
        </ul>
      )}
    </section>
  );
};

type BayProps = {
  readonly desk: Desk;
  readonly seen: Sight;
  readonly group: Group;
  readonly choose: (member: string) => void;
};

const Bay = ({ desk, seen, group, choose }: BayProps) => {
  const words = wordsOf(desk);
  const [open, setOpen] = useState(false);
  return (
    <li>
      <button type="button" class="bay" aria-expanded={open} onClick={() => setOpen(!open)}>
        {groupName(words, seen, group)}
      </button>
      {open && (
        <ul>
          {group.ids.map((id) => (
            <li key={id}>
              <button
                type="button"
                class="thing"
                data-member={id}
                onClick={() => choose(id)}
                onFocus={() => (desk.at.value = { id, on: 'list' })}
                onBlur={() => (desk.at.value = undefined)}
              >
                <b>{memberName(words, id)}</b>
                <span>: {thingSaid(words, seen, id)}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </li>
  );
};
