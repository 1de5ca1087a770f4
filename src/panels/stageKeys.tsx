import { useEffect, useState } from 'preact/hooks';
import type { Attempt } from '../core/site/attempt';
import { observe } from '../core/site/observe';
import { roofGroups, thingSaid } from '../present/roofTold';
import type { StagePort } from '../present/stagePort';
import { memberName } from '../present/words/names';
import type { Point } from './crowsFeet';
import { wordsOf, type Desk } from './desk';
import { drawingKeys } from './keyHelp';
import { pickSaid, toTheWork } from './pickSaid';
import { useSignal } from './useSignal';
import type { Working } from './working';

type On = {
  readonly desk: Desk;
  readonly attempt: Attempt;
  readonly working: Working;
  readonly stage: StagePort | undefined;
};

/** Columns along the ridge, each from the top down: what stands, and the open places the drawing shows. */
const columnsOf = ({ attempt, stage }: On): readonly (readonly string[])[] => {
  const seen = observe(attempt);
  const there = (id: string): boolean =>
    id in seen.members || (id === 'ridge' && seen.ridgeOn !== undefined) || stage?.placeOf(id) !== undefined;
  return roofGroups(seen)
    .map(({ ids }) => ids.filter(there))
    .filter((ids) => ids.length > 0);
};

/** Seen from the yard the ridge runs the other way: right stays right. */
const runsLeft = ({ desk, stage }: On, columns: readonly (readonly string[])[]): boolean => {
  const xs = columns.slice(1).flatMap((ids) => stage?.placeOf(ids[0] ?? '')?.x ?? []);
  const [first = 0, last = 0] = [xs[0], xs.at(-1)];
  return xs.length > 1 ? last < first : desk.corner.value === 'yard';
};

/** What a member is among its kind: the same at another station is its neighbor. */
const kindOf = (id: string): string => id.replace(/\d+/, '');

/** The member an arrow leads to from here; itself at the edge. */
export const arrowTo = (
  columns: readonly (readonly string[])[],
  here: string,
  { along = 0, down = 0 }: { readonly along?: number; readonly down?: number },
): string => {
  const at = columns.findIndex((ids) => ids.includes(here));
  const column = columns[at];
  if (!column) return columns[0]?.[0] ?? here;
  if (down !== 0) return column[column.indexOf(here) + down] ?? here;
  const next = columns[at + along];
  if (!next) return here;
  return next.find((id) => kindOf(id) === kindOf(here)) ?? next[0] ?? here;
};

/** The drawing as something the keyboard can stand on: arrows go from member to member, Enter picks, Escape leaves. */
export const useStageKeys = (on: On) => {
  const { desk, attempt, working } = on;
  const words = wordsOf(desk);
  const [note, setNote] = useState('');
  const begin = (): string => {
    const columns = columnsOf(on);
    const chosen = working.spot?.member ?? '';
    return columns.some((ids) => ids.includes(chosen)) ? chosen : (columns.flat()[0] ?? 'ridge');
  };
  const go = (id: string): void => {
    setNote('');
    desk.at.value = { id, on: 'drawing' };
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const here = desk.at.value?.on === 'drawing' ? desk.at.value.id : undefined;
    const step = arrows[event.key];
    if (step) {
      const columns = columnsOf(on);
      const along = (step.along ?? 0) * (runsLeft(on, columns) ? -1 : 1);
      go(here === undefined ? begin() : arrowTo(columns, here, { ...step, along }));
    } else if (event.key === 'Enter' && here !== undefined) setNote(pickSaid(desk, attempt, here) ?? '');
    else if (event.key === 'Escape') toTheWork();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const { help } = words.spoken;
  return {
    note,
    props: {
      class: 'drawing',
      role: 'application',
      tabIndex: 0,
      'aria-roledescription': help.drawing,
      'aria-describedby': drawingKeys,
      'aria-keyshortcuts': 'ArrowLeft ArrowRight ArrowUp ArrowDown Enter Escape',
      onKeyDown,
      onFocus: (event: FocusEvent) => {
        if ((event.currentTarget as HTMLElement).matches(':focus-visible')) go(begin());
      },
      onBlur: () => (desk.at.value = undefined),
    } as const,
  };
};

const arrows: Readonly<Record<string, { readonly along?: 1 | -1; readonly down?: 1 | -1 }>> = {
  ArrowLeft: { along: -1 },
  ArrowRight: { along: 1 },
  ArrowUp: { down: -1 },
  ArrowDown: { down: 1 },
};

type MarkProps = Omit<On, 'working'> & {
  readonly note: string;
  /** A new one each time the drawing has come to rest. */
  readonly drawn: unknown;
};

/** What lies less far from the left would be under the roof in words, CSS pixels: its width and the ring's. */
const besideWords = 336;

const lieAt = ({ x, y }: Point): { readonly left: string; readonly top: string } => ({
  left: `${x}px`,
  top: `${y}px`,
});

/** A chalked ring at the member the keyboard is on, in the drawing or in a list; on the drawing it is named too. */
export const FocusMark = ({ desk, attempt, stage, note, drawn }: MarkProps) => {
  const words = wordsOf(desk);
  useSignal(desk.settings);
  const at = useSignal(desk.at);
  const [place, setPlace] = useState<Point>();
  useEffect(() => setPlace(at && stage?.placeOf(at.id)), [at?.id, stage, drawn]);
  const tool = useSignal(desk.tool);
  // A name that was asked for goes when something is done, or another tool is taken up.
  useEffect(() => {
    if (desk.at.value?.on === 'tap') desk.at.value = undefined;
  }, [attempt, tool]);
  const told =
    at && at.on !== 'list'
      ? `${memberName(words, at.id)}: ${thingSaid(words, observe(attempt), at.id)}.`
      : '';
  return (
    <>
      {at && place && (
        <svg
          class="focusMark"
          aria-hidden="true"
          data-at={at.id}
          data-side={place.x < besideWords ? 'left' : 'right'}
        >
          <g transform={`translate(${place.x} ${place.y})`}>
            <circle class="casing" r="17" />
            <circle r="17" />
          </g>
        </svg>
      )}
      {at && place && at.on !== 'list' && (
        <p
          class={`nameTag paper ${place.x < innerWidth / 2 ? 'left' : 'right'}`}
          aria-hidden="true"
          style={lieAt(place)}
        >
          {memberName(words, at.id)}
        </p>
      )}
      <p class="hidden" role="status">
        {[told, note].filter(Boolean).join(' ')}
      </p>
    </>
  );
};
