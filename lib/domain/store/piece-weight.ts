import { keepingOf } from '../catalogue/keepings';
import type { StoreLot } from './lot';

/**
 * What a piece of a kind weighs in a household: the mean of what its lots say, or its kind's middling weight where none does.
 *
 * @param keepingKey  a kind of keeping
 * @param lots        any; those of other kinds are passed over
 * @returns           > 0 [g]
 * @throws RangeError on an unknown kind
 * @source            the kind's own; see the catalogue
 * @example           onions of 100 g and of 140 g → 120
 */
export function pieceWeightG(keepingKey: string, lots: readonly Pick<StoreLot, 'keepingKey' | 'pieceG'>[]): number {
  const keeping = keepingOf(keepingKey);
  if (!keeping) throw new RangeError(`no kind of keeping: ${keepingKey}`);
  const own = lots.flatMap((lot) => (lot.keepingKey === keepingKey && lot.pieceG !== null ? [lot.pieceG] : []));
  return own.length ? own.reduce((sum, one) => sum + one, 0) / own.length : keeping.pieceG;
}
