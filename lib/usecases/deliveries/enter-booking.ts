import 'server-only';
import { type BookingRecord, saveBooking } from '@/lib/data/booking';
import type { DeliveryRecord } from '@/lib/data/delivery';
import type { HoldingOnDay } from '@/lib/data/holding';
import { othersOf } from '@/lib/domain/policy/holding';
import type { HoldingNeed } from '../ground/holding-need';
import type { WriteContext } from '../operation';
import { refuse } from '../refusal';
import { tell } from '../tell';

/** A booking as it is to stand: what is asked, for which beds, and how it came. */
type Entered = {
  readonly deliveryId: string;
  readonly holding: HoldingOnDay;
  readonly need: HoldingNeed;
  /** What stood before, withdrawn or not. */
  readonly before: BookingRecord | null;
  readonly asked: number;
  readonly beds: readonly string[];
  readonly onPaper?: boolean;
  readonly lateAt?: Date;
  readonly fromStanding?: boolean;
};

/** Refuse to ask for nothing, or beyond the delivery's limit for one holding. */
export function checkAsked({ capLoads }: DeliveryRecord, asked: number): void {
  if (asked < 1) refuse('asks-nothing', { field: 'asked' });
  if (capLoads !== null && asked > capLoads) refuse('above-cap', { field: 'asked', numbers: { cap: capLoads } });
}

/** Refuse a bed split or retired since the form was served, or one that was never theirs. */
export function checkBeds(need: HoldingNeed, beds: readonly string[]): void {
  const own = new Set(need.lines.flatMap(({ kind, id }) => (kind === 'bed' ? [id] : [])));
  if (beds.some((bedId) => !own.has(bedId))) refuse('bed-not-there', { field: 'beds' });
}

/** Enter a booking with the need worked out for it, and note it in the book. */
export async function enterBooking(context: WriteContext, entered: Entered): Promise<string> {
  const { tx, scope, now, note } = context;
  const { deliveryId, holding, need, before, asked } = entered;
  const bookingId = await saveBooking(tx, scope, deliveryId, toBooking(entered), now);
  const stood = before && !before.withdrawn ? { asked: before.asked } : null;
  note({
    verb: stood ? 'changed' : 'booked',
    thing: 'booking',
    thingId: bookingId,
    forHoldingId: holding.id,
    before: stood,
    after: {
      asked,
      need: need.loads,
      ...(entered.lateAt ? { late: true } : {}),
      ...(entered.fromStanding ? { standing: true } : {}),
    },
  });
  return bookingId;
}

function toBooking({ holding, need, asked, beds, onPaper = false, lateAt, fromStanding = false }: Entered) {
  const named = need.lines.filter(({ kind, id }) => kind === 'bed' && beds.includes(id));
  const needReason = {
    season: need.season,
    serves: need.serves,
    loadUnit: need.loadUnit,
    barrowLoadG: need.barrowLoadG,
    rateGPerM2: need.rateGPerM2,
    lines: need.lines.map(({ footprint: _, turn, straw, ...line }) => ({
      ...line,
      turn: { ...turn, reasons: [...turn.reasons] },
      straw: [...straw],
    })),
  };
  return {
    holdingId: holding.id,
    asked,
    needLoads: need.loads,
    needReason,
    onPaper,
    lateAt: lateAt ?? null,
    fromStanding,
    beds: named.map(({ id, turn }) => ({
      bedId: id,
      dueCm2: turn.dueCm2 + Math.floor(turn.unloggedCm2 / turn.intervalYears),
    })),
  };
}

/** Holders have equal rights, so each learns what the other does. */
export async function tellOtherHolders(context: WriteContext, holding: HoldingOnDay, body: string): Promise<void> {
  await tell(
    context,
    othersOf(holding, context.scope.memberId),
    'a booking for your ground',
    `${body} ${context.scope.memberName} entered it; you can change it until booking closes.`,
  );
}
