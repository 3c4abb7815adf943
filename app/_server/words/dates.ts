import type { DatesRefusal } from '@/lib/usecases/refusals/dates';
import type { Words } from './shape';

export const datesWords: Words<DatesRefusal> = {
  'planted-before-sown': () => 'It cannot be planted out before it was sown.',
  'day-of-another-season': ({ season, counts }) =>
    `By that day it would count for ${counts}, and it is planned for ${season}. Give a day that belongs to ${season}, or record it on its bed’s page.`,
  'day-recorded': ({ day }) => `That is recorded already, for ${day}. To correct it, go to its bed’s page.`,
};
