import { startTest } from '@/lib/usecases/residue/keep-tests';
import { done, once } from '../../fixtures/society';
import type { Members, Word } from './members';

/** The holder's tests of the open delivery, where there is one, and of their own manure. */
export async function makeTests(word: Word, { holder }: Members, openId: string): Promise<{ testId: string }> {
  const pots = {
    manureParts: '1',
    mixParts: '1',
    testPots: '3',
    controlPots: '3',
    seedsAPot: '3',
    sownOn: '2025-01-06',
  };
  await done(startTest.run(holder.caller, once({ ...pots, name: word('own manure') })));
  if (openId === '') return { testId: '' };
  const tested = once({ ...pots, deliveryId: openId, name: word('tested load') });
  return { testId: (await done(startTest.run(holder.caller, tested))).testId };
}
