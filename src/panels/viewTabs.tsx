import type { StageCorner, StageView } from '../present/stagePort';
import { wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';

const corners: readonly StageCorner[] = ['street', 'B', 'yard', 'A'];
const views: readonly StageView[] = ['overview', 'sheet', 'section', 'side', 'joint'];

/** The views by name, and a walk round the building. No joint is as it was once the frame is down. */
export const ViewTabs = ({ desk, down }: { readonly desk: Desk; readonly down: boolean }) => {
  const words = wordsOf(desk);
  useSignal(desk.settings);
  const chosen = useSignal(desk.view);
  const view = down && chosen === 'joint' ? 'overview' : chosen;
  const corner = useSignal(desk.corner);
  const turn = (): void => {
    desk.view.value = 'overview';
    desk.corner.value = corners[(corners.indexOf(corner) + 1) % corners.length] ?? 'street';
  };
  const names: Readonly<Partial<Record<StageView, string>>> = {
    overview: words.ui.site.overview,
    sheet: words.views.sheet,
    section: words.ui.site.section,
    side: words.ui.site.side,
    joint: words.ui.site.joint,
  };
  return (
    <div class="views">
      <div role="tablist" aria-label={words.ui.site.overview}>
        {(down ? views.filter((name) => name !== 'joint') : views).map((name) => (
          <button
            type="button"
            role="tab"
            class="tab"
            key={name}
            data-view={name}
            aria-selected={view === name}
            onClick={() => (desk.view.value = name)}
          >
            {names[name]}
          </button>
        ))}
      </div>
      {view !== 'sheet' && (
        <button
          type="button"
          class="btn small turn"
          onClick={turn}
          aria-label={`${words.ui.site.turn}: ${words.ui.site.corner[corner]}`}
        >
          <span>{words.ui.site.corner[corner]}</span>
          <TurnMark />
        </button>
      )}
    </div>
  );
};

/** Walk round: a quarter turn to the next corner. */
const TurnMark = () => (
  <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
    <path d="M13 8a5 5 0 1 1-2-4M11 1v3.500H7.500" fill="none" stroke="currentColor" stroke-width="1.800" />
  </svg>
);
