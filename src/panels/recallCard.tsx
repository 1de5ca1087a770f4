import { useMemo, useState } from 'preact/hooks';
import type { Level } from '../core/level/level';
import { misplacedIn, recallFor, type Misplaced, type RecallStep } from '../core/order/crew/recall';
import type { Messages } from '../present/words/messages';
import { taskName } from '../present/words/names';
import { wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';

/** Asked of who comes back to a job after a day or more: the next five of its jobs, to be put in order. */
export const RecallCard = ({ desk, level }: { readonly desk: Desk; readonly level: Level }) => {
  const words = wordsOf(desk);
  const number = useSignal(desk.recall);
  const recall = useMemo(
    () => (number === undefined ? undefined : recallFor(level, number)),
    [level, number],
  );
  const [order, setOrder] = useState<readonly RecallStep[]>([]);
  const [wrong, setWrong] = useState<readonly Misplaced[]>();
  if (!recall) return null;
  const names = words.ui.recall;
  const tap = (step: RecallStep): void =>
    setOrder(order.includes(step) ? order.filter((one) => one !== step) : [...order, step]);
  const again = (): void => {
    setOrder([]);
    setWrong(undefined);
  };
  return (
    <section class="paper recall" aria-labelledby="recall-title">
      <h2 id="recall-title">{names.title}</h2>
      <p>
        {names.ask}
        {recall.after ? ` ${names.after(words.tasks[recall.after])}` : ''}
      </p>
      <Five words={words} steps={recall.steps} order={order} tap={wrong ? undefined : tap} />
      <div role="status">{wrong && <Told words={words} wrong={wrong} />}</div>
      <div class="go">
        {wrong === undefined ? (
          <button
            type="button"
            class="btn main"
            id="recallCheck"
            disabled={order.length < recall.steps.length}
            onClick={() => setWrong(misplacedIn(level, order))}
          >
            {names.check}
          </button>
        ) : (
          wrong.length > 0 && (
            <button type="button" class="btn main" id="recallAgain" onClick={again}>
              {names.again}
            </button>
          )
        )}
        <button type="button" class="btn" id="recallOn" onClick={() => (desk.recall.value = undefined)}>
          {wrong === undefined ? names.skip : names.on}
        </button>
      </div>
    </section>
  );
};

type FiveProps = {
  readonly words: Messages;
  readonly steps: readonly RecallStep[];
  /** As tapped so far. */
  readonly order: readonly RecallStep[];
  /** Undefined once the answer is given. */
  readonly tap: ((step: RecallStep) => void) | undefined;
};

const Five = ({ words, steps, order, tap }: FiveProps) => (
  <ul class="five">
    {steps.map((step) => (
      <li key={taskName(words, step)}>
        <button
          type="button"
          class="btn"
          aria-pressed={order.includes(step)}
          disabled={!tap}
          onClick={() => tap?.(step)}
        >
          <span class="nth tn">{order.includes(step) ? order.indexOf(step) + 1 : ''}</span>
          {taskName(words, step)}
        </button>
      </li>
    ))}
  </ul>
);

const Told = ({ words, wrong }: { readonly words: Messages; readonly wrong: readonly Misplaced[] }) => {
  const names = words.ui.recall;
  if (wrong.length === 0) return <p>{names.holds}</p>;
  return (
    <>
      {wrong.map(({ early, late, why }) => (
        <p key={`${taskName(words, early)} ${taskName(words, late)}`}>
          <b>{names.first(taskName(words, early), taskName(words, late))}</b>{' '}
          {why === 'physics' ? names.physics : words.rules[why]?.why}
        </p>
      ))}
    </>
  );
};
