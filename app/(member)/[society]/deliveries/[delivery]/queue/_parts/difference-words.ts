import { creditWords } from '@/app/_ui/delivery-words';
import type { Difference } from '@/lib/domain/sharing/work-again';

/** A difference between what the page shows and what the browser reached, in plain words. */
export function differenceWords(difference: Difference, nameOf: (id: string) => string): string {
  if (difference.code === 'hash')
    return `The 32 bytes do not match the hash published before booking: their hash is ${difference.found}.`;
  const name = nameOf(difference.id);
  switch (difference.code) {
    case 'claim-changed':
      return `${name}: the claim is not what was frozen when booking closed.`;
    case 'claim-missing':
      return `${name}: booked when booking closed, and not among the claims.`;
    case 'not-claimed':
      return `${name}: the page shows a share, and there is no claim for it.`;
    case 'not-shown':
      return `${name}: has a claim, and the page shows no share for it.`;
    case 'share':
      return `${name}: the page shows a share of ${difference.shown}, your browser reaches ${difference.found}.`;
    case 'due':
      return `${name}: ${creditsDiffer('due is', difference)}`;
    case 'credit':
      return `${name}: ${creditsDiffer('owed after', difference)}`;
  }
}

// Hundredths may look alike: the millionths beside them do not.
function creditsDiffer(what: string, { shown, found }: { readonly shown: number; readonly found: number }): string {
  const exact = (millionths: number) => `${creditWords(millionths)} (${millionths} millionths of a load)`;
  return `${what} ${exact(shown)} on the page, ${exact(found)} in your browser.`;
}
