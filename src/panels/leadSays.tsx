import { useMemo } from 'preact/hooks';
import { promptsOf } from '../core/order/judged';
import type { Attempt } from '../core/site/attempt';
import { wordsOf, type Desk } from './desk';

/** The last thing the lead said that still stands as it was: which rule, and why it holds. */
export const LeadSays = ({ desk, attempt }: { readonly desk: Desk; readonly attempt: Attempt }) => {
  const words = wordsOf(desk);
  const last = useMemo(() => promptsOf(attempt).at(-1), [attempt]);
  if (!last) return null;
  const rule = words.rules[last.rule];
  return (
    <div class="leadSays">
      <h3>{words.ui.site.leadSays}</h3>
      <p>
        <b>{words.ui.caption.early(rule?.name ?? last.rule)}</b> {rule?.why}
      </p>
    </div>
  );
};
