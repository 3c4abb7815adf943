import 'server-only';
import { stringify } from 'csv-stringify/sync';

const options = { escape_formulas: true } as const;

// A number is no formula, whatever sign stands before it.
const plainNumber = /^-?\d+(\.\d+)?$/;
const cast = {
  string: (value: string) => (plainNumber.test(value) ? { value, escape_formulas: false } : value),
  number: (value: number) => ({ value: String(value), escape_formulas: false }),
};

/** A table as CSV for any spreadsheet: a byte-order mark, quoted where it must be, and no cell that begins a formula. */
export function toCsv(columns: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return stringify([[...columns], ...rows.map((row) => [...row])], { ...options, cast, bom: true });
}

/** Lines of a larger table, as RFC 4180 has them; the first come with the byte-order mark. */
export function csvLines(rows: readonly (readonly (string | null)[])[], isFirst: boolean): string {
  return stringify(
    rows.map((row) => [...row]),
    { ...options, cast, bom: isFirst, record_delimiter: 'windows' },
  );
}
