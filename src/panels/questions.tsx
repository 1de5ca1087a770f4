import { useEffect, useState } from 'preact/hooks';
import { wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';

type Answers = { readonly intend: string; readonly happened: string; readonly next: string };
const empty: Answers = { intend: '', happened: '', next: '' };

/** Three questions after every run; the answers stay with the run on this device. On paper, blank ones are lines to write on. */
export const Questions = ({ desk, run }: { readonly desk: Desk; readonly run: string }) => {
  const words = wordsOf(desk);
  useSignal(desk.settings);
  const [answers, setAnswers] = useState(empty);
  useEffect(() => {
    void desk.store.get(`answers ${run}`).then(
      (kept) => setAnswers({ ...empty, ...(kept as Partial<Answers> | undefined) }),
      () => undefined,
    );
  }, [run]);
  const put = (part: Partial<Answers>): void => {
    const next = { ...answers, ...part };
    setAnswers(next);
    void desk.store.put(`answers ${run}`, next).catch(() => undefined);
  };
  const ask = (key: keyof Answers) => (
    <label>
      {words.ui.debrief[key]}
      <textarea
        rows={2}
        id={key}
        value={answers[key]}
        onInput={(event) => put({ [key]: event.currentTarget.value })}
      />
      <span class="onPaper" aria-hidden="true">
        {answers[key]}
      </span>
    </label>
  );
  return (
    <div class="ask">
      <h2>{words.ui.debrief.talkOver}</h2>
      {ask('intend')}
      {ask('happened')}
      {ask('next')}
      <p class="dim">{words.ui.debrief.talkOverKept}</p>
    </div>
  );
};
