import type { Finding } from '../core/score/score';
import { tellFinding } from '../present/findingWords';
import { goBackTo, wordsOf, type Desk } from './desk';
import { FiguredText } from './figuredText';
import { useSignal } from './useSignal';

/** How many costly events are told: the rest is in the punch list and in the parts. */
const eventsTold = 3;

/** The costliest, dangers first. */
export const costliest = (findings: readonly Finding[]): readonly Finding[] =>
  findings
    .filter(({ kind }) => kind !== 'good')
    .sort((a, b) => Number(b.kind === 'safety') - Number(a.kind === 'safety') || b.minutes - a.minutes)
    .slice(0, eventsTold);

/** What cost the most and what was done well, each with its reason and a way back to the moment. */
export const Events = ({
  desk,
  findings,
}: {
  readonly desk: Desk;
  readonly findings: readonly Finding[];
}) => {
  const words = wordsOf(desk);
  const costly = costliest(findings);
  const good = findings.find(({ kind }) => kind === 'good');
  const moves = findings.find(({ kind }) => kind === 'order')?.numbers['moves'];
  return (
    <>
      <div class="tagline">
        <h2>{words.ui.debrief.cost}</h2>
        {moves !== undefined && moves > 0 && <span class="dim">{words.ui.debrief.moves(moves)}</span>}
      </div>
      {costly.length === 0 && <p class="nothing">{words.ui.debrief.nothing}</p>}
      {costly.map((finding, i) => (
        <Event desk={desk} finding={finding} number={i + 1} key={i} />
      ))}
      {good && <Event desk={desk} finding={good} />}
    </>
  );
};

type EventProps = { readonly desk: Desk; readonly finding: Finding; readonly number?: number };

const Event = ({ desk, finding, number }: EventProps) => {
  const words = wordsOf(desk);
  const { units } = useSignal(desk.settings);
  const { title, why } = tellFinding(words, finding, units);
  const good = finding.kind === 'good';
  const { step } = finding;
  return (
    <article class={`event ${good ? 'good' : ''}`} data-code={finding.code}>
      {good ? (
        <svg viewBox="0 0 44 44" aria-hidden="true">
          <path d="M8 24l10 11L37 9" fill="none" stroke="var(--done)" stroke-width="5" />
        </svg>
      ) : (
        <div class="cost tn">
          {finding.kind === 'safety' ? `≤${finding.numbers['cap'] ?? ''}` : finding.minutes}
          <small>
            {finding.kind === 'safety' ? words.ui.debrief.points : words.ui.site.minutes(finding.minutes)}
          </small>
        </div>
      )}
      <div>
        <h3>
          {number !== undefined && <span class="dot tn">{number}</span>}
          {good ? `${words.ui.debrief.good}: ` : ''}
          {title}
        </h3>
        <p class="dim">
          <FiguredText text={why} />
        </p>
      </div>
      {step !== undefined && (
        <button type="button" class="btn" onClick={() => void goBackTo(desk, step)}>
          {good ? words.ui.debrief.see : words.ui.debrief.back}
        </button>
      )}
    </article>
  );
};
