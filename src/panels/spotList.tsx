import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Attempt } from '../core/site/attempt';
import { seenAt } from '../present/words/seenAt';
import { spotName } from '../present/words/spotNames';
import { FiguredText } from './figuredText';
import { wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';
import type { Working } from './working';

type Props = { readonly desk: Desk; readonly attempt: Attempt; readonly working: Working };

/** Every place the tool can be put to, by name and in walking order: the drawing told in words, and gone through by arrow keys. */
export const SpotList = ({ desk, attempt, working }: Props) => {
  const { spots, at } = working;
  const words = wordsOf(desk);
  const { units } = useSignal(desk.settings);
  const host = useRef<HTMLDivElement>(null);
  const [open, setOpen] = useState(false);
  useEffect(() => {
    const row = host.current?.querySelector<HTMLElement>('[aria-selected="true"]');
    if (row && host.current)
      host.current.scrollTop =
        row.offsetTop - host.current.offsetTop - host.current.clientHeight / 2 + row.clientHeight / 2;
  }, [at, spots.length]);
  const choose = (id: string): void => {
    desk.spot.value = id;
    setOpen(false);
  };
  const marked = useMark(desk, host, spots[at]?.member);
  const onKey = (event: KeyboardEvent): void => {
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: spots.length - 1 }[event.key];
    const next = to === undefined ? undefined : spots[Math.min(spots.length - 1, Math.max(0, to))];
    if (!next) return;
    event.preventDefault();
    choose(next.id);
  };
  return (
    <>
      <Stepper desk={desk} working={working} open={open} setOpen={setOpen} />
      <div
        class={`spots ${open ? 'open' : ''}`}
        role="listbox"
        tabIndex={0}
        ref={host}
        aria-label={words.ui.site.spots}
        aria-activedescendant={`spot-${at}`}
        onKeyDown={onKey}
        {...marked}
      >
        {spots.map((spot, i) => (
          <div
            role="option"
            id={`spot-${i}`}
            key={spot.id}
            data-spot={spot.id}
            aria-selected={i === at}
            onClick={() => choose(spot.id)}
          >
            <span>{spotName(words, spot)}</span>
            <span class="state">
              <FiguredText text={seenAt(words, attempt, { spot, units })} />
            </span>
          </div>
        ))}
      </div>
    </>
  );
};

/** While the list has the keyboard, the drawing marks the member it is at. */
const useMark = (desk: Desk, host: RefObject<HTMLElement | null>, member: string | undefined) => {
  const mark = (): void => {
    desk.at.value = member === undefined ? undefined : { id: member, on: 'list' };
  };
  useEffect(() => {
    if (document.activeElement === host.current) mark();
  }, [member]);
  return { onFocus: mark, onBlur: () => (desk.at.value = undefined) };
};

type StepperProps = Pick<Props, 'desk' | 'working'> & {
  readonly open: boolean;
  readonly setOpen: (open: boolean) => void;
};

/** Where there is little room: one place, a step to its neighbors, and the whole list at a touch. */
const Stepper = ({ desk, working: { spots, at }, open, setOpen }: StepperProps) => {
  const words = wordsOf(desk);
  const here = spots[at];
  const step = (by: number) => (): void => {
    desk.spot.value = spots[(at + by + spots.length) % spots.length]?.id;
    setOpen(false);
  };
  return (
    <div class="stepper">
      <button type="button" class="btn" aria-label={words.ui.site.before} onClick={step(-1)}>
        ‹
      </button>
      <button type="button" class="btn here" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="name">{here && spotName(words, here)}</span>{' '}
        <span class="state tn">
          {at + 1}/{spots.length}
        </span>
      </button>
      <button type="button" class="btn" aria-label={words.ui.site.after} onClick={step(1)}>
        ›
      </button>
    </div>
  );
};
