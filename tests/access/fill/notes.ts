import { saySharing } from '@/lib/usecases/notes/say-sharing';
import { done, once } from '../../fixtures/society';
import type { Members } from './members';

/** Both who lifted something let it be compared: of two, nothing is told all the same. */
export async function makeNotes(
  { holder, neighbour }: Members,
  { holdingId, otherHoldingId }: { readonly holdingId: string; readonly otherHoldingId: string },
): Promise<void> {
  await done(saySharing.run(holder.caller, once({ holdingId, shares: 'yes' })));
  await done(saySharing.run(neighbour.caller, once({ holdingId: otherHoldingId, shares: 'yes' })));
}
