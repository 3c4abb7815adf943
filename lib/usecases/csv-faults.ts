import type { CsvFault } from '@/lib/schemas/csv';
import { type Refusal, Refused } from './refusal';

const shown = 50;

/** Refuse a table that has faults, with the first of them beside the table's field by line and column. */
export function refuseFaults(code: 'csv-faults' | 'plantings-faults', faults: readonly CsvFault[]): void {
  if (faults.length === 0) return;
  throw new Refused([{ code, numbers: { count: faults.length } }, ...faults.slice(0, shown).map(wordsForFault)]);
}

function wordsForFault({ line, column, reason }: CsvFault, at: number): Refusal {
  return {
    code: 'input',
    field: `table.${at}`,
    words: `Line ${line}${column ? `, column “${column}”` : ''}: ${reason}`,
  };
}
