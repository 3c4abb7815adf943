/** Credit of a holding in one material as a season begins and ends; holdingId null is the line called "lapsed". */
export type CreditLine = {
  readonly materialKey: string;
  readonly holdingId: string | null;
  readonly startMillionths: number;
  readonly endMillionths: number;
};

/**
 * Credits of a season by material, each of which sums to nothing at its start and at its end.
 *
 * @param lines  whole millionths of a load, each material and holding once [10⁻⁶ load]
 * @returns      the lines by material, in the order in which the materials come
 * @throws RangeError on a fraction, on a holding that stands twice in a material, and where a material's credits do not sum to nothing
 * @source       DESIGN 3.6: credits of a material always sum to zero
 * @example      +½ and −½ at the start, the other way round at the end → one material, 0 and 0
 */
export function creditAccount(lines: readonly CreditLine[]): ReadonlyMap<string, readonly CreditLine[]> {
  const materials = new Map<string, CreditLine[]>();
  for (const line of lines) {
    for (const millionths of [line.startMillionths, line.endMillionths])
      if (!Number.isSafeInteger(millionths)) throw new RangeError(`credit is in whole millionths: ${millionths}`);
    const own = materials.get(line.materialKey) ?? [];
    if (own.some(({ holdingId }) => holdingId === line.holdingId))
      throw new RangeError(`a holding stands twice in ${line.materialKey}`);
    materials.set(line.materialKey, [...own, line]);
  }
  for (const [material, own] of materials)
    for (const key of ['startMillionths', 'endMillionths'] as const)
      if (own.reduce((sum, line) => sum + line[key], 0) !== 0)
        throw new RangeError(`credits of ${material} do not sum to nothing`);
  return materials;
}
