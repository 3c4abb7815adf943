import { materials } from '@/lib/domain/catalogue/materials';

/** Every material's usual density with its published range, in grams a litre: sources differ by a factor of two. */
export const densityRanges = materials
  .map(
    ({ name, leastGPerL, mostGPerL, densityGPerL }) =>
      `${name.toLowerCase()} ${densityGPerL} (${leastGPerL}–${mostGPerL})`,
  )
  .join('; ');
