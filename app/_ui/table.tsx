import type { ReactNode } from 'react';

export type Column = { readonly head: ReactNode; readonly number?: boolean };

type Row = { readonly key: string; readonly cells: readonly ReactNode[]; readonly mine?: boolean };

/** A table as in an account book; nothing where it has no rows. It scrolls sideways in its own frame where the screen is narrow. */
export function Table({
  caption,
  columns,
  rows,
  foot,
}: {
  caption: string;
  columns: readonly Column[];
  rows: readonly Row[];
  foot?: readonly ReactNode[];
}) {
  // A heading over nothing says nothing: the page has its words for that.
  if (rows.length === 0 && !foot) return null;
  const cells = (content: readonly ReactNode[]) =>
    content.map((cell, at) => (
      // The order of columns never changes: their place is their key.
      <td key={at} className={columns[at]?.number ? 'num' : undefined}>
        {cell}
      </td>
    ));
  return (
    <div className="table-frame" role="region" aria-label={caption} tabIndex={0}>
      <table>
        <caption className="sr-only">{caption}</caption>
        <thead>
          <tr>
            {columns.map(({ head, number }, at) =>
              head === '' ? (
                <td key={at} />
              ) : (
                <th key={at} scope="col" className={number ? 'num' : undefined}>
                  {head}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key} className={row.mine ? 'mine' : undefined}>
              {cells(row.cells)}
            </tr>
          ))}
        </tbody>
        {foot ? (
          <tfoot>
            <tr>{cells(foot)}</tr>
          </tfoot>
        ) : null}
      </table>
    </div>
  );
}
