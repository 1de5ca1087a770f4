import { useMemo } from 'preact/hooks';
import { placeOf } from '../core/site/ids';
import type { Attempt } from '../core/site/attempt';
import type { Mark } from '../present/afterWork';
import { deedText } from '../present/deed';
import type { StageCorner } from '../present/stagePort';
import { stripOf, type Frame } from '../present/strip';
import type { Session } from '../session/session';
import { goBackTo, runElsewhere, stoodAt, wordsOf, type Desk } from './desk';
import { FiguredText } from './figuredText';
import { Standing, type Look } from './standing';
import { Strip } from './strip';
import { useSignal } from './useSignal';

/** What is looked at: a stop of the strip, and the told moment it was chosen by. */
export type Here = { readonly frame: number; readonly mark: Mark | undefined };

type RoofProps = {
  readonly desk: Desk;
  readonly session: Session;
  readonly frames: readonly Frame[];
  readonly marks: readonly Mark[];
  readonly here: Here;
  readonly setHere: (here: Here) => void;
  readonly choose: (mark: Mark) => void;
  readonly paper: boolean;
};

/** The roof as it stood, large, with what was done in words, the strip to slide along under it, and the next act. */
export const Roof = ({ desk, session, frames, marks, here, setHere, choose, paper }: RoofProps) => {
  const words = wordsOf(desk);
  const { units } = useSignal(desk.settings);
  const attempt = session.attempt.value;
  const shots = useMemo(() => stripOf(attempt), [attempt]);
  const ahead = useMemo(
    () => shots.flatMap(({ steps }) => frames.filter((one) => one.steps === steps)).map(plainly(session)),
    [shots, frames],
  );
  const frame = frames[here.frame];
  if (!frame) return null;
  const { debrief, site } = words.ui;
  const parts = (one: Frame) => ({
    when: `${one.minutes} ${site.minutes(one.minutes)}`,
    stands: `${debrief.stands[one.stands]}.`,
    did: shots.some(({ steps }) => steps === one.steps) && marked(one) === undefined ? '' : deed(one),
  });
  const marked = ({ steps }: Frame): Mark | undefined =>
    here.mark?.shows === steps ? here.mark : marks.find(({ shows }) => shows === steps);
  const deed = (one: Frame): string => {
    const step = attempt.steps[marked(one)?.told.step ?? one.steps - 1];
    return step ? deedText(words, step, units) : '';
  };
  const says = (one: Frame): string => {
    const { when, stands, did } = parts(one);
    return `${when}. ${stands} ${did}`.trim();
  };
  const told = parts(frame);
  return (
    <>
      <Standing
        desk={desk}
        label={says(frame)}
        look={{
          steps: frame.steps,
          stood: () => attemptAt(session, frame),
          member: here.mark?.told.member,
          corner: cornerFor(here.mark),
        }}
        ahead={ahead}
      />
      <div class={`caption ${frame.stands === 'down' ? 'stop' : ''}`}>
        <span>
          <b class="tn">{told.when}</b> {told.stands} <FiguredText text={told.did} />
        </span>
      </div>
      <Strip
        {...{ desk, shots, frames, marks, choose, says, paper }}
        here={here.frame}
        chosen={here.mark}
        goTo={(i) => setHere({ frame: i, mark: marks.find(({ shows }) => shows === frames[i]?.steps) })}
        stoodAt={(one) => attemptAt(session, one)}
      />
      {!desk.readOnly && (
        <NextAct desk={desk} attempt={attempt} steps={here.mark?.told.step ?? frame.steps} />
      )}
    </>
  );
};

/** At a moment of the run: go back to it. At its end: the same work on another site. */
const NextAct = ({
  desk,
  attempt,
  steps,
}: {
  readonly desk: Desk;
  readonly attempt: Attempt;
  readonly steps: number;
}) => {
  const { debrief } = wordsOf(desk).ui;
  const ended = steps >= attempt.steps.length;
  return (
    <div class="next">
      <button
        type="button"
        class="btn main"
        id="next-act"
        data-steps={ended ? undefined : steps}
        onClick={() => (ended ? runElsewhere(desk) : void goBackTo(desk, steps))}
      >
        {ended ? debrief.elsewhere : debrief.back}
      </button>
    </div>
  );
};

/** What the events tell of that moment is enough for a drawing; only what was taken back later has to be told again. */
const attemptAt = (session: Session, { steps, site }: Frame): Attempt =>
  site ? { ...session.attempt.value, site } : stoodAt(session, steps);

/** A told moment drawn for paper: by day, small, what it is about outlined. */
export const drawnForPaper =
  ({ desk, session, frames }: Pick<RoofProps, 'desk' | 'session' | 'frames'>) =>
  (mark: Mark): HTMLCanvasElement => {
    const frame = frames.find(({ steps }) => steps === mark.shows);
    const attempt = frame ? attemptAt(session, frame) : session.attempt.value;
    const { lang } = desk.settings.value;
    return desk.drawings.standing(
      { attempt, corner: cornerFor(mark), selected: mark.told.member, theme: 'day', lang },
      paperSize,
    );
  };
/** CSS pixels, and device pixels to one: enough for a printer. */
const paperSize = { width: 300, height: 160, ratio: 2 } as const;

/** A state with nothing chosen on it. */
const plainly =
  (session: Session) =>
  (frame: Frame): Look => ({
    steps: frame.steps,
    stood: () => attemptAt(session, frame),
    member: undefined,
    corner: 'street',
  });

/** From where the member can be seen: the yard's rafters from the yard. */
const cornerFor = (mark: Mark | undefined): StageCorner =>
  placeOf(mark?.told.member ?? '').side === 'yard' ? 'yard' : 'street';
