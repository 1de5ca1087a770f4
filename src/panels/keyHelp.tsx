import { wordsOf, type Desk } from './desk';
import { useSignal } from './useSignal';

/** What describes the drawing to whoever comes to it by keyboard. */
export const drawingKeys = 'drawing-keys';

/** The keys, for whoever listens; the last thing on the site. */
export const KeyHelp = ({ desk }: { readonly desk: Desk }) => {
  const { keys } = useSignal(desk.settings);
  const { help } = wordsOf(desk).spoken;
  return (
    <section class="hidden" aria-label={help.title}>
      <p id={drawingKeys}>{help.keys}</p>
      <p>{keys ? help.letters : help.noLetters}</p>
    </section>
  );
};
