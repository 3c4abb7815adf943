import { CsvError, parse } from 'csv-parse/sync';
import { z } from 'zod';

/** One fault in a typed or uploaded table, so that its owner finds the cell. */
export type CsvFault = { readonly line: number; readonly column: string; readonly reason: string };

export type CsvRow = { readonly line: number; readonly cells: Readonly<Record<string, string>> };

const largestBytes = 10 * 1024 * 1024;
// No society's list is near it, and every line must be read before anybody is answered.
const mostRows = 5000;
const longestCell = 500;
const tooLarge = 'The table is larger than 10 MB. Send it in parts.';

/** A pasted or uploaded table as it comes in; `readCsv` reads it. */
export const csvText = z.string({ error: 'Paste the table, or choose its file.' }).max(largestBytes, tooLarge);

type Columns = Readonly<Record<string, readonly string[]>>;
type CsvRecord = { readonly record: readonly string[]; readonly info: { readonly lines: number } };

/**
 * Read a table with a heading line. Takes what spreadsheets really write: a byte-order mark, commas, semicolons or
 * tabs, any line ending, quoted cells, empty lines, cells left off at the end of a line. Cells stay text: a formula is
 * never anything but text here.
 *
 * @param columns  the headings it may have, in lower case, with other spellings of each
 * @returns        the rows with the line each begins on, cells trimmed; and the faults, by which nothing may be taken in
 */
export function readCsv(
  text: string,
  columns: Columns,
  required: readonly string[],
): { rows: CsvRow[]; faults: CsvFault[] } {
  if (new TextEncoder().encode(text).length > largestBytes) return whole(tooLarge);
  if (text.trim() === '') return whole('The table is empty. Paste it with its heading line.');
  const unreadable = text.search(/[\p{Surrogate}\ufffd]/u);
  if (unreadable >= 0)
    return whole('A sign here could not be read. Save the table as UTF-8 and send it again.', lineAt(text, unreadable));
  const read = recordsOf(text.replaceAll(/\r\n?/g, '\n'));
  if ('unclosedAt' in read)
    return whole('A quotation mark is opened here and not closed, or stands inside a cell.', read.unclosedAt);
  const [head, ...body] = read.filter(({ record }) => record.some((cell) => cell.trim() !== ''));
  if (body.length > mostRows)
    return whole(`The table holds more than ${mostRows.toLocaleString('en-GB')} lines. Send it in parts.`);
  const headings = (head?.record ?? []).map((heading) => heading.trim());
  const keys = headings.map((heading) => columnOf(heading, columns));
  const wrong = headingFaults(headings, keys, columns, required, head ? beginOf(head) : 1);
  if (wrong.length) return { rows: [], faults: wrong };
  return {
    // What is too long for a cell is looked at no further.
    rows: body.filter(({ record }) => !record.some(isTooLong)).map((record) => toRow(record, keys)),
    faults: body.flatMap((record) => cellFaults(record, headings)),
  };
}

function whole(reason: string, line = 1) {
  return { rows: [], faults: [{ line, column: '', reason }] };
}

function lineAt(text: string, at: number): number {
  return text.slice(0, at).split(/\r\n?|\n/).length;
}

function recordsOf(text: string): CsvRecord[] | { unclosedAt: number } {
  try {
    return parse(text, {
      bom: true,
      delimiter: likelyDelimiter(text),
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
      to: mostRows + 2,
    }) as unknown as CsvRecord[];
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return { unclosedAt: Number((error as { lines?: number }).lines ?? 1) };
  }
}

function isTooLong(cell: string): boolean {
  return cell.length > longestCell;
}

function toRow(record: CsvRecord, keys: readonly (string | null)[]): CsvRow {
  const cells = keys.flatMap((key, at) => (key ? [[key, (record.record[at] ?? '').trim()]] : []));
  return { line: beginOf(record), cells: Object.fromEntries(cells) };
}

// The reader counts the lines up to the record's end; a quoted cell may run over several.
function beginOf({ record, info }: CsvRecord): number {
  return info.lines - record.join('').split('\n').length + 1;
}

function headingFaults(
  headings: readonly string[],
  keys: readonly (string | null)[],
  columns: Columns,
  required: readonly string[],
  line: number,
): CsvFault[] {
  const may = `It may have: ${Object.keys(columns).join(', ')}.`;
  const missing = required.filter((key) => !keys.includes(key)).map((key) => `“${key}”`);
  const lacking = { line, column: '', reason: `The heading line lacks ${missing.join(' and ')}. ${may}` };
  const others = headings.flatMap((heading, at): CsvFault[] => {
    const key = keys[at];
    const column = shortened(heading);
    if (heading !== '' && !key)
      return [{ line, column, reason: `No column of that name is read. Take it out or name it anew. ${may}` }];
    return key && keys.indexOf(key) !== at ? [{ line, column, reason: `The column “${key}” is there twice.` }] : [];
  });
  return [...(missing.length ? [lacking] : []), ...others];
}

function cellFaults(record: CsvRecord, headings: readonly string[]): CsvFault[] {
  const line = beginOf(record);
  const stray = record.record.some((cell, at) => !headings[at] && cell.trim() !== '');
  const reason = 'It has more cells than the heading line. Put a cell that holds a comma into quotation marks.';
  const long = headings.filter((_, at) => isTooLong(record.record[at] ?? ''));
  return [
    ...(stray ? [{ line, column: '', reason }] : []),
    ...long.map((column) => ({ line, column, reason: `Keep a cell to ${longestCell} characters.` })),
  ];
}

function columnOf(heading: string, columns: Columns): string | null {
  const plain = heading.toLowerCase();
  return Object.entries(columns).find(([key, spellings]) => key === plain || spellings.includes(plain))?.[0] ?? null;
}

/** What was typed, as a reason repeats it. */
export function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}

// The delimiter that the heading line holds most of.
function likelyDelimiter(text: string): string {
  const heading = text.trimStart().split('\n', 1)[0] ?? '';
  const count = (mark: string) => heading.split(mark).length;
  return [',', ';', '\t'].reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}
