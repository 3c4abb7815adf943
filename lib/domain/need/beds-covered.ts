import type { Footprint } from '../ground/footprint';

/** A bed that loads were booked for, with the dressing its due ground wants [g]. */
export type BookedBed = { readonly bedId: string; readonly footprint: Footprint; readonly wantedG: number };

/**
 * Which ground the loads collected for named beds have manured: beds in the holder's order, each served in full before
 * the next; the last one in part, as a strip from its top end.
 *
 * Method: the collected weight is laid off bed by bed; a part-served bed is manured over the same share of its length,
 * rounded down to a whole centimetre. Collected by the whole barrow, the last load may spare a little: it covers the rest.
 *
 * @param loads        barrow-loads collected; whole number ≥ 0
 * @param barrowLoadG  weight of one [g]; whole number > 0
 * @param beds         in the holder's order; a bed that wants nothing is passed over
 * @returns            footprints within the beds, at most one each
 * @throws RangeError  on a negative or fractional value
 * @source             common practice
 * @example            3 loads of 34 kg; beds wanting 60 kg and 84 kg → the first whole, half of the second's length
 */
export function bedsCovered(
  loads: number,
  barrowLoadG: number,
  beds: readonly BookedBed[],
): { bedId: string; footprint: Footprint; massG: number }[] {
  if (!Number.isSafeInteger(loads) || loads < 0) throw new RangeError(`loads are whole barrows: ${loads}`);
  if (!Number.isSafeInteger(barrowLoadG) || barrowLoadG <= 0)
    throw new RangeError(`a barrow-load has a weight: ${barrowLoadG}`);
  let leftG = loads * barrowLoadG;
  return beds.flatMap(({ bedId, footprint, wantedG }) => {
    if (leftG <= 0 || wantedG <= 0) return [];
    const served = Math.min(wantedG, leftG);
    leftG -= served;
    const lengthCm = Math.floor((footprint.lengthCm * served) / wantedG);
    return lengthCm > 0 ? [{ bedId, footprint: { ...footprint, lengthCm }, massG: served }] : [];
  });
}
