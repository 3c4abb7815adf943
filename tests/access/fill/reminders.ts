import { makeFeed } from '@/lib/usecases/reminders/calendar-feed';
import { chooseWeeklyLetter } from '@/lib/usecases/reminders/letter-wish';
import { done, once } from '../../fixtures/society';
import type { Members } from './members';

/** A calendar and a weekly letter for everybody. */
export async function makeReminders({ secretary, chair, treasurer, gateHelper, holder, neighbour }: Members) {
  for (const { caller } of [secretary, chair, treasurer, gateHelper, holder, neighbour]) {
    await done(makeFeed.run(caller, once({})));
    await done(chooseWeeklyLetter.run(caller, once({ wanted: 'on' })));
  }
}
