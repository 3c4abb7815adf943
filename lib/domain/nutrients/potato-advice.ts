import { potatoAdvice } from '../catalogue/potato-advice';
import { wholeFrom } from '../quantity/checked';

export type PotatoAdvice = {
  readonly phosphateMgPerM2: number;
  readonly potashMgPerM2: number;
  readonly magnesiaMgPerM2: number;
};

/**
 * Phosphate, potash and magnesia that potatoes are advised, from a soil test. They are the one crop whose table was
 * read.
 *
 * Method: by index; potash follows the yield that is expected, phosphate and magnesia do not.
 *
 * @param indices      from the laboratory; whole numbers ≥ 0, 4 standing for all above
 * @param yieldGPerM2  expected; whole number ≥ 0 [g/m²]; 5,000 is 50 t/ha
 * @returns            [mg/m²], each ≥ 0; where the index asks for no potash, none for a heavier crop either
 * @throws RangeError  on anything else
 * @source             Defra, Fertiliser Manual (RB209), 8th edition, 2010, potatoes
 * @example            potash index 1, 7,000 g/m² → 44,600 mg/m² K2O (446 kg/ha)
 */
export function potatoAdviceOf(
  indices: { readonly phosphorus: number; readonly potassium: number; readonly magnesium: number },
  yieldGPerM2: number,
): PotatoAdvice {
  const { phosphateKgPerHa, potashKgPerHa, magnesiaKgPerHa, potashHundredthsKgPerT } = potatoAdvice;
  const potash = atIndex(potashKgPerHa, indices.potassium);
  // 1 t/ha is 100 g/m², and a hundredth of 1 kg/ha is 1 mg/m².
  const moreT = (wholeFrom(0, yieldGPerM2) - potatoAdvice.yieldTPerHa * 100) / 100;
  return {
    phosphateMgPerM2: atIndex(phosphateKgPerHa, indices.phosphorus) * 100,
    potashMgPerM2: potash === 0 ? 0 : Math.max(0, Math.round(potash * 100 + moreT * potashHundredthsKgPerT)),
    magnesiaMgPerM2: atIndex(magnesiaKgPerHa, indices.magnesium) * 100,
  };
}

function atIndex(advised: readonly number[], index: number): number {
  return advised[Math.min(wholeFrom(0, index), advised.length - 1)] ?? 0;
}
