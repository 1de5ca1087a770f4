export type Point = { readonly x: number; readonly y: number };

/** Places marked at a time. */
export const mostMarks = 3;

/** A crow's foot in chalk at each place the list goes on at: the mark a carpenter leaves for whoever comes next. */
export const CrowsFeet = ({ marks }: { readonly marks: readonly Point[] }) => (
  <svg class="crowsFeet" aria-hidden="true">
    {marks.map(({ x, y }) => (
      <g key={`${x} ${y}`} transform={`translate(${x} ${y})`}>
        <path class="casing" d={crowsFoot} />
        <path d={crowsFoot} />
      </g>
    ))}
  </svg>
);

/** Its point on the place, opening upward. CSS pixels. */
const crowsFoot = 'M-9 -22L0 -2L9 -22M0 -2V-18';
