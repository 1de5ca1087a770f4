import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import type { Attempt } from '../core/site/attempt';
import { ownMinutes } from '../core/score/scored';
import { goodLabel, type AfterWork, type Mark, type Told } from '../present/afterWork';
import { deedText } from '../present/deed';
import { tellFinding } from '../present/findingWords';
import { orderCost } from '../present/orderCost';
import type { Messages } from '../present/words/messages';
import { memberName } from '../present/words/names';
import type { Units } from '../present/words/numbers';
import { goBackTo, wordsOf, type Desk } from './desk';
import { Dot } from './dot';
import { FiguredText } from './figuredText';
import { useSignal } from './useSignal';

type EventsProps = {
  readonly desk: Desk;
  readonly attempt: Attempt;
  readonly talk: AfterWork;
  readonly marks: readonly Mark[];
  readonly chosen: Mark | undefined;
  readonly choose: (mark: Mark) => void;
  /** Crew-minutes of the run when a moment had come. */
  readonly minutesAt: (steps: number) => number | undefined;
  /** Only while the page is being printed: how a moment is drawn on paper. */
  readonly onPaper: ((mark: Mark) => HTMLCanvasElement) | undefined;
};

/** What cost the most and what was done well, each with its reason and a way back to the moment. */
export const Events = (props: EventsProps) => {
  const { desk, attempt, talk } = props;
  const words = wordsOf(desk);
  return (
    <>
      <h2>{words.ui.debrief.cost}</h2>
      {talk.costly.length === 0 && <p class="nothing">{words.ui.debrief.nothing}</p>}
      {talk.costly.map((told, i) => (
        <Event {...props} told={told} label={String(i + 1)} key={i} />
      ))}
      {talk.good && <Event {...props} told={talk.good} label={goodLabel} />}
      <Order words={words} attempt={attempt} />
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

type EventProps = EventsProps & { readonly told: Told; readonly label: string };

const Event = ({ desk, told, label, marks, chosen, choose, onPaper, ...rest }: EventProps) => {
  const words = wordsOf(desk);
  const { units } = useSignal(desk.settings);
  const { finding, step, times } = told;
  const { debrief } = words.ui;
  const { title, why } = tellFinding(words, finding, units);
  const good = finding.kind === 'good';
  const mark = marks.find((one) => one.told === told);
  const name = (
    <>
      <Dot label={label} />
      <span>
        {good ? `${debrief.good}: ` : ''}
        {title}
        {times > 1 ? ` ${debrief[finding.kind === 'state' ? 'places' : 'times'](times)}` : ''}
      </span>
    </>
  );
  return (
    <article
      class={`event ${good ? 'good' : ''} ${mark && mark === chosen ? 'on' : ''}`}
      data-code={finding.code}
    >
      <h3>
        {mark ? (
          <button type="button" class="name" aria-pressed={mark === chosen} onClick={() => choose(mark)}>
            {name}
          </button>
        ) : (
          <span class="name">{name}</span>
        )}
      </h3>
      {mark && onPaper && <PaperPicture picture={() => onPaper(mark)} />}
      {!good && <Cost words={words} told={told} />}
      <div class="why">
        <Deed {...rest} words={words} told={told} units={units} />
        <p>
          <FiguredText text={why} />
        </p>
        {step !== undefined && !desk.readOnly && (
          <button type="button" class="btn small back" onClick={() => void goBackTo(desk, step)}>
            {good ? debrief.see : debrief.back}
          </button>
        )}
      </div>
    </article>
  );
};

/** The moment as a small picture on paper: drawn at once, since paper does not wait. */
const PaperPicture = ({ picture }: { readonly picture: () => HTMLCanvasElement }) => {
  const host = useRef<HTMLCanvasElement>(null);
  useLayoutEffect(() => {
    const drawn = picture();
    if (!host.current) return;
    Object.assign(host.current, { width: drawn.width, height: drawn.height });
    host.current.getContext('2d')?.drawImage(drawn, 0, 0);
  }, []);
  return <canvas ref={host} class="paperPicture" aria-hidden="true" />;
};

/** What it cost: crew-minutes, or the most points that are left after a danger. */
const Cost = ({ words, told: { finding } }: { readonly words: Messages; readonly told: Told }) => (
  <p class="cost tn">
    <b>{finding.kind === 'safety' ? `≤${finding.numbers['cap'] ?? ''}` : finding.minutes}</b>{' '}
    <small>
      {finding.kind === 'safety' ? words.ui.debrief.points : words.ui.site.minutes(finding.minutes)}
    </small>
  </p>
);

type DeedProps = Pick<EventsProps, 'attempt' | 'minutesAt'> & {
  readonly words: Messages;
  readonly told: Told;
  readonly units: Units;
};

/** What was done then, and on what: how the moment is known again. */
const Deed = ({ words, told, units, attempt, minutesAt }: DeedProps) => {
  const step = told.step === undefined ? undefined : attempt.steps[told.step];
  if (!step || told.step === undefined) return null;
  const minutes = minutesAt(told.step + 1) ?? ownMinutes({ ...attempt, found: attempt.found });
  const said = deedText(words, step, units);
  const member = told.member === undefined ? '' : memberName(words, told.member);
  const named = member === '' || said.includes(member) ? '' : ` ${member}.`;
  return (
    <p class="dim">
      <FiguredText text={words.ui.debrief.then(minutes, `${said}${named}`)} />
    </p>
  );
};
