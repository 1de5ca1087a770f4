import { useEffect, useState } from 'preact/hooks';
import type { reasonSaid } from '../present/roofs/said';
import { openRun, resumeRun, stopped, type Stopped } from '../session/session';
import type { RunHead } from '../session/store';
import { enter, wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';

/** What somebody who comes to the jobs has to know first: a run to go on with, or what is not as it should be. */
export const StartNotices = ({ desk }: { readonly desk: Desk }) => {
  const { states } = wordsOf(desk);
  const lost = useSignal(desk.lost);
  const open = openRun(useSignal(desk.heads));
  return (
    <>
      {lost && (
        <p class="notice paper" role="alert">
          {states.link}
        </p>
      )}
      {!desk.store.lasts && (
        <p class="notice paper" role="status">
          {states.unkeptAll}
        </p>
      )}
      {desk.troubles.length > 0 && <Troubles desk={desk} />}
      {open && <OpenRun desk={desk} head={open} key={open.id} />}
    </>
  );
};

/** Level files that cannot be played, each with the place and the reason. What tells reasons comes only where there are some. */
const Troubles = ({ desk }: { readonly desk: Desk }) => {
  const { lang, states } = wordsOf(desk);
  const [told, tell] = useState<typeof reasonSaid>();
  useEffect(() => {
    const loaded = import('../present/roofs/said').then(
      (said) => said.reasonSaid,
      () => () => '',
    );
    void loaded.then((reason) => tell(() => reason));
  }, []);
  // Said once and whole: an alert that is filled in later is read out twice.
  if (!told) return null;
  return (
    <section class="notice paper" role="alert">
      <h2>{states.levels(desk.troubles.length)}</h2>
      <ul>
        {desk.troubles.map(({ file, line, complaint, more }) => (
          <li key={file}>
            <b>
              {file}, {states.line(line)}
            </b>{' '}
            {told(lang, complaint)}
            {more > 0 && <span class="dim"> {states.more(more)}</span>}
          </li>
        ))}
      </ul>
      <p>{states.mend}</p>
    </section>
  );
};

/** The way back to a run that is not over, or why there is none. */
const OpenRun = ({ desk, head }: { readonly desk: Desk; readonly head: RunHead }) => {
  const words = wordsOf(desk);
  const [failed, setFailed] = useState<Stopped | 'elsewhere'>();
  const why = failed === 'elsewhere' ? undefined : (failed ?? stopped(head, desk.levels));
  const resume = async (): Promise<void> => {
    const session = await resumeRun(desk.store, desk.levels).catch(() => undefined);
    if (session === 'elsewhere') return setFailed(session);
    if (session) return enter(desk, session);
    // Another page may have ended it, or begun the next.
    const heads = await desk.store.runs().catch(() => desk.heads.value);
    if (openRun(heads)?.id === head.id) setFailed('unreadable');
    desk.heads.value = heads;
  };
  if (why) {
    const title = desk.levels.find(({ id }) => id === head.level)?.title[words.lang] ?? head.level;
    return (
      <p class="notice paper" role="status" id="stopped">
        {words.states.stopped[why](title)}
      </p>
    );
  }
  return (
    <>
      <p class="lead">
        <button type="button" class="btn" id="resume" onClick={() => void resume()}>
          {words.ui.start.resume}
        </button>
      </p>
      {failed && (
        <p class="notice paper" role="alert">
          {words.states.elsewhere}
        </p>
      )}
    </>
  );
};
