/**
 * The value below which a given share of a standard normal distribution lies.
 *
 * Method: Wichura's rational approximations, PPND7: one for the middle, one for the tails, one for the far tails.
 *
 * @param share        above 0, below 1
 * @returns            a finite number, within 10⁻⁶ wherever the share is from 10⁻⁹ to 1 − 10⁻⁹
 * @throws RangeError  on anything else
 * @source             M. J. Wichura, Algorithm AS 241, Applied Statistics 37 (1988), 477–484
 * @example            normalQuantile(0.9) → 1.2816
 */
export function normalQuantile(share: number): number {
  if (!(share > 0 && share < 1)) throw new RangeError(`a share between 0 and 1 is wanted: ${share}`);
  const off = share - 0.5;
  if (Math.abs(off) <= 0.425) return off * middle(0.180625 - off * off);
  const root = Math.sqrt(-Math.log(Math.min(share, 1 - share)));
  const size = root <= 5 ? tail(root - 1.6) : farTail(root - 5);
  return off < 0 ? -size : size;
}

function middle(r: number): number {
  const above = ((59.10937472 * r + 159.29113202) * r + 50.434271938) * r + 3.3871327179;
  return above / (((67.1875636 * r + 78.757757664) * r + 17.895169469) * r + 1);
}

function tail(r: number): number {
  const above = ((0.17023821103 * r + 1.3067284816) * r + 2.75681539) * r + 1.4234372777;
  return above / ((0.12021132975 * r + 0.7370016425) * r + 1);
}

function farTail(r: number): number {
  const above = ((0.017337203997 * r + 0.42868294337) * r + 3.081226386) * r + 6.657905115;
  return above / ((0.012258202635 * r + 0.24197894225) * r + 1);
}
