import 'server-only';
import { z } from 'zod';
import { ballotById, type BallotRecord, ballotsOf } from '@/lib/data/ballot';
import { ownPlaces, placesWithoutAccount } from '@/lib/data/ballot-roll';
import { handsOf, holdersRaised, namesOf } from '@/lib/data/hand';
import { memberById } from '@/lib/data/member';
import { handsNeeded } from '@/lib/domain/ballot/quorum';
import { canPutToHands, canReadBallot } from '@/lib/domain/policy/ballot';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { dayIn } from '@/lib/platform/clock';
import { rowId } from '@/lib/schemas/write';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { closeDue } from './close-ballot';
import { plotsAtOpening, shownResults } from './shown-result';

/** The society’s decisions: questions for which hands can be raised, what was decided, and what was withdrawn. */
export const readBallots = query({
  name: 'read-ballots',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const { db, scope, today } = context;
    await closeDue(context);
    const all = (await ballotsOf(db, scope)).filter((ballot) => canReadBallot(scope, ballot));
    const inState = (state: BallotRecord['state']) => all.filter((one) => one.state === state);
    return {
      ...{ today, timeZone: scope.timeZone, keeps: canPutToHands(scope) },
      drafts: inState('draft').map(({ id, title, closesAt }) => ({ id, title, closesAt })),
      open: await openShown(context, inState('open').toReversed()),
      closed: await closedShown(context, inState('closed')),
      withdrawn: inState('withdrawn').map(({ id, title, withdrawnAt, withdrawnWhy }) => ({
        ...{ id, title, withdrawnAt, withdrawnWhy },
      })),
    };
  },
});

/** The minutes: every decision of the society by its number, whole, to be printed. */
export const readMinutes = query({
  name: 'read-minutes',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const { db, scope, today } = context;
    await closeDue(context);
    const closed = (await ballotsOf(db, scope)).filter(({ state }) => state === 'closed');
    const { societyName, timeZone } = scope;
    return { societyName, timeZone, today, decisions: await closedShown(context, closed) };
  },
});

/** One question: its words, how it stands, and the viewer’s own hands in it. */
export const readBallot = query({
  name: 'read-ballot',
  allow: canEnter,
  input: z.object({ ballotId: rowId }),
  read: async (context, { ballotId }) => {
    const { db, scope, today } = context;
    await closeDue(context);
    const ballot = await ballotById(db, scope, ballotId);
    if (!ballot || !canReadBallot(scope, ballot)) throw new NotFound();
    const { result: _, ...facts } = ballot;
    const raised = (await holdersRaised(db, scope, [ballotId])).get(ballotId) ?? new Set();
    const needed = ballot.entitled === null ? null : handsNeeded(ballot.quorum, ballot.entitled);
    return {
      ...{ ballot: facts, today, timeZone: scope.timeZone, keeps: canPutToHands(scope), needed },
      raised: raised.size,
      own: await ownHands(context, ballot),
      noHand: await whyNoHand(context, ballot),
      onPaper: canRunSociety(scope) && ballot.state === 'open' ? await onPaper(context, ballot, raised) : [],
      result: (await shownResults(context, [ballot])).get(ballotId) ?? null,
    };
  },
});

async function openShown({ db, scope }: ReadContext, ballots: readonly BallotRecord[]) {
  const ids = ballots.map(({ id }) => id);
  const [raised, places] = await Promise.all([holdersRaised(db, scope, ids), ownPlaces(db, scope, ids)]);
  return ballots.map(({ id, title, closesAt, entitled, setting }) => {
    const hands = raised.get(id) ?? new Set();
    const mine = places.filter(({ ballotId }) => ballotId === id).map(({ holdingId }) => holdingId ?? scope.memberId);
    const isRaised = mine.every((holder) => hands.has(holder));
    const own: 'none' | 'raised' | 'not-yet' = mine.length === 0 ? 'none' : isRaised ? 'raised' : 'not-yet';
    return { id, title, closesAt, entitled: entitled ?? 0, setting, raised: hands.size, mine: own };
  });
}

async function closedShown(context: ReadContext, ballots: readonly BallotRecord[]) {
  const results = await shownResults(context, ballots);
  return ballots
    .flatMap(({ result: _, number, openedAt, withdrawnAt: __, withdrawnWhy: ___, ...ballot }) => {
      const result = results.get(ballot.id);
      return result && number !== null && openedAt !== null ? [{ ...ballot, number, openedAt, result }] : [];
    })
    .toSorted((a, b) => b.number - a.number);
}

/** What the viewer, and each holding of theirs, last raised a hand for; and who of the holders raised it. */
async function ownHands({ db, scope }: ReadContext, ballot: BallotRecord) {
  const places = await ownPlaces(db, scope, [ballot.id]);
  if (places.length === 0) return [];
  const [hands, plots] = await Promise.all([handsOf(db, scope, ballot.id), plotsAtOpening({ db, scope }, ballot)]);
  const names = await namesOf(
    db,
    scope,
    hands.map(({ raisedById }) => raisedById),
  );
  return places.map(({ holdingId }) => {
    const holder = holdingId ?? scope.memberId;
    const last = hands.findLast((hand) => (hand.holdingId ?? hand.memberId) === holder);
    return {
      ...{ holdingId, plots: plots.get(holdingId ?? '') ?? [] },
      choiceId: last?.choiceId ?? null,
      raised: last
        ? { at: last.at, by: last.raisedById === scope.memberId ? null : (names.get(last.raisedById) ?? '') }
        : null,
    };
  });
}

async function whyNoHand({ db, scope, today }: ReadContext, ballot: BallotRecord) {
  if (!ballot.openedAt || (await ownPlaces(db, scope, [ballot.id])).length) return null;
  const me = await memberById(db, scope, scope.memberId, today);
  const isLater = (me?.joinedOn ?? today) > dayIn(scope.timeZone, ballot.openedAt);
  return isLater ? ('joined-later' as const) : ('no-holding' as const);
}

/** Whose hands the secretary enters, and whether one was entered; not for what. */
async function onPaper(context: ReadContext, ballot: BallotRecord, raised: ReadonlySet<string>) {
  const { db, scope, today } = context;
  const plots = await plotsAtOpening(context, ballot);
  return (await placesWithoutAccount(db, scope, ballot.id, today)).map(({ id, memberId, holdingId, name }) => ({
    ...{ id, name, plots: plots.get(holdingId ?? '') ?? [] },
    isRaised: raised.has(holdingId ?? memberId),
  }));
}
