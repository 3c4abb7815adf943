import 'server-only';
import { stringify } from 'csv-stringify/sync';

/** A table as CSV for any spreadsheet: a byte-order mark, quoted where it must be, and no cell that begins a formula. */
export function toCsv(columns: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return stringify([[...columns], ...rows.map((row) => [...row])], { bom: true, escape_formulas: true });
}
