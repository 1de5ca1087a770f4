import type { Tool } from '../present/offers/toolset';
import { iconMarkup } from './iconMarkup';

/** A tool drawn small: steel and wood, lying on the deck. Its word always stands beside it. */
export const ToolIcon = ({ tool }: { readonly tool: Tool }) => (
  <svg viewBox="0 0 56 44" aria-hidden="true" dangerouslySetInnerHTML={{ __html: iconMarkup[tool] ?? '' }} />
);

/** Check, open box, pointer: the marks of the crew list. */
export const RowMark = ({ state }: { readonly state: 'done' | 'now' | 'later' }) => (
  <svg viewBox="0 0 18 18" aria-hidden="true">
    {state === 'done' && (
      <path d="M3 9.5l4 4.5L15.5 3.5" fill="none" stroke="currentColor" stroke-width="2.2" />
    )}
    {state === 'now' && <path d="M3 3l12 6-12 6z" fill="var(--chalk)" />}
    {state === 'later' && (
      <rect x="2.5" y="2.5" width="13" height="13" fill="none" stroke="currentColor" stroke-width="1.6" />
    )}
  </svg>
);
