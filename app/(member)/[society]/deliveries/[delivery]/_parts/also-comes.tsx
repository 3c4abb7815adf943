import Link from 'next/link';
import { stateWords } from '@/app/_ui/delivery-words';
import { BookSheet } from './book-sheet';
import type { Read } from './read';
import { WaitingList } from './waiting-list';

/** What comes on the same lorry: booked from the same page, each by its own form. */
export function AlsoComes({
  society,
  other,
  units,
}: {
  society: string;
  other: Read['also'][number];
  units: Read['units'];
}) {
  const { delivery, claims } = other;
  return (
    <>
      <p>
        It comes with <Link href={`/${society}/deliveries/${delivery.id}`}>{delivery.name}</Link> (
        {delivery.material.toLowerCase()}, {stateWords(delivery.state)}).
      </p>
      {delivery.state === 'open'
        ? claims.map((claim) => (
            <BookSheet
              key={claim.holding.id}
              claim={claim}
              society={society}
              delivery={delivery}
              units={units}
              isOther
            />
          ))
        : claims
            .filter(({ booking }) => other.waiting.mayJoin && (!booking || booking.lateAt))
            .map((claim) => <WaitingList key={claim.holding.id} claim={claim} society={society} heap={other} />)}
    </>
  );
}
