import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Mark } from '../present/afterWork';
import { tellFinding } from '../present/findingWords';
import type { Frame, Shot } from '../present/strip';
import type { Attempt } from '../core/site/attempt';
import { wordsOf, type Desk } from './desk';
import { Dot } from './dot';
import { sizeOf } from './standing';
import { later } from './later';
import { useSignal } from './useSignal';

/** Between two shots the range counts so far: enough that every stop has a number of its own. */
const fine = 1000;

type StripProps = {
  readonly desk: Desk;
  readonly shots: readonly Shot[];
  readonly frames: readonly Frame[];
  readonly marks: readonly Mark[];
  /** Which frame is looked at. */
  readonly here: number;
  readonly chosen: Mark | undefined;
  readonly goTo: (frame: number) => void;
  readonly choose: (mark: Mark) => void;
  readonly stoodAt: (frame: Frame) => Attempt;
  /** A frame in words: its minutes, what stands, what was done. */
  readonly says: (frame: Frame) => string;
  /** The page is being printed. */
  readonly paper: boolean;
};

/** The roof as it grew, to slide along: small pictures on a ruled line, a plumb bob on it, and below it what is talked about. */
export const Strip = (props: StripProps) => {
  const { desk, shots, frames, here, goTo, says } = props;
  const words = wordsOf(desk);
  const { strip, stands } = words.ui.debrief;
  const frame = frames[here];
  const value = Math.round((frame?.at ?? 0) * fine);
  return (
    <div class="strip" style={`--shots:${shots.length}`}>
      <div class="shots" aria-hidden="true">
        {shots.map((shot) => {
          const i = frames.findIndex(({ steps }) => steps === shot.steps);
          return (
            <button
              type="button"
              tabIndex={-1}
              class={`shot ${i === here ? 'on' : ''}`}
              key={shot.steps}
              onClick={() => goTo(i)}
            >
              <ShotPicture {...props} frame={frames[i]} />
              <span class="stamp tn">{stands[shot.stands]}</span>
            </button>
          );
        })}
      </div>
      <input
        type="range"
        id="slide"
        min={0}
        max={(shots.length - 1) * fine}
        value={value}
        aria-label={strip}
        aria-valuetext={frame && says(frame)}
        onInput={({ currentTarget }) => {
          const next = nearest(frames, { asked: Number(currentTarget.value), from: here });
          goTo(next);
          // The handle stops where the roof does.
          currentTarget.value = String(Math.round((frames[next]?.at ?? 0) * fine));
        }}
      />
      <Pins {...props} />
    </div>
  );
};

/** The stop nearest to where the handle was put. One step of a key always goes on to the next stop. */
const nearest = (
  frames: readonly Frame[],
  { asked, from }: { readonly asked: number; readonly from: number },
): number => {
  const was = Math.round((frames[from]?.at ?? 0) * fine);
  if (Math.abs(asked - was) === 1)
    return Math.max(0, Math.min(frames.length - 1, from + Math.sign(asked - was)));
  const away = (i: number): number => Math.abs((frames[i]?.at ?? 0) * fine - asked);
  return frames.reduce((best, _, i) => (away(i) < away(best) ? i : best), 0);
};

/** Drawn one after the other when there is nothing else to do, so that the page stands at once. */
const ShotPicture = ({
  desk,
  frame,
  stoodAt,
  paper,
}: Pick<StripProps, 'desk' | 'stoodAt' | 'paper'> & { readonly frame: Frame | undefined }) => {
  const host = useRef<HTMLCanvasElement>(null);
  const { theme, lang } = useSignal(desk.settings);
  useLayoutEffect(() => {
    const canvas = host.current;
    if (!canvas || !frame || (!paper && canvas.clientWidth === 0)) return;
    const draw = (): void => {
      const { width, height, ratio } = paper ? onPaper : sizeOf(canvas);
      canvas.width = Math.max(1, Math.round(width * ratio));
      canvas.height = Math.max(1, Math.round(height * ratio));
      const light = paper ? 'day' : theme;
      desk.drawings.thumb(canvas, { attempt: stoodAt(frame), corner: 'street', theme: light, lang });
    };
    return paper ? draw() : later(draw);
  }, [frame?.steps, theme, paper]);
  return <canvas ref={host} />;
};

/** A small picture on paper, CSS pixels: what is on screen may have no room for it. */
const onPaper = { width: 150, height: 94, ratio: 2 } as const;

/** Where on the line each told moment lies, as a share of the line's width. */
const shareOf = ({ frames, shots }: Pick<StripProps, 'frames' | 'shots'>, mark: Mark): number => {
  const at = frames.find(({ steps }) => steps === mark.shows)?.at ?? 0;
  return (at + 0.5) / shots.length;
};

/** Numbers and words under the line; those that lie close stand one below the other. */
const Pins = (props: StripProps) => {
  const { desk, marks, chosen, choose } = props;
  const words = wordsOf(desk);
  const { units } = useSignal(desk.settings);
  const host = useRef<HTMLDivElement>(null);
  const [lanes, setLanes] = useState<readonly number[]>([]);
  useLayoutEffect(() => {
    const lay = (): void => {
      const next = lanesOf(host.current);
      setLanes((old) => (old.join() === next.join() ? old : next));
    };
    lay();
    const watch = new ResizeObserver(lay);
    if (host.current) watch.observe(host.current);
    return () => watch.disconnect();
  }, [marks, words]);
  return (
    <div class="pins" ref={host} style={`--lanes:${Math.max(0, ...lanes) + 1}`}>
      {marks.map((mark, i) => (
        <i
          class={`stem ${mark.told.finding.kind === 'good' ? 'good' : ''}`}
          key={`stem ${mark.label}`}
          style={`--at:${shareOf(props, mark)};--lane:${lanes[i] ?? 0}`}
        />
      ))}
      {marks.map((mark, i) => {
        const { title } = tellFinding(words, mark.told.finding, units);
        const good = mark.told.finding.kind === 'good';
        return (
          <button
            type="button"
            class={`pin ${good ? 'good' : ''}`}
            key={mark.label}
            data-mark={mark.label}
            data-share={shareOf(props, mark)}
            style={`--at:${shareOf(props, mark)};--lane:${lanes[i] ?? 0}`}
            aria-pressed={mark === chosen}
            title={title}
            onClick={() => choose(mark)}
          >
            <Dot label={mark.label} />
            <span class="kind">{words.ui.debrief.kinds[mark.told.finding.kind]}</span>
            <span class="hidden">: {title}</span>
          </button>
        );
      })}
    </div>
  );
};

/** Clear space between two pins in one lane, CSS pixels. */
const apart = 8;

const lanesOf = (host: HTMLDivElement | null): readonly number[] => {
  const pins = [...(host?.querySelectorAll<HTMLElement>('.pin') ?? [])];
  const width = host?.clientWidth ?? 0;
  const spans = pins.map((pin) => {
    const share = Number(pin.dataset['share']);
    const from = share * (width - pin.offsetWidth);
    return { from, to: from + pin.offsetWidth };
  });
  const lanes: number[] = [];
  spans.forEach((span, i) => {
    let lane = 0;
    const taken = (at: number): boolean =>
      spans.some(
        (other, k) =>
          k < i && lanes[k] === at && other.from < span.to + apart && span.from < other.to + apart,
      );
    while (taken(lane)) lane++;
    lanes.push(lane);
  });
  return lanes;
};
