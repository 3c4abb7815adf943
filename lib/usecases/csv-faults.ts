import type { CsvFault } from '@/lib/schemas/csv';
import { type Refusal, Refused } from './refusal';

const shown = 50;

/** A row that reads well and is refused all the same, by the column at fault. */
export type RefusedCell = Omit<CsvFault, 'reason'> & { readonly refusal: Exclude<Refusal, { code: 'input' }> };

/** Refuse a table that has faults, with the first of them beside the table's field by line and column. */
export function refuseFaults(
  code: 'csv-faults' | 'plantings-faults',
  faults: readonly (CsvFault | RefusedCell)[],
): void {
  if (faults.length === 0) return;
  const first = faults.toSorted((a, b) => a.line - b.line).slice(0, shown);
  throw new Refused([{ code, numbers: { count: faults.length } }, ...first.map(besideTable)]);
}

function besideTable(fault: CsvFault | RefusedCell, at: number): Refusal {
  const { line, column } = fault;
  const field = `table.${at}`;
  if ('refusal' in fault) return { ...fault.refusal, field, cell: { line, column } };
  return { code: 'input', field, words: `Line ${line}${column ? `, column “${column}”` : ''}: ${fault.reason}` };
}
