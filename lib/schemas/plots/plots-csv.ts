import { type CalendarDate, calendarDate } from '@/lib/domain/calendar/calendar-date';
import { type CsvFault, type CsvRow, readCsv, shortened } from '../csv';
import { optionalDay } from '../day';
import { line, optionalEmail, optionalLine } from '../text';

export type PlotRow = {
  readonly line: number;
  readonly number: string;
  readonly quarterRods: number;
  readonly holders: readonly { readonly name: string; readonly email: string | null; readonly phone: string | null }[];
  readonly fromOn: CalendarDate | null;
};

const columns = {
  plot: ['plot number', 'number', 'plot no', 'no'],
  rods: ['size', 'size (rods)', 'poles', 'perches'],
  holders: ['holder', 'name', 'names', 'tenant', 'plot-holder'],
  email: ['e-mail', 'mail', 'email address'],
  phone: ['telephone', 'tel', 'mobile'],
  from: ['since', 'tenancy from', 'start'],
};

/**
 * Read the society's list of plots and holders. Several holders of one plot stand in one cell, parted by a semicolon or
 * an ampersand, their addresses in the same order. The rows that read well come with the faults of the others.
 */
export function readPlotsCsv(text: string): { rows: PlotRow[]; faults: CsvFault[] } {
  const { rows, faults } = readCsv(text, columns, ['plot', 'rods']);
  const read = rows.map(readRow);
  const twice = repeated(rows);
  const all = [...faults, ...read.flatMap((row) => ('faults' in row ? row.faults : [])), ...twice];
  return { rows: read.filter((row): row is PlotRow => !('faults' in row)), faults: all };
}

function readRow({ line: at, cells }: CsvRow): PlotRow | { faults: CsvFault[] } {
  const faults: CsvFault[] = [];
  const fault = (column: string, reason: string) => void faults.push({ line: at, column, reason });
  const number = line('the plot’s number', 20).safeParse(cells.plot ?? '');
  if (!number.success) fault('plot', number.error.issues[0]?.message ?? '');
  const quarterRods = quarterRodsOf(cells.rods ?? '');
  if (quarterRods === null) fault('rods', 'Give the size in rods, such as 10 or 2.5, in quarters of a rod, up to 640.');
  const names = parted(cells.holders).map((name) => line('the holder’s name').safeParse(name));
  for (const name of names) if (!name.success) fault('holders', name.error.issues[0]?.message ?? '');
  const emails = parted(cells.email).map((email) => optionalEmail().safeParse(email));
  for (const email of emails)
    if (!email.success) fault('email', 'Give e-mail addresses such as name@example.org, or leave it empty.');
  if (emails.length > names.length) fault('email', 'There are more addresses than holders.');
  const phones = parted(cells.phone).map((phone) => optionalLine('the telephone number', 30).safeParse(phone));
  for (const phone of phones) if (!phone.success) fault('phone', phone.error.issues[0]?.message ?? '');
  const from = optionalDay('the start of the tenancy').safeParse(cells.from ?? '');
  if (!from.success) fault('from', 'Give a real day from 1900 on, such as 2019-10-01 or 1/10/2019.');
  if (faults.length) return { faults };
  return {
    line: at,
    number: number.data ?? '',
    quarterRods: quarterRods ?? 1,
    holders: names.map((name, nth) => ({
      name: name.data ?? '',
      email: emails[nth]?.data ?? null,
      phone: phones[nth]?.data ?? null,
    })),
    fromOn: from.data ? calendarDate(from.data) : null,
  };
}

function quarterRodsOf(text: string): number | null {
  const typed = /^(\d{1,3})(?:[.,](0|00|25|5|50|75))?$/.exec(text.trim());
  if (!typed) return null;
  const quarters = Number(typed[1]) * 4 + Math.round(Number(`0.${typed[2] ?? 0}`) * 4);
  return quarters > 0 && quarters <= 2560 ? quarters : null;
}

function parted(cell: string | undefined): string[] {
  return (cell ?? '')
    .split(/[;&]/)
    .map((part) => part.trim())
    .filter(Boolean);
}

function repeated(rows: readonly CsvRow[]): CsvFault[] {
  const seen = new Map<string, number>();
  return rows.flatMap(({ line: at, cells }) => {
    const key = (cells.plot ?? '').toLowerCase();
    const first = seen.get(key);
    if (first === undefined) seen.set(key, at);
    return first === undefined || key === ''
      ? []
      : [{ line: at, column: 'plot', reason: `Plot ${shortened(cells.plot ?? '')} stands on line ${first} already.` }];
  });
}
