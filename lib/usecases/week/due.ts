import 'server-only';
import { deliveriesOf } from '@/lib/data/delivery';
import { type HoldingOnDay, holdingsOfMember } from '@/lib/data/holding';
import type { Dated } from '@/lib/domain/reminders/dated';
import { type BallotDue, datesOfBallots, dueOfBallots } from '../ballots/due-ballots';
import { type BoardDue, dueOfBoard } from '../board/due-board';
import { datesOfDates } from '../dates/dates-dates';
import { type DatesDue, dueOfDates } from '../dates/due-dates';
import { type OwesDue, dueOfMoney } from '../money/due-money';
import type { ReadContext } from '../operation';
import { datesOfResidues, dueOfResidues, type ResidueDue } from '../residue/due-residue';
import { datesOfSeed, dueOfSeed, type SeedDue } from '../seed/due-seed';
import { datesOfSheets, dueOfSheets, type SheetDue } from '../sheets/due-sheets';
import { datesOfStore } from '../store/dates-store';
import { dueOfStore, type StoreDue } from '../store/due-store';
import { datesOfTrials, dueOfTrials, type TrialDue } from '../trials/due-trials';
import { datesOfDeliveries, type DeliveryDue, dueOfDeliveries } from './due-deliveries';
import { dueOfGround, type GroundDue } from './due-ground';

/** One thing that wants doing. All of it is derived: done where it is done. */
export type Due =
  | BallotDue
  | BoardDue
  | DatesDue
  | DeliveryDue
  | GroundDue
  | OwesDue
  | ResidueDue
  | SeedDue
  | SheetDue
  | StoreDue
  | TrialDue;

/** The holdings with ground that the viewer holds or shares today. */
export async function ownHoldings({ db, scope, today }: ReadContext): Promise<HoldingOnDay[]> {
  return (await holdingsOfMember(db, scope, scope.memberId, today)).filter(({ plots }) => plots.length);
}

/** What wants doing, most pressing first. The page, the calendar and the weekly letter derive from this and the next. */
export async function dueOfMember(context: ReadContext, holdings: readonly HoldingOnDay[]): Promise<Due[]> {
  const coming = await deliveriesOf(context.db, context.scope, context.now);
  return [
    ...(await dueOfResidues(context, coming)),
    ...(await dueOfDeliveries(context, holdings, coming)),
    ...(await dueOfMoney(context)),
    ...(await dueOfSheets(context, holdings)),
    ...(await dueOfDates(context, holdings)),
    ...(await dueOfSeed(context, holdings)),
    ...(await dueOfStore(context, holdings)),
    ...(await dueOfTrials(context, holdings)),
    ...(await dueOfGround(context, holdings)),
    ...(await dueOfBallots(context)),
    ...(await dueOfBoard(context)),
  ];
}

/** What has a day, in the coming year. */
export async function datesOfMember(context: ReadContext, holdings: readonly HoldingOnDay[]): Promise<Dated[]> {
  const coming = await deliveriesOf(context.db, context.scope, context.now);
  return [
    ...(await datesOfDeliveries(context, holdings, coming)),
    ...(await datesOfResidues(context, coming)),
    ...(await datesOfSheets(context, holdings)),
    ...(await datesOfDates(context, holdings)),
    ...(await datesOfSeed(context, holdings)),
    ...(await datesOfStore(context, holdings)),
    ...(await datesOfTrials(context, holdings)),
    ...(await datesOfBallots(context)),
  ];
}
