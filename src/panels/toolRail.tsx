import { useEffect, useRef } from 'preact/hooks';
import type { Spot } from '../present/offers/offer';
import { toolset } from '../present/offers/toolset';
import { wordsOf, type Desk } from './desk';
import { CarriedTool, useCarrying } from './dragTool';
import { ToolIcon } from './toolIcons';
import { useSignal } from './useSignal';

type Props = {
  readonly desk: Desk;
  /** A tool was carried to a place of its own and let go there. */
  readonly onDrop: (spot: Spot) => void;
};

/** The tools lying on the deck: one is in hand. Touched, carried to its place, by arrow keys or by letter. */
export const ToolRail = ({ desk, onDrop }: Props) => {
  const carrying = useCarrying(desk, onDrop);
  const tool = useSignal(desk.tool);
  const { keys } = useSignal(desk.settings);
  const words = wordsOf(desk);
  const host = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const show = (): void =>
      host.current
        ?.querySelector(`[data-tool="${tool}"]`)
        ?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    // At once, and again when the rail becomes a strip or the other way round.
    const watch = new ResizeObserver(show);
    if (host.current) watch.observe(host.current);
    show();
    return () => watch.disconnect();
  }, [tool]);
  const take = (index: number): void => {
    const next = toolset[(index + toolset.length) % toolset.length];
    if (!next) return;
    desk.tool.value = next.tool;
    desk.spot.value = undefined;
    document.querySelector<HTMLElement>(`[data-tool="${next.tool}"]`)?.focus();
  };
  const onKey = (event: KeyboardEvent): void => {
    const at = toolset.findIndex((row) => row.tool === tool);
    const by = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    take(at + by);
  };
  return (
    <div class="rail" role="radiogroup" ref={host} aria-label={words.ui.site.tools} onKeyDown={onKey}>
      {toolset.map((row, i) => (
        <button
          type="button"
          role="radio"
          key={row.tool}
          data-tool={row.tool}
          class={`tool ${i > 0 && toolset[i - 1]?.group !== row.group ? 'first' : ''}`}
          aria-checked={tool === row.tool}
          tabIndex={tool === row.tool ? 0 : -1}
          {...(keys ? { 'aria-keyshortcuts': row.key } : {})}
          onClick={() => take(i)}
          onPointerDown={(event) => carrying.onPointerDown(event, row.tool)}
        >
          <ToolIcon tool={row.tool} />
          <span>{words.trade.tool[row.tool]}</span>
        </button>
      ))}
      <CarriedTool carrying={carrying} />
    </div>
  );
};
