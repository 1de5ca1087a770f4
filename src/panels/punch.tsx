import { openItems, type OpenItem } from '../core/site/punch';
import type { Attempt } from '../core/site/attempt';
import { jointName, memberName } from '../present/words/names';
import { wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';

/** So many of a kind are named at once; the others open at a touch. */
const namedAtOnce = 5;

const kinds: readonly OpenItem['what'][] = ['missing', 'loose', 'nails', 'tacks', 'tail', 'split'];

/** What a walk round would find open, kind by kind, each member by its name. */
export const Punch = ({ desk, attempt }: { readonly desk: Desk; readonly attempt: Attempt }) => {
  const words = wordsOf(desk);
  useSignal(desk.settings);
  const items = openItems(attempt);
  if (items.length === 0) return <p>{words.ui.debrief.punchEmpty}</p>;
  const names = (what: OpenItem['what']): readonly string[] =>
    items
      .filter((item) => item.what === what)
      .map(({ at }) => (at.includes(':') ? jointName(words, at) : memberName(words, at)));
  return (
    <>
      {kinds.map((what) => {
        const all = names(what);
        return all.length === 0 ? null : (
          <section class="open" key={what}>
            <h3>
              {words.ui.debrief.opened[what]} <span class="tn">({all.length})</span>
            </h3>
            <Names names={all.slice(0, namedAtOnce)} />
            {all.length > namedAtOnce && (
              <details>
                <summary>{words.ui.debrief.more(all.length - namedAtOnce)}</summary>
                <Names names={all.slice(namedAtOnce)} />
              </details>
            )}
          </section>
        );
      })}
    </>
  );
};

const Names = ({ names }: { readonly names: readonly string[] }) => (
  <ul>
    {names.map((name) => (
      <li key={name}>{name}</li>
    ))}
  </ul>
);
