import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Complaint } from '../../content/complaint';
import { fileOf } from '../../content/draft/roofDraft';
import { ownJob } from '../../content/ownJob';
import { refusalSaid } from '../../present/roofs/said';
import { openJob, type Desk } from '../desk';
import { roofWordsOf } from './roofWords';
import { addOwnJob } from './ownJobList';
import { tryJob } from '../../session/ownJobs';
import type { OwnRoof } from './ownRoof';

type State =
  | { readonly is: 'rest' }
  | { readonly is: 'trying'; readonly share: number }
  | { readonly is: 'refused'; readonly why: readonly Complaint[] };

/** Makes a job of the roof: the crew runs it once, apart from the page, before anybody is let onto it. */
export const Practice = ({ desk, own }: { readonly desk: Desk; readonly own: OwnRoof }) => {
  const words = roofWordsOf(desk);
  const [state, set] = useState<State>({ is: 'rest' });
  const running = useRef<(() => void) | undefined>(undefined);
  useEffect(() => () => running.current?.(), []);
  // Other answers are another roof.
  useEffect(() => {
    running.current?.();
    set({ is: 'rest' });
  }, [own.draft]);
  const { file, played } = useMemo(() => jobIn(own), [own]);
  const begin = async (): Promise<void> => {
    set({ is: 'trying', share: 0 });
    const { done, stop } = tryJob(file, (share) => set({ is: 'trying', share }));
    running.current = stop;
    const read = await done;
    if (!read.ok) return set({ is: 'refused', why: read.complaints });
    const level = await addOwnJob(desk, { file, par: read.value });
    if (level) await openJob(desk, level);
  };
  const halt = (): void => {
    running.current?.();
    set({ is: 'rest' });
  };
  return (
    <div class="practice">
      <button
        type="button"
        class="btn"
        id="practice"
        disabled={!played || state.is === 'trying'}
        onClick={() => void begin()}
      >
        {words.own.practice}
      </button>
      {own.read.ok && !played && <p class="dim">{words.own.practiceOnly}</p>}
      {state.is === 'trying' && (
        <div class="trying" role="status">
          <p>{words.own.practiceMaking(Math.round(state.share * 100))}</p>
          <progress max={1} value={state.share} aria-label={words.own.practice} />
          <button type="button" class="btn small" onClick={halt}>
            {words.own.practiceStop}
          </button>
        </div>
      )}
      {state.is === 'refused' && <Refused desk={desk} why={state.why} />}
    </div>
  );
};

/** Whether the site knows such a roof. */
const jobIn = ({ draft, read }: OwnRoof) => {
  const file = fileOf(draft);
  return { file, played: read.ok && ownJob(file).ok };
};

const Refused = ({ desk, why }: { readonly desk: Desk; readonly why: readonly Complaint[] }) => {
  const words = roofWordsOf(desk);
  return (
    <div role="alert">
      <p>
        <b>{words.own.practiceNot}</b>
      </p>
      {why.map(({ wrong, accepted }) => (
        <p key={refusalSaid(words.lang, wrong)}>
          {refusalSaid(words.lang, wrong)}. {words.own.accepted(refusalSaid(words.lang, accepted))}
        </p>
      ))}
    </div>
  );
};
