import 'server-only';
import { type HoldingOnDay, holdingById } from '@/lib/data/holding';
import { canBook } from '@/lib/domain/policy/holding';
import type { WriteContext } from '../operation';
import { NotFound } from '../refusal';

/** A holding of today that the viewer books for; to anybody else it does not exist. */
export async function openBookable({ tx, scope, today }: WriteContext, holdingId: string): Promise<HoldingOnDay> {
  const holding = await holdingById(tx, scope, holdingId, today);
  if (!holding || !canBook(scope, holding)) throw new NotFound();
  return holding;
}
