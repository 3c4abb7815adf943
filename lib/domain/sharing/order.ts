import { type Claim, checkClaims } from './claim';
import { entriesOf, isLate, orderIn } from './entry';

/**
 * The one order of all rounds: owed most first, then the lot; behind them who came late, as they came.
 *
 * @param claims   as for `shareOut`
 * @param lotSeed  the delivery's seed
 * @returns        every id once
 * @throws RangeError as `shareOut`
 * @source         the rule of the queue
 * @example        a owed nothing, b owed half a load → b, a
 */
export function orderOf(claims: readonly Claim[], lotSeed: string): string[] {
  checkClaims(
    claims.reduce((sum, { collected = 0 }) => sum + collected, 0),
    claims,
  );
  const entries = entriesOf(claims, lotSeed);
  const inTime = entries.filter(({ claim }) => !isLate(claim)).sort(orderIn('needs'));
  const late = entries.filter(({ claim }) => isLate(claim)).sort(orderIn('late'));
  return [...inTime, ...late].map(({ claim }) => claim.id);
}
