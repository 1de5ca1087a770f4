import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Action } from '../core/site/action';
import type { Attempt } from '../core/site/attempt';
import { seenOn } from '../present/words/seenAt';
import { spotName } from '../present/words/spotNames';
import type { Spot } from '../present/work/offer';
import { wordsOf, type Desk } from './desk';
import { SpotWork } from './spotWork';
import type { Point } from './stageHost';

type Props = {
  readonly desk: Desk;
  readonly attempt: Attempt;
  readonly spot: Spot;
  readonly at: Point | undefined;
  readonly onAct: (action: Action) => void;
};

/** Acts with a picture of a reading, on a board of the pile or among the crew stay on the sheet: they need its room, or have no place on the roof. */
export const canBeTagged = (spot: Spot | undefined): boolean =>
  spot !== undefined && spot.reading === undefined && !/^(site|board\.)/.test(spot.member);

/** Clear of the member by so much, CSS pixels; ours. */
const clear = 36;

type Lie = { readonly side: 'left' | 'right'; readonly line: readonly Point[] };

/** The tag at the chosen member: its name, what is seen there, and the act. It lies where it does not cover the member. */
export const MemberTag = ({ desk, attempt, spot, at, onAct }: Props) => {
  const words = wordsOf(desk);
  const host = useRef<HTMLElement>(null);
  const [lie, setLie] = useState<Lie>({ side: 'left', line: [] });
  useLayoutEffect(() => {
    if (host.current) setLie(lieOf(host.current, at, lie.side));
  }, [at?.x, at?.y, spot.id]);
  const seen = seenOn(words, attempt, spot);
  return (
    <div class={`tagged ${lie.side}`}>
      {lie.line.length > 0 && (
        <svg aria-hidden="true">
          <polyline points={lie.line.map(({ x, y }) => `${x},${y}`).join(' ')} />
          <circle cx={lie.line[lie.line.length - 1]?.x} cy={lie.line[lie.line.length - 1]?.y} r="3.2" />
        </svg>
      )}
      <section class="tag paper" ref={host} aria-labelledby="tag-title">
        <h2 id="tag-title">{spotName(words, spot)}</h2>
        {seen !== '' && <p class="dim">{seen}</p>}
        <SpotWork key={spot.id} desk={desk} attempt={attempt} spot={spot} onAct={onAct} />
      </section>
    </div>
  );
};

/** Left, unless the member is there; the line leaves the tag's edge level and turns to the member. */
const lieOf = (tag: HTMLElement, at: Point | undefined, now: Lie['side']): Lie => {
  const over = tag.offsetParent;
  if (!at || !over) return { side: now, line: [] };
  const { offsetTop: top, offsetWidth: width, offsetHeight: height } = tag;
  const margin = now === 'left' ? tag.offsetLeft : over.clientWidth - tag.offsetLeft - width;
  const inWay = at.x < margin + width + clear && at.y > top - clear;
  const side = inWay ? 'right' : 'left';
  const edge = inWay ? over.clientWidth - margin - width : margin + width;
  const out = inWay ? -1 : 1;
  const y = Math.min(top + height - 24, Math.max(top + 24, at.y + 10));
  return { side, line: [{ x: edge, y }, { x: edge + 14 * out, y }, at] };
};
