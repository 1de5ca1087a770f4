import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Action } from '../core/site/action';
import type { Attempt } from '../core/site/attempt';
import { seenOn } from '../present/words/seenAt';
import { spotName } from '../present/words/spotNames';
import type { Spot } from '../present/offers/offer';
import { wordsOf, type Desk } from './desk';
import { SpotWork } from './spotWork';
import type { Point } from './crowsFeet';
import type { Found } from './stageHost';

type Props = {
  readonly desk: Desk;
  readonly attempt: Attempt;
  readonly spot: Spot;
  readonly at: Found | undefined;
  readonly onAct: (action: Action) => void;
};

/** Acts with a length or the picture of a reading need the room of the sheet; those on the pile or among the crew have no place on the roof. */
export const canBeTagged = (spot: Spot | undefined): boolean =>
  spot !== undefined &&
  spot.reading === undefined &&
  spot.offers.every(({ picker }) => picker?.kind !== 'length') &&
  !/^(site|board\.)/.test(spot.member);

/** A member so far above the tag's edge, or beside it, is tied to its top. CSS pixels; ours. */
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
          <polyline class="casing" points={lie.line.map(({ x, y }) => `${x},${y}`).join(' ')} />
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

/** On the side where it hides the least. The line leaves the top edge for what is above, else the side: level first, then to the member. */
const lieOf = (tag: HTMLElement, at: Found | undefined, now: Lie['side']): Lie => {
  const over = tag.offsetParent;
  if (!at || !over) return { side: now, line: [] };
  const { offsetTop: top, offsetWidth: width, offsetHeight: height } = tag;
  const margin = now === 'left' ? tag.offsetLeft : over.clientWidth - tag.offsetLeft - width;
  const lefts = { left: margin, right: over.clientWidth - margin - width };
  const hides = (x: number): number => at.hides({ x, y: top, width, height });
  const side = hides(lefts.right) < hides(lefts.left) ? 'right' : 'left';
  const left = lefts[side];
  if (at.y <= top - clear && at.x > left - clear && at.x < left + width + clear) {
    const x = Math.min(left + width - 20, Math.max(left + 20, at.x));
    return { side, line: [{ x, y: top }, at] };
  }
  const [edge, out] = side === 'left' ? [left + width, 1] : [left, -1];
  const y = Math.min(top + height - 24, Math.max(top + 24, at.y + 10));
  return { side, line: [{ x: edge, y }, { x: edge + 14 * out, y }, at] };
};
