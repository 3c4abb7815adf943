import { materialOf } from '@/lib/domain/catalogue/materials';
import { mealOf } from '@/lib/domain/catalogue/meals';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';

/** Straw and meals with their weights: 12 kg of straw, 1.7 kg of hoof and horn. */
export function strewnWords(strewn: readonly { readonly key: string; readonly massG: number }[], units: Units): string {
  return strewn
    .map(({ key, massG }) => {
      const name = (materialOf(key) ?? mealOf(key))?.name ?? key;
      return `${formatMassIn(massG, units)} of ${name.toLowerCase()}`;
    })
    .join(', ');
}
