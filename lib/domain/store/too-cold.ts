import { type StoreLimit, storeLimits } from '../catalogue/store-limits';

/** What the warmth of a place does to a kind, and by how far it is past the limit [tenths of °C]. */
export type WarmthFinding = StoreLimit & { readonly placeTenthC: number; readonly beyondTenthC: number };

/**
 * What is too cold, or too warm, for a kind at a place.
 *
 * Method: every printed limit of the kind that the place's temperature lies beyond: frost, chilling, sweetening, and the warmth in
 * which it sprouts.
 *
 * @param keepingKey   a kind of keeping
 * @param placeTenthC  how cold it gets there, whole tenths from −500 to 500 [tenths of °C]
 * @returns            the limits that are broken, the hardest first: frost, chilling, sweetening, sprouting; none is no all-clear
 * @throws RangeError  on a temperature that is none
 * @source             each limit's own; see the catalogue
 * @example            tooColdFor('butternut', 60) → chills below 10 °C, by 4 degrees
 */
export function tooColdFor(keepingKey: string, placeTenthC: number): WarmthFinding[] {
  if (!Number.isSafeInteger(placeTenthC) || Math.abs(placeTenthC) > 500)
    throw new RangeError(`tenths of a degree from −500 to 500: ${placeTenthC}`);
  return storeLimits
    .filter(({ keepingKeys, fromTenthC, belowTenthC }) => {
      const isWithin = placeTenthC >= (fromTenthC ?? -Infinity) && placeTenthC < (belowTenthC ?? Infinity);
      return isWithin && keepingKeys.includes(keepingKey);
    })
    .map((limit) => ({ ...limit, placeTenthC, beyondTenthC: beyond(limit, placeTenthC) }))
    .sort((one, other) => hardest.indexOf(one.code) - hardest.indexOf(other.code));
}

const hardest: readonly StoreLimit['code'][] = ['freezes', 'chills', 'sweetens', 'sprouts'];

function beyond({ code, fromTenthC, belowTenthC }: StoreLimit, placeTenthC: number): number {
  return code === 'sprouts' ? placeTenthC - (fromTenthC ?? placeTenthC) : (belowTenthC ?? placeTenthC) - placeTenthC;
}
