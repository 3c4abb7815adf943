import type { SourceKey } from './sources';

/** Phosphate, potash and magnesia advised for potatoes by soil index, 0 to 4 and above, at 50 t/ha [kg/ha]. */
export const potatoAdvice = {
  yieldTPerHa: 50,
  phosphateKgPerHa: [250, 210, 170, 100, 0],
  potashKgPerHa: [360, 330, 300, 150, 0],
  magnesiaKgPerHa: [120, 80, 40, 0, 0],
  /** For each tonne more or less of yield; phosphate and magnesia do not follow the yield [hundredths of kg]. */
  potashHundredthsKgPerT: 580,
  source: 'rb209-potatoes',
} as const satisfies { readonly source: SourceKey; readonly [key: string]: unknown };
