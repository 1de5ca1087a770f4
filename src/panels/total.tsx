import { verdictOn } from '../core/score/verdict';
import { passLine } from '../core/score/scored';
import type { Part, Score } from '../core/score/score';
import type { Attempt } from '../core/site/attempt';
import { errorOn, weakestOn, wordsOf, type Desk } from './desk';

const order: readonly Part[] = ['order', 'checks', 'fit', 'eye', 'economy'];
const lines: Readonly<Partial<Record<Part, number>>> = {
  order: passLine.order,
  checks: passLine.checks,
  fit: passLine.fit,
  eye: passLine.eye,
};

type TotalProps = { readonly desk: Desk; readonly attempt: Attempt; readonly score: Score };

/** The score by parts, each on a ruled scale with its pass line. */
export const Total = ({ desk, attempt, score }: TotalProps) => {
  const words = wordsOf(desk);
  const { debrief } = words.ui;
  const { level, mode } = attempt;
  const error = errorOn(desk, level.id);
  const weakest = weakestOn(desk, level.id, score.parts);
  return (
    <>
      <div class="total">
        <div class="number tn" id="total">
          {Math.round(score.total)}
        </div>
        <div>
          <b>{debrief[verdictOn(score, mode, error)]}</b>
          <p>
            {debrief.done(String(Math.round(score.done * 100)))}
            {error === undefined ? '' : `. ${debrief.band(error.toFixed(1))}`}
            {score.cap === undefined ? '' : `. ${debrief.capped(String(score.cap))}`}
          </p>
        </div>
      </div>
      {weakest && <p class="weakest">{debrief.weakest(debrief.parts[weakest])}</p>}
      {order.map((part) => {
        const value = score.parts[part];
        if (value === undefined) return null;
        const line = lines[part];
        return (
          <div class="part" key={part}>
            <span>{debrief.parts[part]}</span>
            <PartScale value={value} line={line} />
            <b class="tn">{Math.round(value * 100)}</b>
            <span class="dim">
              {line === undefined ? '' : value >= line ? debrief.toStandard : debrief.below}
            </span>
          </div>
        );
      })}
    </>
  );
};

/** A ruled scale with the pass line dashed and the score chalked. */
const PartScale = ({ value, line }: { readonly value: number; readonly line: number | undefined }) => (
  <svg viewBox="0 0 100 20" preserveAspectRatio="none" aria-hidden="true">
    <path
      d="M0 18H100M0 14v4M25 15v3M50 14v4M75 15v3M100 14v4"
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
        stroke-width="1.5"
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
