import 'server-only';
import type { AccountHolder } from '@/lib/data/account-holder';
import { statementIn, totalsOf, type WordedMove } from '@/lib/data/ledger-sums';
import { type CalendarDate, makeDate, yearOf } from '@/lib/domain/calendar/calendar-date';
import type { PriceReason } from '@/lib/domain/ledger/split-price';
import type { LoadUnit } from '@/lib/domain/quantity/load-mass';
import type { ReadContext } from '../operation';
import { splitDelivery } from './split-delivery';

/** Why a share of a price is what it is: price × loads ÷ all loads, and how the odd pennies fell. */
export type ShareOfPrice = {
  readonly priceMinor: number;
  readonly loads: number;
  readonly allLoads: number;
  readonly loadUnit: LoadUnit;
  readonly minor: number;
  readonly reason: PriceReason;
};

type Days = { readonly from: CalendarDate; readonly to: CalendarDate };

/** The days that are asked for; this year's up to today where none are, or where they run backwards. */
export function daysAsked(
  today: CalendarDate,
  { from, to }: { readonly from: CalendarDate | null; readonly to: CalendarDate | null },
): Days {
  const end = to ?? today;
  const begin = from ?? makeDate(yearOf(end), 1, 1);
  return begin <= end ? { from: begin, to: end } : { from: end, to: begin };
}

/** A holding's account with what each line is for, and why its shares of prices are what they are. Nobody else's shares are in it. */
export async function statementOfHolding(
  context: Pick<ReadContext, 'db' | 'scope'>,
  holder: AccountHolder,
  days: Days,
) {
  const { db, scope } = context;
  const statement = await statementIn(db, scope, `holding:${holder.holdingId}`, days);
  const shares = await sharesOf(context, holder.holdingId, statement.lines);
  return {
    ...statement,
    lines: statement.lines.map((line) => ({ ...line, share: shares.get(line.entryId) ?? null })),
  };
}

async function sharesOf(
  { db, scope }: Pick<ReadContext, 'db' | 'scope'>,
  holdingId: string,
  lines: readonly WordedMove[],
): Promise<ReadonlyMap<string, ShareOfPrice>> {
  const charges = lines.filter(({ kind, deliveryId }) => kind === 'charge' && deliveryId !== null);
  const ids = charges.map(({ entryId }) => entryId);
  const totals = ids.length ? await totalsOf(db, scope, ids) : new Map<string, number>();
  const shares = new Map<string, ShareOfPrice>();
  for (const { entryId, deliveryId } of charges) {
    const {
      priceMinor,
      allLoads,
      loadUnit,
      shares: all,
    } = await splitDelivery(db, scope, deliveryId ?? '', totals.get(entryId) ?? 0);
    const own = all.find((share) => share.holdingId === holdingId);
    if (own)
      shares.set(entryId, { priceMinor, allLoads, loadUnit, loads: own.loads, minor: own.minor, reason: own.reason });
  }
  return shares;
}
