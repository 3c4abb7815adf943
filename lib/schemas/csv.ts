import { CsvError, parse } from 'csv-parse/sync';
import { z } from 'zod';

/** One fault in a typed or uploaded table, so that its owner finds the cell. */
export type CsvFault = { readonly line: number; readonly column: string; readonly reason: string };

export type CsvRow = { readonly line: number; readonly cells: Readonly<Record<string, string>> };

const largestBytes = 10 * 1024 * 1024;
const tooLarge = 'The table is larger than 10 MB. Send it in parts.';

/** A pasted or uploaded table as it comes in; `readCsv` reads it. */
export const csvText = z.string({ error: 'Paste the table, or choose its file.' }).max(largestBytes, tooLarge);

/**
 * Read a table with a heading line. Takes what spreadsheets really write: a byte-order mark, commas, semicolons or
 * tabs, either line ending, quoted cells. Cells stay text: a formula is never anything but text here.
 *
 * @param columns  the headings it may have, in lower case, with other spellings of each
 * @returns        the rows with the line each begins on, or the faults that stop it from being read
 */
export function readCsv(
  text: string,
  columns: Readonly<Record<string, readonly string[]>>,
  required: readonly string[],
): { rows: CsvRow[]; faults: CsvFault[] } {
  if (new TextEncoder().encode(text).length > largestBytes) return whole(tooLarge);
  if (text.trim() === '') return whole('The table is empty. Paste it with its heading line.');
  let records: { record: string[]; info: { lines: number } }[];
  try {
    records = parse(text, {
      bom: true,
      delimiter: likelyDelimiter(text),
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
    }) as unknown as typeof records;
  } catch (error) {
    const line = error instanceof CsvError ? Number((error as { lines?: number }).lines ?? 1) : 1;
    return {
      rows: [],
      faults: [
        { line, column: '', reason: 'A quotation mark is opened here and not closed, or stands inside a cell.' },
      ],
    };
  }
  const [head, ...body] = records;
  const keys = (head?.record ?? []).map((heading) => columnOf(heading, columns));
  const missing = required.filter((key) => !keys.includes(key));
  if (missing.length)
    return whole(
      `The heading line lacks ${missing.map((key) => `“${key}”`).join(' and ')}. It may have: ${Object.keys(columns).join(', ')}.`,
    );
  return {
    rows: body.map(({ record, info }) => ({
      line: info.lines,
      cells: Object.fromEntries(keys.flatMap((key, at) => (key ? [[key, record[at] ?? '']] : []))),
    })),
    faults: [],
  };
}

function whole(reason: string) {
  return { rows: [], faults: [{ line: 1, column: '', reason }] };
}

function columnOf(heading: string, columns: Readonly<Record<string, readonly string[]>>): string | null {
  const plain = heading.trim().toLowerCase();
  return Object.entries(columns).find(([key, spellings]) => key === plain || spellings.includes(plain))?.[0] ?? null;
}

// The delimiter that the heading line holds most of.
function likelyDelimiter(text: string): string {
  const heading = text.split(/\r?\n/, 1)[0] ?? '';
  const count = (mark: string) => heading.split(mark).length;
  return [',', ';', '\t'].reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}
