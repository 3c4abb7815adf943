'use client';

import { useState, useSyncExternalStore } from 'react';
import { type Difference, type ShareOutInputs, type ShownShare, workAgain } from '@/lib/domain/sharing/work-again';
import { differenceWords } from './difference-words';

type Props = {
  readonly inputs: ShareOutInputs;
  readonly shown: readonly ShownShare[];
  /** Plots by claim. */
  readonly names: Readonly<Record<string, string>>;
};

const never = () => () => undefined;

type Found = { readonly differences: readonly Difference[] } | { readonly broken: string };

/** Works the share-out out again in the reader's own browser, and says whether it comes to what the page shows. */
export function WorkAgain({ inputs, shown, names }: Props) {
  const [found, setFound] = useState<Found | null>(null);
  const hasScript = useSyncExternalStore(
    never,
    () => true,
    () => false,
  );
  if (!hasScript) return <p className="no-print">Your browser can do it as well, with script on. Without it, count.</p>;
  return (
    <>
      <p className="no-print">
        Or let your own browser run the same rule on the same figures, and compare it with every share on this page.
      </p>
      <p className="no-print">
        <button type="button" className="button" onClick={() => setFound(tried(inputs, shown))}>
          Work it out again
        </button>
      </p>
      <div role="status">{found ? <Answer found={found} count={shown.length} names={names} /> : null}</div>
    </>
  );
}

// What the sums refuse (a fraction of a load, a heap smaller than what was collected) is an answer as well.
function tried(inputs: ShareOutInputs, shown: readonly ShownShare[]): Found {
  try {
    return { differences: workAgain(inputs, shown).differences };
  } catch (error) {
    if (error instanceof RangeError) return { broken: error.message };
    throw error;
  }
}

function Answer({ found, count, names }: { found: Found; count: number; names: Props['names'] }) {
  if ('broken' in found)
    return <p className="notice short">It cannot be worked out again from these figures: {found.broken}.</p>;
  const { differences } = found;
  const shares = `${count} ${count === 1 ? 'share' : 'shares'}`;
  if (differences.length === 0)
    return (
      <p className="notice kept">
        Your browser reaches the same: {shares}, no difference; the 32 bytes match the hash published before booking.
      </p>
    );
  return (
    <div className="notice short">
      <p>
        <strong>Your browser reaches something else</strong> ({differences.length}{' '}
        {differences.length === 1 ? 'difference' : 'differences'} in {shares}). Show this to the committee.
      </p>
      <ul>
        {differences.map((difference) => {
          const words = differenceWords(difference, (id) => names[id] ?? 'a claim that is not on this page');
          return <li key={`${difference.code} ${'id' in difference ? difference.id : ''}`}>{words}</li>;
        })}
      </ul>
    </div>
  );
}
