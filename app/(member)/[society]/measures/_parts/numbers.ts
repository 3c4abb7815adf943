/** A number with as many decimals as help. */
export function number(value: number, decimals = 0): string {
  return value.toLocaleString('en-GB', { maximumFractionDigits: decimals });
}

/** A converted number: five figures that count. */
export function figures(value: number): string {
  return value.toLocaleString('en-GB', { maximumSignificantDigits: 5 });
}

/** A range in words, or its one number. */
export function range(least: string, most: string): string {
  return least === most ? least : `${least} to ${most}`;
}
