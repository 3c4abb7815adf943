import type { Words } from './shape';
import type { PlotsRefusal } from '@/lib/usecases/refusals/plots';

export const plotsWords: Words<PlotsRefusal> = {
  'not-yet': () => 'That cannot be done yet.',
};
