import type { LearnerRow } from '../../records/report';
import { errorOn, type Desk } from '../desk';
import { classWordsOf } from './classWords';
import { jobText } from './reportRows';
import { pointsText } from './figures';

type Props = { readonly desk: Desk; readonly row: LearnerRow; readonly line: number };

/** From one run to the next, in drawing units. */
const stride = 60;
const top = 8;
/** Drawing units to a point. */
const tall = 1;

/** Totals run by run on a ruled scale, each with how far one run may be off, and the pass line dashed. The table of runs says the same. */
export const Turns = ({ desk, row, line }: Props) => {
  const { classes, ui } = classWordsOf(desk);
  const turns = row.counted.flatMap(({ marked: { told, level } }) =>
    told ? [{ total: told.total, level, error: errorOn(desk, level) ?? 0 }] : [],
  );
  if (turns.length === 0) return null;
  const width = Math.max(turns.length, 6) * stride + 40;
  const y = (points: number): number => top + (100 - Math.min(100, Math.max(0, points))) * tall;
  const x = (i: number): number => 40 + (i + 0.5) * stride;
  const said = turns.map(({ total, level }) => `${jobText(desk, level)} ${pointsText(total)}`).join(', ');
  return (
    <>
      <svg
        class="turns"
        viewBox={`0 0 ${width} 124`}
        role="img"
        aria-label={`${classes.results.trend}: ${said}`}
      >
        {[0, 50, 100].map((points) => (
          <g key={points}>
            <path d={`M34 ${y(points)}H${width}`} stroke="var(--hair)" />
            <text x="28" y={y(points) + 4} text-anchor="end">
              {points}
            </text>
          </g>
        ))}
        <path d={`M34 ${y(line)}H${width}`} stroke="var(--ink)" stroke-dasharray="6 4" />
        {turns.map(({ total, error }, i) => (
          <g key={i}>
            {error > 0 && (
              <path d={`M${x(i) - 9} ${y(total + error)}h18V${y(total - error)}h-18z`} fill="var(--spread)" />
            )}
            <path d={`M${x(i) - 14} ${y(total)}h28`} stroke="var(--chalk)" stroke-width="4" />
            <text x={x(i)} y="122" text-anchor="middle">
              {i + 1}
            </text>
          </g>
        ))}
      </svg>
      <p class="turnsKey dim">
        <span>
          <svg viewBox="0 0 10 16" aria-hidden="true">
            <path d="M5 0v16" stroke="currentColor" stroke-width="2" stroke-dasharray="3 2" />
          </svg>
          {ui.debrief.passLine}
        </span>
        <span>
          <i />
          {ui.debrief.spread}
        </span>
      </p>
    </>
  );
};
