import 'server-only';
import type { HoldingOnDay } from '@/lib/data/holding';
import { type SeedOrderRecord, seedOrdersOf } from '@/lib/data/seed-order';
import { type SeedWantRecord, seedWantsOf } from '@/lib/data/seed-want';
import { addDays, daysBetween } from '@/lib/domain/calendar/calendar-date';
import { canBook } from '@/lib/domain/policy/holding';
import { canKeepMoney } from '@/lib/domain/policy/money';
import type { Dated } from '@/lib/domain/reminders/dated';
import { dayIn } from '@/lib/platform/clock';
import type { ReadContext } from '../operation';

/** What wants doing about seed: a list to put down, packets to fetch, and what the order's keeper does next. */
export type SeedDue =
  | {
      readonly code: 'list-seed';
      readonly orderId: string;
      readonly holdingId: string;
      readonly name: string;
      readonly plots: readonly string[];
      readonly closesAt: Date;
      readonly daysLeft: number;
    }
  | {
      readonly code: 'fetch-seed';
      readonly orderId: string;
      readonly holdingId: string;
      readonly name: string;
      readonly items: number;
    }
  | {
      readonly code: 'run-seed';
      readonly orderId: string;
      readonly name: string;
      readonly step: 'open' | 'order' | 'tick-off' | 'settle';
    };

const nextSteps = { planned: 'open', closed: 'order', ordered: 'tick-off', arrived: 'settle' } as const;

/** What wants doing about the society's orders of seed, by the viewer and for their holdings. */
export async function dueOfSeed(context: ReadContext, holdings: readonly HoldingOnDay[]): Promise<SeedDue[]> {
  const { db, scope, now } = context;
  const orders = (await seedOrdersOf(db, scope, now)).filter(({ state }) => state !== 'called-off');
  if (orders.length === 0) return [];
  const ids = orders.map(({ id }) => id);
  const holdingIds = holdings.map(({ id }) => id);
  const wants = await seedWantsOf(db, scope, ids, holdingIds);
  return orders.flatMap((order) => [...dueOfHolders(context, order, holdings, wants), ...dueOfKeeper(context, order)]);
}

function dueOfKeeper({ scope }: ReadContext, { id: orderId, name, state }: SeedOrderRecord): SeedDue[] {
  const step = state in nextSteps ? nextSteps[state as keyof typeof nextSteps] : null;
  return step && canKeepMoney(scope) ? [{ code: 'run-seed', orderId, name, step }] : [];
}

function dueOfHolders(
  { scope, today }: ReadContext,
  { id: orderId, name, state, closesAt, items }: SeedOrderRecord,
  holdings: readonly HoldingOnDay[],
  all: readonly SeedWantRecord[],
): SeedDue[] {
  const ids = new Set(items.map(({ id }) => id));
  return holdings.flatMap((holding): SeedDue[] => {
    const { id: holdingId, plots } = holding;
    const wants = all.filter((want) => want.holdingId === holdingId && ids.has(want.itemId));
    if (state === 'open' && wants.length === 0 && canBook(scope, holding)) {
      const daysLeft = daysBetween(today, dayIn(scope.timeZone, closesAt));
      const numbers = plots.map(({ number }) => number);
      return [{ code: 'list-seed', orderId, holdingId, name, plots: numbers, closesAt, daysLeft }];
    }
    const toFetch = wants.filter(({ given, handedOutAt }) => (given ?? 0) > 0 && handedOutAt === null).length;
    return toFetch ? [{ code: 'fetch-seed', orderId, holdingId, name, items: toFetch }] : [];
  });
}

/** The days on which lists close, for the calendar of whoever has ground to sow. */
export async function datesOfSeed(
  { db, scope, today, now }: ReadContext,
  holdings: readonly HoldingOnDay[],
): Promise<Dated[]> {
  if (holdings.length === 0) return [];
  const orders = await seedOrdersOf(db, scope, now);
  return orders.flatMap(({ id, name, state, closesAt }): Dated[] => {
    const day = dayIn(scope.timeZone, closesAt);
    if (state !== 'open' || day > addDays(today, 366)) return [];
    return [{ key: `seed-order ${id}`, code: 'seed-closes', from: day, to: day, facts: { orderId: id, name } }];
  });
}
