import { randomUUID } from 'node:crypto';
import { db } from '@/lib/data/db';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { openBallot } from '@/lib/usecases/ballots/open-ballot';
import { draftQuestion } from '@/lib/usecases/ballots/put-question';
import { raiseHand } from '@/lib/usecases/ballots/raise-hand';
import { readBallots } from '@/lib/usecases/ballots/read-ballots';
import type { Caller } from '@/lib/usecases/operation';
import { done } from './done';

type People = {
  readonly chair: Caller;
  readonly secretary: Caller;
  readonly treasurer: Caller;
  readonly ines: Caller;
  readonly bea: Caller;
};

const once = <T extends object>(typed: T) => ({ writeId: randomUUID(), ...typed });

/** What the demo society puts to a count of hands: an open motion about the manuring interval, and a decision of three weeks ago. */
export async function loadBallots(
  { chair, secretary, treasurer, ines, bea }: People,
  today: CalendarDate,
): Promise<void> {
  const common = { handsBy: 'member', carriedBy: 'more' };
  const put = async (facts: object) => {
    const { ballotId } = await done(draftQuestion.run(chair, once({ ...common, ...facts })));
    return done(openBallot.run(chair, once({ ballotId, sure: 'yes' })));
  };
  const raise = async (caller: Caller, ballotId: string, position: number) => {
    const { id: choiceId } = await db().ballotChoice.findFirstOrThrow({ where: { ballotId, position } });
    await done(raiseHand.run(caller, once({ ballotId, choiceId })));
  };
  const { ballotId: barrow } = await put({
    title: 'Which way shall new barrows be kept?',
    body: 'Two were left out over the winter. **In the hut** they are dry and the key is with the gate helpers; *by the heap* they are where they are wanted.',
    kind: 'choice',
    choices: 'In the hut\nBy the heap, under a sheet',
    quorum: '4',
    quorumKind: 'number',
    closesAt: `${addDays(today, 2)}T20:00`,
  });
  for (const [at, who] of [chair, secretary, treasurer, ines, bea].entries())
    await raise(who, barrow, at === 3 ? 1 : 0);
  await letItClose(barrow);
  await readBallots.run(secretary, {});
  const { ballotId: interval } = await put({
    title: 'Shall ground be manured every four years instead of every three?',
    body: 'The stables bring less than they did, and a heap that is shared among fewer turns gives each bed its whole dressing.\n\n- **For:** nobody is put off with half a load\n- **Against:** hungry crops come round sooner than that on small plots',
    kind: 'motion',
    quorum: '20',
    quorumKind: 'percent',
    closesAt: `${addDays(today, 12)}T20:00`,
    settingKey: 'manuringIntervalYears',
    settingValue: '4',
    settingFrom: addDays(today, 30),
  });
  await raise(treasurer, interval, 0);
  await raise(ines, interval, 1);
}

/**
 * Move a count three weeks back, past the guards that keep its times: the demo begins in the middle of a year. On a server where we may not
 * pass them it stays open.
 */
async function letItClose(ballotId: string): Promise<void> {
  const [me] = await db().$queryRaw<
    { rolsuper: boolean }[]
  >`SELECT "rolsuper" FROM pg_roles WHERE "rolname" = current_user`;
  if (!me?.rolsuper) return;
  await db().$transaction([
    db().$executeRaw`SET LOCAL session_replication_role = replica`,
    db()
      .$executeRaw`UPDATE "Ballot" SET "createdAt" = "createdAt" - interval '30 days', "openedAt" = "openedAt" - interval '29 days',
      "closesAt" = "closesAt" - interval '23 days' WHERE "id" = ${ballotId}::uuid`,
    db().$executeRaw`UPDATE "Hand" SET "at" = "at" - interval '28 days' WHERE "ballotId" = ${ballotId}::uuid`,
  ]);
}
