import { changeHabits } from '@/lib/usecases/recipes/change-habits';
import { changeRecipe, changeSocietyRecipe } from '@/lib/usecases/recipes/change-recipe';
import { readRecipes, readSocietyRecipes } from '@/lib/usecases/recipes/read-recipes';
import { once } from '../../fixtures/society';
import { everybody, type Row, secretary } from '../row';

export const recipes: readonly Row[] = [
  { operation: readRecipes, input: () => ({}), allow: everybody },
  { operation: readSocietyRecipes, input: () => ({}), allow: everybody },
  { operation: changeRecipe, input: () => once({ group: 'alliums', meal: 'bone-meal' }), allow: everybody },
  { operation: changeHabits, input: () => once({ trenchWidthCm: '46' }), allow: everybody },
  {
    operation: changeSocietyRecipe,
    input: () => once({ group: 'alliums', from: '2199-01-01', method: 'forking' }),
    allow: secretary,
  },
];
