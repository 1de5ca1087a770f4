import type { Table } from './reportRows';

type Act = { readonly text: string; readonly id: string; readonly go: () => void };

type Props = {
  readonly table: Table;
  /** What can be done with a row. */
  readonly act?: (row: number) => Act | undefined;
};

/** A table whose rows fall into lines where the page is narrow. */
export const TableOf = ({ table: { head, rows }, act }: Props) => (
  <table class="rowsOf">
    <thead>
      <tr>
        {head.map((name) => (
          <th scope="col" key={name}>
            {name}
          </th>
        ))}
        {act && <td class="offPaper" />}
      </tr>
    </thead>
    <tbody>
      {rows.map((row, i) => (
        <tr key={i}>
          {row.map((cell, at) =>
            at === 0 ? (
              <th scope="row" key={at}>
                {cell}
              </th>
            ) : (
              <td
                key={at}
                data-name={head[at]}
                class={cell === '' ? 'blank' : /^[\d–−]/.test(cell) ? 'tn' : ''}
              >
                {cell}
              </td>
            ),
          )}
          {act && <ActCell act={act(i)} who={row[0] ?? ''} />}
        </tr>
      ))}
    </tbody>
  </table>
);

const ActCell = ({ act, who }: { readonly act: Act | undefined; readonly who: string }) => (
  <td class="offPaper actOf">
    {act && (
      <button type="button" class="btn small" id={act.id} aria-label={`${act.text}: ${who}`} onClick={act.go}>
        {act.text}
      </button>
    )}
  </td>
);
