import type { RecipesRefusal } from '@/lib/usecases/refusals/recipes';
import type { Words } from './shape';

export const recipesWords: Words<RecipesRefusal> = {
  'value-out-of-range': ({ what, least, most }) => `${what}: give ${least} to ${most}, or leave it empty.`,
  'value-not-offered': ({ what }) => `${what}: choose one from the list.`,
  'month-day-wrong': ({ what }) => `${what}: give a day and a month, such as 1 November, or leave it empty.`,
  'finish-before-start': () =>
    'The finish comes before the start. The season’s work goes from July of the year before to June: move one of the two days.',
};
