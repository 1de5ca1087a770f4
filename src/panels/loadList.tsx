import type { Attempt } from '../core/site/attempt';
import { loadLines, loadPathOf } from '../present/loadPath';
import { offersTeaching } from '../present/teaching';
import { wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';
import type { Working } from './working';

type Props = { readonly desk: Desk; readonly attempt: Attempt; readonly working: Working };

/** The load path in words, for as long as its arrows are shown. */
export const LoadList = ({ desk, attempt, working }: Props) => {
  const on = useSignal(desk.loads);
  const view = useSignal(desk.view);
  if (!on || view !== 'overview' || !offersTeaching(attempt.mode)) return null;
  const words = wordsOf(desk);
  const said = words.views.loads;
  const path = loadPathOf(attempt, working.spot?.member);
  return (
    <section class="loads paper" tabIndex={0} aria-labelledby="loads-title">
      <h2 id="loads-title">{said.show}</h2>
      <p class="dim">{path ? said.says : said.none}</p>
      {path && (
        <>
          <ul>
            {loadLines(words, attempt, path).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <p class="dim">{said.arrows}</p>
        </>
      )}
    </section>
  );
};
