import 'server-only';
import { threadsBegun } from '@/lib/data/board';
import { db, inTransaction } from '@/lib/data/db';
import { openScopeOfMember } from '@/lib/data/scope';
import {
  keepLetter,
  letterAddress,
  membersWithoutLetter,
  queueLetters,
  societiesWithZones,
} from '@/lib/data/weekly-letter';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { RuleChange } from '@/lib/domain/catalogue/rule-changes';
import { letterWeek } from '@/lib/domain/reminders/letter-week';
import { dayIn, now, wallIn } from '@/lib/platform/clock';
import { env } from '@/lib/platform/env';
import type { ReadContext } from '../operation';
import { rulesChanged } from '../week/changed-lately';
import { type Due, dueOfMember, ownHoldings } from '../week/due';
import { endsOf } from './letter-wish';

/** All that a letter is made of. */
export type LetterFacts = {
  readonly societyName: string;
  readonly memberName: string;
  readonly today: CalendarDate;
  readonly timeZone: string;
  readonly units: 'metric' | 'imperial';
  readonly due: readonly Due[];
  readonly rules: readonly RuleChange[];
  /** What others began on the board since the last letter and the member has not opened. */
  readonly begun: readonly Begun[];
  /** The member's own page, and the society's part of every address. */
  readonly url: string;
  readonly slug: string;
  readonly endsUrl: string;
};

type Begun = { readonly id: string; readonly title: string; readonly kind: 'notice' | 'talk' };

/** A letter in words. The screens choose them, so that letter and page say the same. */
export type LetterWords = (facts: LetterFacts) => { readonly subject: string; readonly body: string };

/** Letters made in one job: few enough that a process that dies has little to do again. */
const batchSize = 50;

const weekMs = 7 * 86_400_000;
/** The newest of what was begun on the board: the board itself has all of it. */
const begunShown = 10;

/** Look in which societies it is time for the week’s letters, and queue the making of those that are not made yet. */
export async function queueWeeklyLetters(): Promise<void> {
  const instant = now();
  for (const { id: societyId, timeZone } of await societiesWithZones(db())) {
    const monday = letterWeek(wallIn(timeZone, instant));
    if (monday) await queueSociety(societyId, monday);
  }
}

async function queueSociety(societyId: string, monday: CalendarDate): Promise<void> {
  let after = '00000000-0000-0000-0000-000000000000';
  for (;;) {
    const memberIds = await membersWithoutLetter(db(), { societyId, monday, after, take: batchSize });
    const last = memberIds.at(-1);
    if (!last) return;
    await inTransaction((tx) => queueLetters(tx, { monday, memberIds }));
    after = last;
  }
}

/** Make the letters of a batch. Whoever makes one first makes it alone, however many try and whichever of them dies. */
export function makeLetters(words: LetterWords) {
  return async ({ monday, memberIds }: { monday: CalendarDate; memberIds: readonly string[] }): Promise<void> => {
    for (const memberId of memberIds) await makeLetter(memberId, monday, words);
  };
}

async function makeLetter(memberId: string, monday: CalendarDate, words: LetterWords): Promise<void> {
  const scope = await openScopeOfMember(db(), memberId);
  const instant = now();
  const context: ReadContext = { db: db(), scope, now: instant, today: dayIn(scope.timeZone, instant) };
  const facts = await factsOf(context);
  await inTransaction(async (tx) => {
    const to = await letterAddress(tx, scope);
    if (to === null) return;
    // Where nothing wants doing there is nothing to say; the week is settled all the same.
    const isEmpty = facts.due.length + facts.rules.length + facts.begun.length === 0;
    const { societyId } = scope;
    const mail = isEmpty ? null : { to, societyId, endsUrl: endsOf(memberId).pressUrl, ...words(facts) };
    await keepLetter(tx, scope, { monday, at: instant, mail });
  });
}

async function factsOf(context: ReadContext): Promise<LetterFacts> {
  const { societyName, memberName, timeZone, units, slug, memberId } = context.scope;
  const due = await dueOfMember(context, await ownHoldings(context));
  const begun = await threadsBegun(context.db, context.scope, new Date(context.now.getTime() - weekMs), begunShown);
  // A notice that must be read stands among what wants doing.
  const named = new Set(due.flatMap((one) => (one.code === 'must-read' ? [one.threadId] : [])));
  return {
    ...{ societyName, memberName, timeZone, units, slug, today: context.today },
    due,
    rules: await rulesChanged(context),
    begun: begun.filter(({ id }) => !named.has(id)),
    url: `${env().nextAuthUrl}/${slug}`,
    endsUrl: endsOf(memberId).pageUrl,
  };
}
