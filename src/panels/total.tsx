import { verdictOn } from '../core/score/verdict';
import { passLine } from '../core/score/scored';
import type { Part, Score } from '../core/score/score';
import type { Attempt } from '../core/site/attempt';
import { errorOn, weakestOn, wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';

const order: readonly Part[] = ['order', 'checks', 'fit', 'eye', 'economy'];
const lines: Readonly<Partial<Record<Part, number>>> = {
  order: passLine.order,
  checks: passLine.checks,
  fit: passLine.fit,
  eye: passLine.eye,
};

type TotalProps = { readonly desk: Desk; readonly attempt: Attempt; readonly score: Score };

/** The score: its total with how far one run may be off, then part by part, each on a ruled scale with its pass line. */
export const Total = ({ desk, attempt, score }: TotalProps) => {
  const words = wordsOf(desk);
  const { debrief } = words.ui;
  const { level, mode } = attempt;
  useSignal(desk.proof);
  const error = errorOn(desk, level.id);
  const weakest = weakestOn(desk, level.id, score.parts);
  return (
    <>
      <h2 class="hidden">{debrief.score}</h2>
      <div class="total">
        <div class="number tn" id="total">
          {Math.round(score.total)}
        </div>
        <div>
          <b>{debrief[verdictOn(score, mode, error)]}</b>
          <p>
            {[
              debrief.bar(String(passLine.total)),
              ...(error === undefined ? [] : [debrief.band(error.toFixed(1))]),
              debrief.done(String(Math.round(score.done * 100))),
              ...(score.cap === undefined ? [] : [debrief.capped(String(score.cap))]),
            ].join(' ')}
          </p>
        </div>
      </div>
      <Scale value={score.total / 100} line={passLine.total / 100} spread={(error ?? 0) / 100} tall />
      <p class="key dim">
        <svg viewBox="0 0 10 16" aria-hidden="true">
          <path d="M5 0v16" stroke="currentColor" stroke-width="2" stroke-dasharray="3 2" />
        </svg>
        {debrief.passLine}
        {error !== undefined && (
          <>
            <i class="spread" />
            {debrief.spread}
          </>
        )}
      </p>
      {order.map((part) => (
        <PartRow key={part} desk={desk} part={part} value={score.parts[part]} weakest={part === weakest} />
      ))}
      {weakest && <p class="weakest">{debrief.weakest(debrief.parts[weakest])}</p>}
    </>
  );
};

const PartRow = ({
  desk,
  part,
  value,
  weakest,
}: {
  readonly desk: Desk;
  readonly part: Part;
  readonly value: number | undefined;
  readonly weakest: boolean;
}) => {
  const { debrief } = wordsOf(desk).ui;
  if (value === undefined) return null;
  const line = lines[part];
  return (
    <div class={`part ${weakest ? 'weak' : ''}`}>
      <span>{debrief.parts[part]}</span>
      <Scale value={value} line={line} />
      <b class="tn">{Math.round(value * 100)}</b>
      <span class="dim">{line === undefined ? '' : value >= line ? debrief.toStandard : debrief.below}</span>
    </div>
  );
};

type ScaleProps = {
  readonly value: number;
  readonly line: number | undefined;
  readonly spread?: number;
  readonly tall?: boolean;
};

/** A ruled scale from 0 to 100 with the pass line dashed, the score chalked, and its spread a paler band behind it. */
const Scale = ({ value, line, spread = 0, tall = false }: ScaleProps) => {
  const from = Math.max(0, value - spread) * 100;
  const to = Math.min(1, value + spread) * 100;
  return (
    <svg class={tall ? 'tall' : ''} viewBox="0 0 100 20" preserveAspectRatio="none" aria-hidden="true">
      {spread > 0 && <path d={`M${from} 4H${to}V17H${from}z`} fill="var(--spread)" />}
      <path
        d={`M0 18H100${Array.from({ length: 11 }, (_, i) => `M${i * 10} ${i % 5 === 0 ? 13 : 15.5}V18`).join('')}`}
        stroke="currentColor"
        fill="none"
        stroke-width="1"
        vector-effect="non-scaling-stroke"
      />
      {line !== undefined && (
        <path
          d={`M${line * 100} 1v17`}
          stroke="currentColor"
          stroke-dasharray="3 2"
          stroke-width="2"
          vector-effect="non-scaling-stroke"
        />
      )}
      <path
        d={`M${value * 100} 3v15`}
        stroke="var(--chalk)"
        stroke-width="5"
        vector-effect="non-scaling-stroke"
      />
    </svg>
  );
};
