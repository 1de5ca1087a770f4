import type { Caption } from '../present/caption';
import type { Messages } from '../present/words/messages';
import { FiguredText } from './figuredText';

/** What was just done or said, and what is heard. Consequences wait their turn; a stop is told at once. */
export const CaptionBar = ({
  words,
  caption,
  turn,
}: {
  readonly words: Messages;
  readonly caption: Caption;
  /** Counts what was told: the same words again are told again. */
  readonly turn: number;
}) => (
  <div class={`caption ${caption.tone === 'stop' ? 'stop' : ''}`}>
    <p aria-live="polite" aria-atomic="true">
      {caption.tone !== 'stop' && (
        <span key={turn}>
          <b>{caption.who}</b> <FiguredText text={caption.text} />
          <HeardText heard={caption.heard} />
        </span>
      )}
    </p>
    <p role="alert" aria-live="assertive">
      {caption.tone === 'stop' && (
        <span key={turn}>
          <b>{words.ui.caption.lead}</b> {caption.text}
          <HeardText heard={caption.heard} />
        </span>
      )}
    </p>
  </div>
);

const HeardText = ({ heard }: { readonly heard: string | undefined }) =>
  heard === undefined ? null : (
    <>
      {' '}
      <span class="heard">[{heard}]</span>
    </>
  );
