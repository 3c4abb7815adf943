import type { RemindersRefusal } from '@/lib/usecases/refusals/reminders';
import type { Words } from './shape';

export const remindersWords: Words<RemindersRefusal> = {
  'no-calendar': () => 'There is no calendar address to take back.',
  'no-address-for-mail': () => 'The society has no e-mail address of yours. Give one under “Name and contact” first.',
};
