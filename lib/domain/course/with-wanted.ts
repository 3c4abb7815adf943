type Wanted = { readonly key: string; readonly areaCm2: number };

/**
 * What is wanted of a course, with the ground that one crop wants put into it.
 *
 * Method: a crop that is wanted already gets that area in its place. Else it stands before its own group, which gives up as much
 * ground, and goes where nothing is left of it; or last, where its group is not wanted.
 *
 * @param wanted  crops and groups in the order of the course, each with its area ≥ 0; 0: where it fits [cm²]
 * @param crop    the crop, its group and the area > 0 that it wants [cm²]
 * @returns       a new list, in which the crop stands once
 * @throws RangeError on an area that is none
 * @example       alliums 10 m², onions want 4 → onions 4, alliums 6
 */
export function withWanted(
  wanted: readonly Wanted[],
  crop: Wanted & { readonly group: string | null },
): readonly Wanted[] {
  const { key, areaCm2, group } = crop;
  if (!Number.isSafeInteger(areaCm2) || areaCm2 <= 0) throw new RangeError(`an area above 0 is wanted: ${areaCm2}`);
  const own = { key, areaCm2 };
  if (wanted.some((one) => one.key === key)) return wanted.map((one) => (one.key === key ? own : one));
  if (!wanted.some((one) => one.key === group)) return [...wanted, own];
  return wanted.flatMap((one) => {
    if (one.key !== group) return [one];
    // A group without an area may stand where it fits, and still may.
    if (one.areaCm2 === 0) return [own, one];
    return one.areaCm2 > areaCm2 ? [own, { ...one, areaCm2: one.areaCm2 - areaCm2 }] : [own];
  });
}
