import { db } from '@/lib/data/db';
import { closeBallot } from '@/lib/usecases/ballots/close-ballot';
import { openBallot, withdrawBallot } from '@/lib/usecases/ballots/open-ballot';
import { draftQuestion } from '@/lib/usecases/ballots/put-question';
import { raiseHand } from '@/lib/usecases/ballots/raise-hand';
import { question } from '../../fixtures/question';
import { done, once } from '../../fixtures/society';
import type { Ids } from '../row';
import type { Members, Word } from './members';

type BallotIds = Pick<Ids, 'draftBallotId' | 'openBallotId' | 'choiceId' | 'rollId'>;

/** A question that is drafted, one that is open, one that is decided and one that is withdrawn; hands of the holder’s in them. */
export async function makeBallots(word: Word, { secretary, holder, noAccount }: Members): Promise<BallotIds> {
  const draft = async (what: string) => {
    const typed = question({
      title: word(what),
      body: word(`${what} body`),
      kind: 'choice',
      choices: ['secret', 'other'].map((one) => word(`${one} ${what} choice`)).join('\n'),
    });
    return (await done(draftQuestion.run(secretary.caller, once(typed)))).ballotId;
  };
  const put = async (what: string) => {
    const ballotId = await draft(what);
    await done(openBallot.run(secretary.caller, once({ ballotId, sure: 'yes' })));
    const { id: choiceId } = await db().ballotChoice.findFirstOrThrow({ where: { ballotId, position: 0 } });
    await done(raiseHand.run(holder.caller, once({ ballotId, choiceId })));
    return { ballotId, choiceId };
  };
  const draftBallotId = await draft('drafted question');
  const decided = await put('decided question');
  await comeToItsTime(decided.ballotId);
  await closeBallot({ ballotId: decided.ballotId, memberId: secretary.id });
  const gone = await put('withdrawn question');
  await done(withdrawBallot.run(secretary.caller, once({ ballotId: gone.ballotId, why: word('withdrawn because') })));
  const { ballotId: openBallotId, choiceId } = await put('open question');
  const place = { ballotId: openBallotId, memberId: noAccount.id };
  const { id: rollId } = await db().ballotRoll.findFirstOrThrow({ where: place });
  return { draftBallotId, openBallotId, choiceId, rollId };
}

/** Move a question’s times back, past the guards that keep them: as if its week had gone by. */
async function comeToItsTime(ballotId: string): Promise<void> {
  await db().$transaction([
    db().$executeRaw`SET LOCAL session_replication_role = replica`,
    db().$executeRaw`UPDATE "Ballot" SET "closesAt" = "closesAt" - interval '8 days' WHERE "id" = ${ballotId}::uuid`,
  ]);
}
