import type { CsvFault } from '@/lib/schemas/csv';
import type { Refusal } from './refusal';

/** A fault in a table as a refusal beside the table's field, with its line and column. */
export function wordsForFault({ line, column, reason }: CsvFault, at = 0): Refusal {
  return {
    code: 'input',
    field: `table.${at}`,
    words: `Line ${line}${column ? `, column “${column}”` : ''}: ${reason}`,
  };
}
