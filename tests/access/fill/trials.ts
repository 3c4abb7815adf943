import { db } from '@/lib/data/db';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { todayIn } from '@/lib/platform/clock';
import { giveResult } from '@/lib/usecases/trials/give-result';
import { proposeTrial } from '@/lib/usecases/trials/propose-trial';
import { done, once } from '../../fixtures/society';
import { laidOutTrial } from '../../fixtures/laid-out-trial';
import type { Ids } from '../row';
import type { Members, Word } from './members';

type TrialIds = Pick<Ids, 'trialId' | 'laidOutTrialId' | 'withheldTrialId' | 'trialBlockId' | 'trialGroundId'>;
type Ground = Pick<Ids, 'nextBedId' | 'otherBedId' | 'holdingId' | 'otherHoldingId'>;

/** What the holder’s piece of ground gave in a trial that is not reported, and in one that is withheld [g]. */
export const trialGaveG = 48_213;
export const withheldG = 57_391;

/** What a trial of next year is proposed with. */
export function proposal(change: object = {}) {
  const year = Number(todayIn('Europe/London').slice(0, 4)) + 1;
  return {
    question: 'Does it gain?',
    cropKey: 'leek',
    season: String(year),
    treatmentA: 'manured',
    treatmentB: 'not manured',
    measure: 'grams',
    joinByOn: addDays(todayIn('Europe/London'), 10),
    resultsByOn: `${year}-10-31`,
    leastPlots: '3',
    ...change,
  };
}

/** A trial that is open for joining, one that is laid out, and one whose report is withheld, since two holders were in it. */
export async function makeTrials(word: Word, members: Members, ground: Ground): Promise<TrialIds> {
  const { secretary, holder, neighbour } = members;
  const asked = { question: word('trial question'), treatmentA: word('trial a'), treatmentB: word('trial b') };
  const { trialId } = await done(proposeTrial.run(secretary.caller, once(proposal(asked))));
  const joining = [
    { memberId: holder.id, holdingId: ground.holdingId, bedId: ground.nextBedId },
    { memberId: neighbour.id, holdingId: ground.otherHoldingId, bedId: ground.otherBedId },
  ];
  const laidOutTrialId = await laidOutTrial(secretary.id, joining);
  const withheldTrialId = await laidOutTrial(secretary.id, joining);
  const grounds = async (trial: string) =>
    db().trialGround.findMany({
      where: { block: { trialId: trial } },
      include: { block: true },
      orderBy: { nth: 'asc' },
    });
  for (const { id, block } of await grounds(withheldTrialId)) {
    const isOwn = block.holdingId === ground.holdingId;
    await give(isOwn ? holder.caller : neighbour.caller, id, isOwn ? `${withheldG} g` : '1 kg');
  }
  const mine = (await grounds(laidOutTrialId)).find(({ block }) => block.holdingId === ground.holdingId);
  await give(holder.caller, mine?.id ?? '', `${trialGaveG} g`);
  const [trialBlockId, trialGroundId] = [mine?.blockId ?? '', mine?.id ?? ''];
  return { trialId, laidOutTrialId, withheldTrialId, trialBlockId, trialGroundId };
}

const give = (caller: Members['holder']['caller'], groundId: string, amount: string) =>
  done(giveResult.run(caller, once({ groundId, source: 'typed', amount, sure: 'yes' })));
