import { useEffect, useRef, useState } from 'preact/hooks';
import type { Attempt } from '../core/site/attempt';
import { laidOut, timesFor, traceText, tracesOf, type Trace } from '../present/exaggerated';
import { offersTeaching } from '../present/teaching';
import { wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';

/** A strip's height and what is left for its line over and under the intended one, pixels; ours. */
const high = 34;
const half = 14;
/** Beside the ends of the line, for their letters, pixels. */
const margin = 20;

/** What is out of true, many times larger, line by line under the drawing. It cannot be picked from. */
export const Exaggerated = ({ desk, attempt }: { readonly desk: Desk; readonly attempt: Attempt }) => {
  const on = useSignal(desk.strip);
  const view = useSignal(desk.view);
  const host = useRef<HTMLElement>(null);
  const shown = on && view === 'overview' && offersTeaching(attempt.mode) && attempt.site.down === undefined;
  const wide = useWidth(host, shown);
  if (!shown) return null;
  const words = wordsOf(desk);
  const said = words.views.strip;
  const traces = tracesOf(attempt);
  const { length } = attempt.level.plan;
  const room = { long: Math.max(40, wide - 2 * margin), half, length };
  const times = timesFor(traces, room);
  const { units } = desk.settings.value;
  return (
    <section class="enlarged paper" ref={host} aria-label={said.show}>
      <p>
        <b>{traces.length > 0 ? said.title(times) : said.none}</b> <span class="dim">{said.intended}</span>
      </p>
      <div class="lines">
        {traces.map((trace) => (
          <figure key={trace.kind}>
            <figcaption>{traceText(words, trace, units)}</figcaption>
            <Line trace={trace} times={times} room={room} />
          </figure>
        ))}
      </div>
    </section>
  );
};

const useWidth = (host: { readonly current: HTMLElement | null }, shown: boolean): number => {
  const [wide, setWide] = useState(0);
  useEffect(() => {
    const lines = host.current?.querySelector('.lines');
    if (!lines) return undefined;
    const look = (): void => setWide(lines.querySelector('figure')?.clientWidth ?? 0);
    const watch = new ResizeObserver(look);
    watch.observe(lines);
    look();
    return () => watch.disconnect();
  }, [shown]);
  return wide;
};

type Laid = {
  readonly trace: Trace;
  readonly times: number;
  readonly room: { readonly long: number; readonly half: number; readonly length: number };
};

const Line = ({ trace, times, room }: Laid) => {
  const points = laidOut(trace, times, room).map(([x, y]) => [margin + x, high / 2 + y] as const);
  return (
    <svg width={room.long + 2 * margin} height={high} aria-hidden="true">
      <text x="3" y={high / 2 + 5}>
        A
      </text>
      <text x={room.long + 2 * margin - 12} y={high / 2 + 5}>
        B
      </text>
      <line class="meant" x1={margin} x2={margin + room.long} y1={high / 2} y2={high / 2} />
      <polyline class="is" points={points.map(([x, y]) => `${x.toFixed(2)},${y.toFixed(2)}`).join(' ')} />
      {points.map(([x, y]) => (
        <circle key={x} cx={x} cy={y} r="2" />
      ))}
    </svg>
  );
};
