import { useState } from 'preact/hooks';
import { codeOf } from '../../content/assignment';
import type { TakenOn } from '../../content/classSchema';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { goUnder } from './takenActs';

type Props = { readonly desk: Desk; readonly taken: TakenOn };

/** Who a learner is to the instructor: a code and nothing else. */
export const CodeField = ({ desk, taken }: Props) => {
  const { code: words } = classWordsOf(desk).classes;
  if (taken.learner === undefined) return <Typed desk={desk} taken={taken} />;
  return (
    <>
      <h2>{words.title}</h2>
      <p id="under">{words.under(taken.learner)}</p>
      <p class="dim">{words.keeps}</p>
      <div class="others">
        <button type="button" class="btn small" onClick={() => void goUnder(desk, taken, undefined)}>
          {words.change}
        </button>
      </div>
    </>
  );
};

const Typed = ({ desk, taken }: Props) => {
  const { code: words } = classWordsOf(desk).classes;
  const [typed, setTyped] = useState('');
  const [bad, setBad] = useState(false);
  const use = (event: Event): void => {
    event.preventDefault();
    const code = codeOf(typed);
    setBad(code === undefined);
    if (code === undefined) return;
    void goUnder(desk, taken, code).then(() =>
      requestAnimationFrame(() => document.querySelector<HTMLElement>('[data-assigned]')?.focus()),
    );
  };
  return (
    <form onSubmit={use}>
      <label class="field">
        <span class="label">{words.title}</span>
        <span class="dim says" id="code-says">
          {words.says}
        </span>
        <input
          id="code"
          autocomplete="off"
          autocapitalize="characters"
          spellcheck={false}
          value={typed}
          aria-invalid={bad}
          aria-describedby="code-says code-bad"
          onInput={(event) => setTyped(event.currentTarget.value)}
        />
      </label>
      <p id="code-bad" role="status" class="bad">
        {bad ? words.bad : ''}
      </p>
      <button type="submit" class="btn main" id="useCode">
        {words.set}
      </button>
    </form>
  );
};
