import { useEffect } from 'preact/hooks';
import { standBy } from '../../records/pool';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { useSignal } from '../useSignal';
import { ClassHeader } from './classHeader';
import { classPages } from './classState';
import { HelpPage } from './helpPage';
import { KeepSafe } from './keepSafe';
import { OutPage } from './outPage';
import { ReadOnly } from './readOnly';
import { ResultsPage } from './resultsPage';

/** The instructor's desk: jobs go out, runs come in, and what was learned from them stays. */
export const ClassScreen = ({ desk }: { readonly desk: Desk }) => {
  const { classes: words, classDoor } = classWordsOf(desk);
  useSignal(desk.settings);
  const page = useSignal(desk.classes.page);
  // Whichever page comes first: runs may be handed in before long.
  useEffect(() => standBy(desk.levels[0]), []);
  return (
    <div class="page classPage">
      <ClassHeader desk={desk} />
      <main>
        <h1>{classDoor.title}</h1>
        <p class="lead offPaper">{words.lead}</p>
        <nav class="choice offPaper" aria-label={words.pages}>
          {classPages.map((one) => (
            <button
              type="button"
              class="btn"
              key={one}
              id={`page-${one}`}
              aria-pressed={one === page}
              onClick={() => (desk.classes.page.value = one)}
            >
              {words.page[one]}
            </button>
          ))}
        </nav>
        {page === 'out' && <OutPage desk={desk} />}
        {page === 'results' && <ResultsPage desk={desk} />}
        {page === 'keep' && <KeepSafe desk={desk} />}
        {page === 'help' && <HelpPage desk={desk} />}
      </main>
    </div>
  );
};

/** One run, at any moment of it. */
export const ReadingScreen = ({ desk }: { readonly desk: Desk }) => {
  const session = useSignal(desk.classes.reading);
  return session ? <ReadOnly desk={desk} session={session} /> : null;
};
