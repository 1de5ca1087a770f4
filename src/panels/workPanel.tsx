import { isOver } from '../core/site/state';
import { useEffect, useRef } from 'preact/hooks';
import type { Attempt } from '../core/site/attempt';
import type { Action } from '../core/site/action';
import { pick } from '../present/words/spotNames';
import { wordsOf, type Desk } from './desk';
import { SpotList } from './spotList';
import { SpotWork } from './spotWork';
import type { Working } from './working';

type Props = {
  readonly desk: Desk;
  readonly attempt: Attempt;
  readonly working: Working;
  /** The act stands on the tag at its member: here is only the list. */
  readonly tagged: boolean;
  readonly onAct: (action: Action) => void;
  readonly undo: () => void;
};

/** The tool in hand: where it can be put and, where no tag carries it, what it can do there. */
export const WorkPanel = ({ desk, attempt, working, tagged, onAct, undo }: Props) => {
  const words = wordsOf(desk);
  const { tool, spots, spot } = working;
  if (isOver(attempt.site)) return <Over desk={desk} down={attempt.site.down} />;
  return (
    <section class="work paper" aria-labelledby="work-title">
      <h2 id="work-title">{words.trade.tool[tool]}</h2>
      {spots.length === 0 ? (
        <p class="dim">{words.ui.site.none}</p>
      ) : (
        <SpotList desk={desk} attempt={attempt} working={working} />
      )}
      {spot && !tagged && (
        <SpotWork
          key={`${tool} ${spot.id}`}
          desk={desk}
          attempt={attempt}
          spot={spot}
          onAct={onAct}
          {...(attempt.mode === 'check-off' ? {} : { undo })}
        />
      )}
    </section>
  );
};

/** Nothing is left to do here. What lies on the drawing can be looked at first. */
const Over = ({ desk, down }: { readonly desk: Desk; readonly down: string | undefined }) => {
  const { site } = wordsOf(desk).ui;
  const way = useRef<HTMLButtonElement>(null);
  useEffect(() => way.current?.focus({ preventScroll: true }), []);
  return (
    <section class="work paper" aria-labelledby="work-title">
      <h2 id="work-title">{down === undefined ? site.handed : site.down}</h2>
      {down !== undefined && <p>{pick(site.fell, down)}</p>}
      <div class="go">
        <button
          type="button"
          class="btn"
          id="toDebrief"
          ref={way}
          onClick={() => (desk.screen.value = 'debrief')}
        >
          {site.debrief}
        </button>
      </div>
    </section>
  );
};
