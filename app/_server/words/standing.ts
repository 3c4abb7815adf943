import type { StandingRefusal } from '@/lib/usecases/refusals/standing';
import type { Words } from './shape';

export const standingWords: Words<StandingRefusal> = {
  'stands-already': () => 'Your holding has a standing booking of this already. Change or end that one.',
};
