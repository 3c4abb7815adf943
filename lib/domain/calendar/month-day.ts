/** A day of every year, written `MM-DD`; 29 February is none. */
export type MonthDay = string;

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

const shape = /^(0[13578]|1[02])-(0[1-9]|[12]\d|3[01])$|^(0[469]|11)-(0[1-9]|[12]\d|30)$|^02-(0[1-9]|1\d|2[0-8])$/;

/** Whether a value is a day of every year. */
export function isMonthDay(value: unknown): value is MonthDay {
  return typeof value === 'string' && shape.test(value);
}

/**
 * A day of the year as it is typed: `1 November`, `1 Nov`, `1st November`, `November 1`, or `11-01`, month first.
 *
 * Method: three letters of an English month are enough; a day and a month in figures alone could be read two ways, so
 * figures are taken only as `MM-DD`, with two figures each.
 *
 * @returns  `MM-DD`, or null where it is no day of every year
 * @example  parseMonthDay('1 Nov') → '11-01'; parseMonthDay('30 Feb') → null
 */
export function parseMonthDay(text: string): MonthDay | null {
  const plain = text.trim().toLowerCase().replace(/\.$/, '');
  if (isMonthDay(plain)) return plain;
  const [, first, name, last] =
    /^(?:(\d{1,2})(?:st|nd|rd|th)? )?([a-z]{3,9})\.?(?: (\d{1,2})(?:st|nd|rd|th)?)?$/.exec(plain) ?? [];
  if (!name || (first === undefined) === (last === undefined)) return null;
  const month = months.findIndex((one) => one.toLowerCase().startsWith(name)) + 1;
  const found = `${pad(month)}-${pad(Number(first ?? last))}`;
  return isMonthDay(found) ? found : null;
}

/**
 * A day of the year in words.
 *
 * @throws RangeError on no day of every year
 * @example formatMonthDay('11-01') → '1 November'
 */
export function formatMonthDay(monthDay: MonthDay): string {
  if (!isMonthDay(monthDay)) throw new RangeError(`no day of every year: ${monthDay}`);
  return `${Number(monthDay.slice(3))} ${months[Number(monthDay.slice(0, 2)) - 1]}`;
}

function pad(value: number): string {
  return String(value).padStart(2, '0');
}
