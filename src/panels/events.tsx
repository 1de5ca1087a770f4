import { useMemo } from 'preact/hooks';
import type { Finding } from '../core/score/score';
import type { Attempt } from '../core/site/attempt';
import { tellFinding } from '../present/findingWords';
import { orderCost } from '../present/orderCost';
import type { Messages } from '../present/words/messages';
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

type EventsProps = { readonly desk: Desk; readonly attempt: Attempt; readonly findings: readonly Finding[] };

/** What cost the most and what was done well, each with its reason and a way back to the moment. */
export const Events = ({ desk, attempt, findings }: EventsProps) => {
  const words = wordsOf(desk);
  const costly = costliest(findings);
  const good = findings.find(({ kind }) => kind === 'good');
  return (
    <>
      <h2>{words.ui.debrief.cost}</h2>
      <Order words={words} attempt={attempt} />
      {costly.length === 0 && <p class="nothing">{words.ui.debrief.nothing}</p>}
      {costly.map((finding, i) => (
        <Event desk={desk} finding={finding} number={i + 1} key={i} />
      ))}
      {good && <Event desk={desk} finding={good} />}
    </>
  );
};

/** What the order cost in all, and the least that would have to move. */
const Order = ({ words, attempt }: { readonly words: Messages; readonly attempt: Attempt }) => {
  const cost = useMemo(() => orderCost(words, attempt), [words, attempt]);
  if (!cost) return null;
  const { debrief } = words.ui;
  return (
    <p class="orderCost">
      {[
        debrief.orderCost(cost.minutes),
        ...(cost.sooner.length > 0 ? [debrief.sooner(cost.sooner.join('; '))] : []),
        ...(cost.later.length > 0 ? [debrief.later(cost.later.join('; '))] : []),
      ].join(' ')}
    </p>
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
