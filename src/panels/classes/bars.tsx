/** Amounts under names, the longest bar the most. */
type Props = {
  readonly title: string;
  readonly rows: readonly (readonly [name: string, count: number])[];
  /** What is counted, and how many there are in all. */
  readonly head: string;
  readonly all: number;
  readonly none: string;
};

/** A table that is read aloud as such; the bars beside its figures are drawn lines that print. */
export const Bars = ({ title, rows, head, all, none }: Props) => (
  <section class="paper sheetOf bars">
    <h2>{title}</h2>
    {rows.length === 0 ? (
      <p>{none}</p>
    ) : (
      <table>
        <thead class="hidden">
          <tr>
            <th scope="col">{title}</th>
            <th scope="col">{head}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, count]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>
                <span class="tn">{count}</span>
                <Bar share={count / Math.max(1, all)} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    )}
  </section>
);

const Bar = ({ share }: { readonly share: number }) => (
  <svg viewBox="0 0 100 14" preserveAspectRatio="none" aria-hidden="true">
    <path d="M0 13H100" stroke="var(--rule)" vector-effect="non-scaling-stroke" />
    <path d={`M0 2H${share * 100}V13H0z`} fill="var(--chalk)" />
  </svg>
);
