import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { RefObject } from 'preact';
import type { Attempt } from '../core/site/attempt';
import { nextMembers } from '../present/nextMembers';
import type { StagePort } from '../present/stagePort';
import { offersTeaching } from '../present/teaching';
import { CrowsFeet, mostMarks, type Point } from './crowsFeet';
import { wordsOf, type Aim, type Desk } from './desk';
import { isStill } from './settle';
import { tapped } from './pickSaid';
import { FocusMark, useStageKeys } from './stageKeys';
import { Teaching } from './teaching';
import { useSignal } from './useSignal';
import { useWorkedJoint } from './workedJoint';
import { ZoomKeys } from './zoomKeys';
import type { Working } from './working';

/** Where a member is on the drawing, and how much of the work a box laid over the drawing would hide. */
export type Found = Point & Pick<StagePort, 'hides'>;

type Props = {
  readonly desk: Desk;
  readonly attempt: Attempt;
  readonly working: Working;
  /** Told where the chosen member is on the drawing, or that nobody knows. */
  readonly found: (at: Found | undefined) => void;
  /** Nothing more lies over it than moves it. */
  readonly bare: boolean;
};

/** How long after a hand or the wheel is off the drawing stands still again, ms: the stage settles a wheel in 220. */
const settled = 320;

/** The drawing in its host: made once, and taken down with it. */
const useStage = (desk: Desk, host: RefObject<HTMLDivElement | null>): StagePort | undefined => {
  const [stage, setStage] = useState<StagePort>();
  useEffect(() => {
    let gone = false;
    let port: StagePort | undefined;
    if (host.current)
      void desk.drawings.stage(host.current).then((made) => {
        if (gone) return made.destroy();
        port = made;
        made.onPick((id) => tapped(desk, id));
        desk.aim.value = aimOf(host.current, made);
        setStage(made);
      });
    return () => {
      gone = true;
      desk.aim.value = undefined;
      port?.destroy();
    };
  }, []);
  return stage;
};

/** The stage in the page's own coordinates; nothing where something else lies over it. */
const aimOf = (host: HTMLElement | null, stage: StagePort): Aim => ({
  at: (x, y) => {
    const box = host?.getBoundingClientRect();
    const over = document.elementFromPoint(x, y);
    if (!host || !box || !over || !host.contains(over)) return undefined;
    return stage.pickAt(x - box.left, y - box.top);
  },
  lift: stage.lift,
  placeOf: (id) => {
    const box = host?.getBoundingClientRect();
    const at = stage.placeOf(id);
    return box && at && { x: at.x + box.left, y: at.y + box.top };
  },
});

/** The drawing. Its content stands as words beside it; here it is one named place that arrow keys go about in. */
export const StageHost = ({ desk, attempt, working, found, bare }: Props) => {
  const host = useRef<HTMLDivElement>(null);
  const stage = useStage(desk, host);
  const { theme, lang, motion } = useSignal(desk.settings);
  const view = useSignal(desk.view);
  const corner = useSignal(desk.corner);
  const loads = useSignal(desk.loads) && offersTeaching(attempt.mode);
  const selected = working.spot?.member;
  const worked = useWorkedJoint(attempt, view === 'joint' && !isStill(motion));
  const joint = worked ?? working.spot?.id;
  const next = useMemo(() => nextMembers(attempt), [attempt]);
  const [marks, setMarks] = useState<readonly Point[]>([]);
  const keys = useStageKeys({ desk, attempt, working, stage });
  const find = (): void => {
    const at = selected === undefined ? undefined : stage?.placeOf(selected);
    found(stage && at ? { ...at, hides: stage.hides } : undefined);
    setMarks(next.flatMap((id) => stage?.placeOf(id) ?? []).slice(0, mostMarks));
  };
  const lose = (): void => {
    found(undefined);
    setMarks([]);
  };
  useEffect(() => {
    let late = false;
    lose();
    const shown = stage?.show({
      attempt,
      view,
      corner,
      selected,
      theme,
      lang,
      still: isStill(motion),
      loads,
      ...(joint?.includes(':') ? { joint } : {}),
    });
    void shown?.then(() => late || find());
    return () => {
      late = true;
    };
  }, [stage, attempt, view, corner, selected, joint, theme, lang, motion, loads]);
  const moved = (): void => {
    lose();
    find();
  };
  useEffect(() => keepFinding(host.current, { find, lose }), [stage, selected, next, view, corner]);
  return (
    <div class="stage">
      <div
        ref={host}
        {...keys.props}
        aria-label={`${attempt.level.title[lang]}. ${wordsOf(desk).ui.site.corner[corner] ?? ''}`}
      />
      <CrowsFeet marks={marks} />
      <FocusMark desk={desk} attempt={attempt} stage={stage} note={keys.note} drawn={marks} />
      {!bare && <Teaching desk={desk} />}
      <ZoomKeys desk={desk} stage={stage} moved={moved} />
    </div>
  );
};

/** While the drawing is being moved nobody knows where a member is; once it stands still it is looked for again. */
const keepFinding = (
  host: HTMLElement | null,
  { find, lose }: { readonly find: () => void; readonly lose: () => void },
): (() => void) | undefined => {
  if (!host) return undefined;
  let rest: ReturnType<typeof setTimeout> | undefined;
  const later = (): void => {
    clearTimeout(rest);
    rest = setTimeout(find, settled);
  };
  const onMove = (event: PointerEvent): void => {
    if (event.buttons > 0) lose();
  };
  const onWheel = (): void => {
    lose();
    later();
  };
  const watch = new ResizeObserver(later);
  watch.observe(host);
  host.addEventListener('pointermove', onMove);
  host.addEventListener('pointerup', later);
  host.addEventListener('wheel', onWheel, { passive: true });
  return () => {
    clearTimeout(rest);
    watch.disconnect();
    host.removeEventListener('pointermove', onMove);
    host.removeEventListener('pointerup', later);
    host.removeEventListener('wheel', onWheel);
  };
};
