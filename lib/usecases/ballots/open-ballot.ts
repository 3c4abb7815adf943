import 'server-only';
import { type BallotRecord, type HandsBy, lockBallot } from '@/lib/data/ballot';
import { type Place, writeRoll } from '@/lib/data/ballot-roll';
import { markOpened, markWithdrawn } from '@/lib/data/ballot-step';
import { holdingsOn } from '@/lib/data/holding';
import { handsNeeded } from '@/lib/domain/ballot/quorum';
import { canPutToHands } from '@/lib/domain/policy/ballot';
import { dayIn, wallIn } from '@/lib/platform/clock';
import { openBallotInput, withdrawBallotInput } from '@/lib/schemas/ballots/ballot';
import { everyMemberId } from '../deliveries/recipients';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { tell } from '../tell';

/** Open a question: from now on it never changes, and whoever is on the roll of today may raise a hand. They are told. */
export const openBallot = mutation({
  name: 'open-ballot',
  allow: canPutToHands,
  input: openBallotInput,
  write: async (context, { ballotId }) => {
    const { tx, scope, now, note } = context;
    const ballot = await found(context, ballotId);
    if (ballot.state !== 'draft') refuse('question-stands');
    if (ballot.closesAt <= now) refuse('count-closes-in-the-past');
    const places = await rollOf(context, ballot.handsBy);
    const entitled = new Set(places.map(({ memberId, holdingId }) => holdingId ?? memberId)).size;
    if (entitled === 0) refuse('nobody-entitled');
    const needed = handsNeeded(ballot.quorum, entitled);
    if (needed > entitled) refuse('quorum-beyond-roll', { numbers: { needed, entitled } });
    await writeRoll(tx, scope, ballotId, places);
    await markOpened(tx, scope, ballotId, { entitled, openedAt: now, closesAt: ballot.closesAt });
    note({ verb: 'opened', thing: 'count of hands', thingId: ballotId, after: { entitled, needed } });
    await tellRoll(context, ballot, places);
    return { ballotId };
  },
});

/** Withdraw a question, with the reason: it stays on record, and hands already raised count for nothing. */
export const withdrawBallot = mutation({
  name: 'withdraw-ballot',
  allow: canPutToHands,
  input: withdrawBallotInput,
  write: async (context, { ballotId, why }) => {
    const { tx, scope, now, note } = context;
    const ballot = await found(context, ballotId);
    const isOver = ballot.state === 'open' && ballot.closesAt <= now;
    if (ballot.state === 'closed' || isOver) refuse('count-is-closed');
    if (ballot.state === 'withdrawn') refuse('withdrawn-already');
    await markWithdrawn(tx, scope, ballotId, { at: now, why });
    note({ verb: 'withdrew', thing: 'count of hands', thingId: ballotId, after: { why } });
    return { ballotId };
  },
});

async function found({ tx, scope }: WriteContext, ballotId: string): Promise<BallotRecord> {
  const ballot = await lockBallot(tx, scope, ballotId, 'alone');
  if (!ballot) throw new NotFound();
  return ballot;
}

/** Everybody who is a member today, or every holder of ground for their holding. */
async function rollOf({ tx, scope, today }: WriteContext, handsBy: HandsBy): Promise<Place[]> {
  const memberIds = await everyMemberId(tx, scope, today);
  if (handsBy === 'member') return memberIds.map((memberId) => ({ memberId, holdingId: null }));
  const here = new Set(memberIds);
  return (await holdingsOn(tx, scope, today)).flatMap(({ id: holdingId, memberIds: holders }) =>
    holders.filter((id) => here.has(id)).map((memberId) => ({ memberId, holdingId })),
  );
}

async function tellRoll(context: WriteContext, { title, closesAt }: BallotRecord, places: readonly Place[]) {
  const { timeZone } = context.scope;
  const by = `${dayIn(timeZone, closesAt)} ${wallIn(timeZone, closesAt).slice(11)}`;
  await tell(
    context,
    [...new Set(places.map(({ memberId }) => memberId))],
    `raise your hand: ${title}`,
    `The committee has put a question to a count of hands: “${title}”. You can raise your hand until ${by}; it stands on the board, under Decisions. After the close every member sees who raised a hand for what.`,
  );
}
