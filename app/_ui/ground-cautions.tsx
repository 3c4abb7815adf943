import { cautions } from '@/lib/domain/catalogue/cautions';
import { mealOf } from '@/lib/domain/catalogue/meals';
import type { Recipe } from '@/lib/domain/recipe/recipe-of';
import { Caution } from './sheet';

function wordsOf(keys: readonly string[]): string {
  const chosen = cautions.filter(({ key }) => keys.includes(key));
  return chosen.map(({ words }) => words).join(' ');
}

/** The most pressing of what is said of digging. */
export function DiggingCaution() {
  return <Caution>{wordsOf(['stop', 'small-spadefuls', 'wet-clay', 'others-know'])}</Caution>;
}

/** What is said wherever a recipe has lime, or a meal that limes: how far from manure, and how it burns. */
export function LimeCaution({ recipes }: { recipes: readonly Recipe[] }) {
  const limed = recipes.filter(({ lime, meal }) => lime.value !== 'none' || mealOf(meal.value)?.limes);
  if (limed.length === 0) return null;
  const months = Math.max(...limed.map(({ limeApartMonths }) => limeApartMonths.value));
  return (
    <Caution>
      Never lime and manure together: lime first, and manure no sooner than{' '}
      {months === 1 ? 'a month' : `${months} months`} after. Lime only by a soil test.{' '}
      {wordsOf(['gloves', 'burns', 'dust'])}
    </Caution>
  );
}
