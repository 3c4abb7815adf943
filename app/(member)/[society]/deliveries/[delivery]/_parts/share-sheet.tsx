import Link from 'next/link';
import { dayWords, loadsWords, reasonWords } from '@/app/_ui/delivery-words';
import { plotNumbers } from '@/app/_ui/plot-numbers';
import { Sheet } from '@/app/_ui/sheet';
import type { Read } from './read';

type Props = { claim: Read['claims'][number]; society: string; delivery: Read['delivery'] };

/** A holding's share, why it is what it is, and how much of it is collected. */
export function ShareSheet({ claim, society, delivery }: Props) {
  const { booking, holding } = claim;
  const plots = plotNumbers(holding.plots);
  if (!booking)
    return (
      <Sheet title={`Plot ${plots}`}>
        <p className="soft">Nothing was booked.</p>
      </Sheet>
    );
  const share = booking.share ?? 0;
  return (
    <Sheet
      title={`Your share: ${loadsWords(share, delivery.loadUnit)}`}
      aside={<span className="soft">plot {plots}</span>}
    >
      <p>
        Because:{' '}
        {booking.reason ? reasonWords(booking.reason, booking.creditBeforeMillionths ?? 0) : 'not shared out yet'}. You
        asked for {booking.asked} and needed {booking.needLoads}.
      </p>
      <p>
        {booking.collectedLoads} of {share} collected
        {delivery.state === 'settled' ? '' : `; collect by ${dayWords(delivery.collectByOn)}`}.
      </p>
      {delivery.state === 'settled' && delivery.priceMinor ? (
        <p>
          What you pay for them, and why, stands on <Link href={`/${society}/money`}>your account</Link>.
        </p>
      ) : null}
      {['shared', 'collecting'].includes(delivery.state) ? (
        <p className="actions">
          <Link className="button first" href={`/${society}/deliveries/${delivery.id}/collect`}>
            At the heap
          </Link>
        </p>
      ) : null}
    </Sheet>
  );
}
