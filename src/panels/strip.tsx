import { useState } from 'preact/hooks';
import type { Finding } from '../core/score/score';
import { stripOf, type Shot } from '../present/strip';
import type { Session } from '../session/session';
import { goBackTo, stoodAt, wordsOf, type Desk } from './desk';
import { Picture } from './picture';
import { useSignal } from './useSignal';

type Props = { readonly desk: Desk; readonly session: Session; readonly costly: readonly Finding[] };

/** The roof as it stood, to slide along: a ruled line with a plumb bob on it, and the costly moments numbered. */
export const Strip = ({ desk, session, costly }: Props) => {
  const words = wordsOf(desk);
  useSignal(desk.settings);
  const attempt = session.attempt.value;
  const shots = stripOf(attempt);
  const [at, setAt] = useState(shots.length - 1);
  const { strip, step, back } = words.ui.debrief;
  const says = ({ minutes, stands }: Shot): string =>
    `${minutes} ${words.ui.site.minutes(minutes)}, ${words.ui.debrief.stands[stands]}`;
  return (
    <section class="strip" aria-label={strip}>
      <div class="shots" style={`--shots:${shots.length}`}>
        {shots.map((shot, i) => (
          <ShotButton
            key={shot.steps}
            desk={desk}
            session={session}
            shot={shot}
            says={`${step(shot.steps)}: ${says(shot)}`}
            numbers={costly.flatMap((finding, n) => (shotOf(shots, finding) === i ? [n + 1] : []))}
            chosen={i === at}
            choose={() => setAt(i)}
          />
        ))}
        <input
          type="range"
          min={0}
          max={shots.length - 1}
          value={at}
          aria-label={strip}
          aria-valuetext={shots[at] && says(shots[at])}
          onInput={(event) => setAt(Number(event.currentTarget.value))}
        />
        {shots.map((shot, i) => (
          <span class={`stamp tn ${i === at ? 'on' : ''}`} key={`stamp ${shot.steps}`} aria-hidden="true">
            {shot.minutes}&ensp;{words.ui.debrief.stands[shot.stands]}
          </span>
        ))}
      </div>
      <button
        type="button"
        class="btn small"
        id="strip-back"
        onClick={() => void goBackTo(desk, shots[at]?.steps ?? 0)}
      >
        {back}
      </button>
    </section>
  );
};

/** The first state that shows what a finding's step did. */
const shotOf = (shots: readonly Shot[], { step }: Finding): number =>
  step === undefined ? -1 : shots.findIndex(({ steps }) => steps > step);

type ShotProps = Omit<Props, 'costly'> & {
  readonly shot: Shot;
  readonly says: string;
  /** Of the costly moments that lie here. */
  readonly numbers: readonly number[];
  readonly chosen: boolean;
  readonly choose: () => void;
};

const ShotButton = ({ desk, session, shot, says, numbers, chosen, choose }: ShotProps) => {
  const { theme, lang } = useSignal(desk.settings);
  return (
    <button type="button" class="shot" aria-pressed={chosen} aria-label={says} onClick={choose}>
      <Picture
        label={says}
        deps={[shot.steps, theme, lang]}
        draw={(canvas) =>
          desk.drawings.thumb(canvas, {
            attempt: stoodAt(session, shot.steps),
            corner: 'street',
            theme,
            lang,
          })
        }
      />
      <span class="dots">
        {numbers.map((n) => (
          <span class="dot tn" key={n}>
            {n}
          </span>
        ))}
      </span>
    </button>
  );
};
