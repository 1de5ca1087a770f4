import type { Browser } from 'playwright-core';

/** What a browser's own trace says of script: for each frame it painted, all that ran before it since the last one. */

type Traced = {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds. */
  readonly ts: number;
  readonly dur?: number;
};

/** Everything that runs script, by the trace's own names; one may hold others. */
const script = new Set([
  'EvaluateScript',
  'EventDispatch',
  'FireAnimationFrame',
  'FunctionCall',
  'RunMicrotasks',
  'TimerFire',
]);
/** Once for each frame of a page. */
const painted = 'PrePaint';

const thread = ({ pid, tid }: Traced): string => `${pid} ${tid}`;

/** The thread that painted most: the page's own, whatever else the browser runs. */
const paints = (events: readonly Traced[]): string | undefined => {
  const times = new Map<string, number>();
  for (const one of events)
    if (one.name === painted) times.set(thread(one), 1 + (times.get(thread(one)) ?? 0));
  return [...times].sort((a, b) => b[1] - a[1])[0]?.[0];
};

/** Script before each painted frame, ms; frames before which nothing ran are left out. */
const perFrame = (events: readonly Traced[]): readonly number[] => {
  const page = paints(events);
  const mine = events.filter((one) => thread(one) === page && one.ph === 'X').sort((a, b) => a.ts - b.ts);
  const frames: number[] = [];
  let [spent, till] = [0, 0];
  for (const { name, ts, dur = 0 } of mine) {
    if (name === painted && spent > 0) {
      frames.push(spent / 1000);
      spent = 0;
    }
    if (!script.has(name) || ts < till) continue;
    spent += dur;
    till = ts + dur;
  }
  return frames;
};

/** Script of each frame of a page while something is done to it, ms. */
export const scriptOfFrames = async (
  browser: Browser,
  during: () => Promise<void>,
): Promise<readonly number[]> => {
  const cdp = await browser.newBrowserCDPSession();
  const events: Traced[] = [];
  cdp.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as Traced[])));
  const complete = new Promise((done) => cdp.once('Tracing.tracingComplete', done));
  await cdp.send('Tracing.start', { traceConfig: { includedCategories: ['devtools.timeline'] } });
  await during();
  await cdp.send('Tracing.end');
  await complete;
  await cdp.detach();
  return perFrame(events);
};
