/** An integer programme, to be minimised: columns with bounds and rows of terms. It knows nothing of its trade. */
export type Programme = {
  readonly columns: readonly { readonly lower: number; readonly upper: number; readonly whole: boolean }[];
  readonly rows: readonly Row[];
};

export type Term = readonly [column: number, coefficient: number];
export type Row = { readonly terms: readonly Term[]; readonly least: number; readonly most: number };

/** How a solver left a programme. */
export type Solution = {
  readonly status: 'best' | 'stopped' | 'infeasible';
  /** One value a column; none where nothing was found. */
  readonly values: readonly number[] | null;
  readonly objective: number | null;
  /** No solution is below this; equal to the objective where it is the best. */
  readonly bound: number | null;
};

/** A programme while it is being written down. */
export type Draft = {
  readonly column: (lower: number, upper: number, whole?: boolean) => number;
  readonly row: (terms: readonly Term[], least: number, most: number) => void;
  readonly done: () => Programme;
};

/**
 * Begin to write a programme down.
 *
 * @returns  `column` gives the new column's number; `row` bounds a sum of terms from both sides, ± Infinity for none
 * @example  const draft = draftProgramme(); const x = draft.column(0, 1, true); draft.row([[x, 2]], 1, Infinity)
 */
export function draftProgramme(): Draft {
  const columns: { lower: number; upper: number; whole: boolean }[] = [];
  const rows: Row[] = [];
  return {
    column: (lower, upper, whole = false) => columns.push({ lower, upper, whole }) - 1,
    row: (terms, least, most) => void rows.push({ terms: merged(terms), least, most }),
    done: () => ({ columns: [...columns], rows: [...rows] }),
  };
}

/** A programme with further rows. */
export function withRows(programme: Programme, rows: readonly Row[]): Programme {
  return { ...programme, rows: [...programme.rows, ...rows.map((row) => ({ ...row, terms: merged(row.terms) }))] };
}

// A solver takes each column once a row.
function merged(terms: readonly Term[]): Term[] {
  const sums = new Map<number, number>();
  for (const [column, coefficient] of terms) sums.set(column, (sums.get(column) ?? 0) + coefficient);
  return [...sums].filter(([, coefficient]) => coefficient !== 0);
}
