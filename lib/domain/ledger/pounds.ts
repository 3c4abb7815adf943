/**
 * An amount of money in words: pounds and pence, with its sign where it is below nothing.
 *
 * @param minor  whole pence
 * @returns      "£1,234.56"; below nothing "−£3.00"
 * @throws RangeError on a fraction of a penny, and beyond exactness
 * @example      formatPounds(123456) → '£1,234.56'
 */
export function formatPounds(minor: number): string {
  const [pounds, pence] = inPoundsAndPence(minor);
  return `${minor < 0 ? '−' : ''}£${pounds.toLocaleString('en-GB')}.${pence}`;
}

/**
 * An amount as it is typed into a field, or stands in a table for other programs.
 *
 * @param minor  whole pence
 * @throws RangeError on a fraction of a penny, and beyond exactness
 * @example      plainPounds(-18050) → '-180.50'
 */
export function plainPounds(minor: number): string {
  const [pounds, pence] = inPoundsAndPence(minor);
  return `${minor < 0 ? '-' : ''}${pounds}.${pence}`;
}

function inPoundsAndPence(minor: number): [number, string] {
  if (!Number.isSafeInteger(minor)) throw new RangeError(`money is in whole pence: ${minor}`);
  const pence = Math.abs(minor) % 100;
  return [(Math.abs(minor) - pence) / 100, String(pence).padStart(2, '0')];
}
