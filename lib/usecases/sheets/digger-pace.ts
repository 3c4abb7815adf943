import 'server-only';
import type { HoldingOnDay } from '@/lib/data/holding';
import type { Pace } from '@/lib/domain/sheet/portion';
import type { SheetOrder } from '@/lib/domain/sheet/sheet-order';
import type { ReadContext } from '../operation';
import { habitsOnGround } from '../recipes/habits-on-ground';

/**
 * The pace of whoever looks at a sheet. It is never kept with the sheet: what somebody weighs and how old they are is nobody
 * else's to read, and each holder digs at their own. A weight that was not said is none.
 */
export async function paceOfViewer(
  { db, scope, today }: Pick<ReadContext, 'db' | 'scope' | 'today'>,
  holding: HoldingOnDay | null,
  { from, until }: SheetOrder,
): Promise<Pace> {
  const habits = await habitsOnGround(db, scope, holding, today);
  const { ageBand, pace, bodyMassKg, sessionMinutes, sessionsPerWeek } = habits;
  return {
    digger: {
      ageBand: ageBand.value,
      pace: pace.value,
      bodyMassKg: bodyMassKg.setBy === 'yours' ? bodyMassKg.value : null,
      sessionMinutes: sessionMinutes.value,
      limitKcalPerMin: null,
    },
    sessionsPerWeek: sessionsPerWeek.value,
    from,
    until,
  };
}
