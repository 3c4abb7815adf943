import { makeFeed, revokeFeed } from '@/lib/usecases/reminders/calendar-feed';
import { chooseWeeklyLetter, readReminders } from '@/lib/usecases/reminders/letter-wish';
import { once } from '../../fixtures/society';
import { everybody, type Row } from '../row';

export const reminders: readonly Row[] = [
  { operation: readReminders, input: () => ({}), allow: everybody },
  { operation: makeFeed, input: () => once({}), allow: everybody },
  { operation: revokeFeed, input: () => once({}), allow: everybody },
  { operation: chooseWeeklyLetter, input: () => once({}), allow: everybody },
];
