import 'server-only';
import { openBallots } from '@/lib/data/ballot';
import { ownPlaces } from '@/lib/data/ballot-roll';
import { holdersRaised } from '@/lib/data/hand';
import { daysBetween } from '@/lib/domain/calendar/calendar-date';
import type { Dated } from '@/lib/domain/reminders/dated';
import { dayIn, wallIn } from '@/lib/platform/clock';
import type { ReadContext } from '../operation';
import { closeDue } from './close-ballot';

/** A hand that could be raised and is not. */
export type BallotDue = {
  readonly code: 'raise-hand';
  readonly ballotId: string;
  readonly title: string;
  readonly closesAt: Date;
  readonly daysLeft: number;
  /** How many are wanted: one, or one for each holding that has none yet. */
  readonly hands: number;
};

/** Where the viewer, or a holding of theirs, has raised no hand yet; the count that closes first before the others. */
export async function dueOfBallots(context: ReadContext): Promise<BallotDue[]> {
  const { db, scope, today, now } = context;
  await closeDue(context);
  const open = await openBallots(db, scope, now);
  const ids = open.map(({ id }) => id);
  const [places, raised] = await Promise.all([ownPlaces(db, scope, ids), holdersRaised(db, scope, ids)]);
  const wanting = places.filter(({ ballotId, holdingId }) => !raised.get(ballotId)?.has(holdingId ?? scope.memberId));
  return open.flatMap(({ id: ballotId, title, closesAt }): BallotDue[] => {
    const hands = wanting.filter((place) => place.ballotId === ballotId).length;
    const daysLeft = daysBetween(today, dayIn(scope.timeZone, closesAt));
    return hands ? [{ code: 'raise-hand', ballotId, title, closesAt, daysLeft, hands }] : [];
  });
}

/** The days on which counts close, for the calendar of whoever has a hand in them. */
export async function datesOfBallots({ db, scope, now }: ReadContext): Promise<Dated[]> {
  const open = await openBallots(db, scope, now);
  const places = await ownPlaces(
    db,
    scope,
    open.map(({ id }) => id),
  );
  const mine = new Set(places.map(({ ballotId }) => ballotId));
  return open
    .filter(({ id }) => mine.has(id))
    .map(({ id: ballotId, title, closesAt }) => {
      const day = dayIn(scope.timeZone, closesAt);
      const at = wallIn(scope.timeZone, closesAt).slice(11);
      return { key: `count ${ballotId}`, code: 'hands-close', from: day, to: day, facts: { ballotId, title, at } };
    });
}
