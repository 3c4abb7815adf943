import type { HarvestRefusal } from '@/lib/usecases/refusals/harvest';
import type { Words } from './shape';

export const harvestWords: Words<HarvestRefusal> = {
  'harvest-weight-wrong': ({ most }) =>
    `Give a weight such as 4.2 kg, 350 g or 9 lb 4 oz, up to ${most} kg, or 0 where it came to nothing.`,
  'harvest-count-wrong': ({ most }) => `Give a whole number from 0 to ${most}, or say that it was weighed.`,
  'harvest-in-the-future': () => 'That day is still to come. Give today, or a day that is past.',
  'harvest-before-sown': ({ begun }) => `It was sown or planted on ${begun}. Give that day or a later one.`,
  'harvest-out-of-season': ({ least, most }) => `It stood from ${least} on. Give a day from ${least} to ${most}.`,
};
