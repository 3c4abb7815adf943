import type { ReactNode } from 'react';

type Props<Bed> = {
  readonly caption: string;
  readonly beds: readonly Bed[];
  readonly nameOf: (bed: Bed) => ReactNode;
  /** Columns in the order shown. */
  readonly seasons: readonly number[];
  readonly seasonWords?: (season: number) => ReactNode;
  /** What stands in a cell, and whether it is marked as breaking a rule. */
  readonly cell: (bed: Bed, season: number) => { readonly content: ReactNode; readonly broken?: boolean };
};

/** Beds down, seasons across. It scrolls sideways in its own frame where the screen is narrow. */
export function BedGrid<Bed extends { readonly id: string }>({
  caption,
  beds,
  nameOf,
  seasons,
  seasonWords = String,
  cell,
}: Props<Bed>) {
  return (
    <div className="table-frame">
      <table className="grid-table">
        <caption className="sr-only">{caption}</caption>
        <thead>
          <tr>
            <th scope="col">bed</th>
            {seasons.map((season) => (
              <th key={season} scope="col">
                {seasonWords(season)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {beds.map((bed) => (
            <tr key={bed.id}>
              <th scope="row">{nameOf(bed)}</th>
              {seasons.map((season) => {
                const { content, broken } = cell(bed, season);
                return (
                  <td key={season} className={broken ? 'broken' : undefined}>
                    {content}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
