import 'server-only';
import { type BallotRecord, lockBallot } from '@/lib/data/ballot';
import { ownPlaces, type Place, placesWithoutAccount } from '@/lib/data/ballot-roll';
import { addHand } from '@/lib/data/hand';
import { canReadBallot } from '@/lib/domain/policy/ballot';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { enterHandInput, raiseHandInput } from '@/lib/schemas/ballots/ballot';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';

/** Raise one's hand, for oneself or for a holding; until the close it may be raised anew, and the last one counts. */
export const raiseHand = mutation({
  name: 'raise-hand',
  allow: canEnter,
  input: raiseHandInput,
  write: async (context, { ballotId, holdingId, choiceId }) => {
    const { tx, scope } = context;
    await openForHands(context, ballotId, choiceId);
    const places = await ownPlaces(tx, scope, [ballotId]);
    if (!places.some((place) => place.holdingId === holdingId)) {
      // Other people's holdings are not there for them.
      if (holdingId !== null) throw new NotFound();
      refuse('not-on-the-roll');
    }
    return raise(context, ballotId, { memberId: scope.memberId, holdingId }, choiceId);
  },
});

/** Enter the hand of a member without an account, who said or wrote it; recorded as entered by the secretary. */
export const enterHand = mutation({
  name: 'enter-hand',
  allow: canRunSociety,
  input: enterHandInput,
  write: async (context, { ballotId, rollId, choiceId }) => {
    const { tx, scope, today } = context;
    await openForHands(context, ballotId, choiceId);
    const places = await placesWithoutAccount(tx, scope, ballotId, today);
    const place = places.find(({ id }) => id === rollId);
    if (!place) throw new NotFound();
    return raise(context, ballotId, place, choiceId);
  },
});

// The lock is shared by all hands and waits for nobody but whoever closes: none comes after the result.
async function openForHands(
  { tx, scope, now }: WriteContext,
  ballotId: string,
  choiceId: string,
): Promise<BallotRecord> {
  const ballot = await lockBallot(tx, scope, ballotId, 'shared');
  if (!ballot || !canReadBallot(scope, ballot)) throw new NotFound();
  if (ballot.state === 'draft') refuse('not-open-yet');
  if (ballot.state === 'withdrawn') refuse('withdrawn-already');
  if (ballot.state === 'closed' || ballot.closesAt <= now) refuse('count-is-closed');
  if (!ballot.choices.some(({ id }) => id === choiceId)) throw new NotFound();
  return ballot;
}

// For what it was raised stands in no book and in no reply: until the close that is nobody else's affair.
async function raise({ tx, scope, now, note }: WriteContext, ballotId: string, place: Place, choiceId: string) {
  const { memberId, holdingId } = place;
  await addHand(tx, scope, ballotId, { memberId, holdingId, choiceId, at: now });
  const whose = memberId === scope.memberId ? {} : { forMemberId: memberId };
  note({ verb: 'raised', thing: 'hand', thingId: ballotId, ...whose, forHoldingId: holdingId });
  return { ballotId };
}
