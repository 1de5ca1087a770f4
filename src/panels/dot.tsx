import { goodLabel } from '../present/afterWork';

/** What a told moment is found again by: its number, or a check mark for what was done well. Words stand beside it. */
export const Dot = ({ label }: { readonly label: string }) => (
  <span class="dot tn">
    {label === goodLabel ? (
      <svg viewBox="0 0 20 20" aria-hidden="true">
        <path d="M4.5 10.5l4 4.2L16 5.5" fill="none" stroke="currentColor" stroke-width="2.6" />
      </svg>
    ) : (
      label
    )}
  </span>
);
