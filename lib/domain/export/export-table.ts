/** What is said of a column, and who gets it: where nothing else is said, the society and whoever the row is about. */
export type ExportColumn =
  | string
  | {
      readonly says: string;
      /** Only the society's archive holds it, or only that of the member or holding whose row it is. */
      readonly only?: 'society' | 'own';
      /** A list of words; written as JSON. */
      readonly list?: true;
      /** Empty until this column of the row is set. */
      readonly once?: string;
    }
  | { readonly never: string };

/** Whose a row is: a column that names the member or the holding, in the row itself or in the one it belongs to. */
export type Owner = {
  readonly column: string;
  readonly is: 'me' | 'my holding';
  /** The column that leads to that other row, by its id; and the way back where the other row names this one. */
  readonly through?: { readonly table: string; readonly column: string; readonly names?: string };
};

export type ExportedTable = {
  readonly table: string;
  readonly file: string;
  readonly says: string;
  readonly columns: Readonly<Record<string, ExportColumn>>;
  /** Rows that are in a member's own archive; none where it is not said. */
  readonly owner?: Owner;
  /** Only rows with this column set are the society's; the others are somebody's own. */
  readonly societyWhere?: string;
};

export type LeftOutTable = { readonly table: string; readonly leftOut: string };
export type ExportTable = ExportedTable | LeftOutTable;

/** Whose archive is made: the society's, or a member's own. */
export type Archive = 'society' | 'own';

/** Whether a table is exported at all. */
export function isExported(table: ExportTable): table is ExportedTable {
  return 'columns' in table;
}

/** Columns that only whoever the row is about may have. */
export const own = (says: string) => ({ says, only: 'own' }) as const;
/** Columns that only the society has. */
export const office = (says: string) => ({ says, only: 'society' }) as const;
/** Columns that are in no archive, and why. */
export const never = (reason: string) => ({ never: reason }) as const;

/** The columns of a table that an archive holds, in order, each with what is said of it. */
export function columnsFor(table: ExportedTable, archive: Archive): { readonly name: string; readonly says: string }[] {
  return Object.entries(table.columns).flatMap(([name, column]) => {
    if (typeof column === 'string') return [{ name, says: column }];
    if ('never' in column || (column.only && column.only !== archive)) return [];
    return [{ name, says: column.says }];
  });
}

/** The tables that an archive holds. */
export function tablesFor(tables: readonly ExportTable[], archive: Archive): ExportedTable[] {
  return tables
    .filter(isExported)
    .filter((table) => columnsFor(table, archive).length > 0 && (archive === 'society' || table.owner !== undefined));
}
