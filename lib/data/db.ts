import 'server-only';
import { setTimeout as wait } from 'node:timers/promises';
import { PrismaPg } from '@prisma/adapter-pg';
import { Prisma, PrismaClient } from '@/generated/prisma/client';
import { env } from '@/lib/platform/env';

export type Tx = Prisma.TransactionClient;
export type Db = PrismaClient | Tx;
/** What a JSON column takes. */
export type Json = Prisma.InputJsonValue;
export type Isolation = Prisma.TransactionIsolationLevel;

const held = globalThis as unknown as { barrowmootDb?: PrismaClient };

/** The one client of this process; made on first use, so that building needs no database. */
export function db(): PrismaClient {
  held.barrowmootDb ??= new PrismaClient({
    adapter: new PrismaPg({ connectionString: env().databaseUrl, max: env().dbPool }),
  });
  return held.barrowmootDb;
}

const tries = 8;

/**
 * Run in one transaction, again when PostgreSQL says that two of them crossed.
 * Read committed with row locks is the rule; serialisable where a decision rests on rows that are not locked.
 */
export async function inTransaction<T>(
  work: (tx: Tx) => Promise<T>,
  isolationLevel: Prisma.TransactionIsolationLevel = 'ReadCommitted',
): Promise<T> {
  for (let attempt = 1; ; attempt++) {
    try {
      return await db().$transaction(work, { isolationLevel, maxWait: 20_000, timeout: 20_000 });
    } catch (error) {
      if (attempt >= tries || !isCrossed(error)) throw error;
      await wait(Math.random() * 10 * 2 ** attempt);
    }
  }
}

/** Serialisation failures and deadlocks come in three shapes: from the ORM, from raw SQL, and at COMMIT. */
function isCrossed(error: unknown): boolean {
  const crossed = ['40001', '40P01'];
  if (error instanceof Prisma.PrismaClientKnownRequestError) {
    const cause = (error.meta as { driverAdapterError?: { cause?: { originalCode?: string } } } | undefined)
      ?.driverAdapterError?.cause;
    return error.code === 'P2034' || crossed.includes(cause?.originalCode ?? '');
  }
  const bare = error as { name?: string; cause?: { kind?: string; originalCode?: string } } | null;
  return (
    bare?.name === 'DriverAdapterError' &&
    (bare.cause?.kind === 'TransactionWriteConflict' || crossed.includes(bare.cause?.originalCode ?? ''))
  );
}

/** Which of the database's own guards refused, by the constraint's name; null when none did. */
export function brokenConstraint(error: unknown): string | null {
  const text =
    error instanceof Error ? `${error.message} ${JSON.stringify((error as { meta?: unknown }).meta ?? '')}` : '';
  return guards.find((name) => text.includes(name)) ?? null;
}

const guards = [
  'bed_overlap',
  'tenancy_once',
  'holding_member_days',
  'plot_number_in_use',
  'delivery_not_overshared',
  'delivery_not_overtaken',
  'delivery_collecting',
  'booking_collected',
  'booking_share',
  'credits_sum_to_zero',
  'secretary_remains',
  'trench_ticked_once',
  'delivery_held',
] as const;
