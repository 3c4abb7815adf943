import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { loadsWords, stateWords, whenWords } from '@/app/_ui/delivery-words';
import { HeldNotice } from '@/app/_ui/held-notice';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import { readDeliveryTests } from '@/lib/usecases/residue/read-tests';
import { TestList } from '../../_parts/residue-list';
import { AlsoComes } from './_parts/also-comes';
import { BookSheet } from './_parts/book-sheet';
import { Facts } from './_parts/facts';
import { ShareSheet } from './_parts/share-sheet';
import { Unloading } from './_parts/unloading';
import { WaitingList } from './_parts/waiting-list';

export const metadata: Metadata = { title: 'Delivery' };

type Props = { params: Promise<{ society: string; delivery: string }> };

export default async function DeliveryPage({ params }: Props) {
  const { society, delivery: deliveryId } = await params;
  const [read, { tests }] = await Promise.all([
    ask(readDelivery, society, { deliveryId }),
    ask(readDeliveryTests, society, { deliveryId }),
  ]);
  const { delivery, also, units, timeZone, claims, totals, waiting, runs, ticks } = read;
  const lead =
    delivery.state === 'open'
      ? `Booking closes on ${whenWords(delivery.closesAt, timeZone)}.`
      : `It is ${stateWords(delivery.state)}.`;
  const isShared = ['shared', 'collecting', 'settled'].includes(delivery.state);
  return (
    <>
      <PageHead title={delivery.name} lead={lead}>
        {delivery.lot?.bytesHex ? (
          <Link className="button" href={`/${society}/deliveries/${deliveryId}/queue`}>
            The whole queue
          </Link>
        ) : null}
        {ticks && ['shared', 'collecting'].includes(delivery.state) ? (
          <Link className="button" href={`/${society}/deliveries/${deliveryId}/collect`}>
            At the heap
          </Link>
        ) : null}
        {runs ? (
          <Link className="button" href={`/${society}/office/deliveries/${deliveryId}`}>
            Run this delivery
          </Link>
        ) : null}
      </PageHead>
      <HeldNotice held={delivery.held} state={delivery.state} timeZone={timeZone} />
      <div className="stack">
        {claims.length === 0 ? <Empty>You hold no plot, so there is nothing to book for.</Empty> : null}
        {claims.map((claim) =>
          waiting.mayJoin && (!claim.booking || claim.booking.lateAt) ? (
            <WaitingList key={claim.holding.id} claim={claim} society={society} heap={read} />
          ) : isShared ? (
            <ShareSheet key={claim.holding.id} claim={claim} society={society} delivery={delivery} />
          ) : (
            <BookSheet key={claim.holding.id} claim={claim} society={society} delivery={delivery} units={units} />
          ),
        )}
        {also.map((other) => (
          <AlsoComes key={other.delivery.id} society={society} other={other} units={units} />
        ))}
      </div>
      <div className="stack">
        <Facts read={read} society={society} />
        <Sheet title="Weedkiller residues">
          {tests.length ? (
            <TestList society={society} tests={tests} />
          ) : (
            <p>Nobody has tested it for residues. Bought-in manure and straw can carry weedkiller.</p>
          )}
          <p className="actions">
            <Link className="button" href={`/${society}/deliveries/${deliveryId}/residue`}>
              {tests.length ? 'The tests' : 'Test it'}
            </Link>
          </p>
        </Sheet>
        <Sheet title="So far">
          <p>
            {totals.claims} holdings ask for {loadsWords(totals.asked, delivery.loadUnit)}; their ground needs{' '}
            {loadsWords(totals.need, delivery.loadUnit)}.
            {totals.late.claims
              ? ` On the waiting list: ${totals.late.claims}, for ${loadsWords(totals.late.asked, delivery.loadUnit)}.`
              : ''}
          </p>
        </Sheet>
        {delivery.lot ? (
          <Sheet title="The lot">
            <p className="small">
              Thirty-two bytes were drawn when booking opened and shown to nobody. This is their SHA-256, so that they
              cannot be changed: <code>{delivery.lot.commitment}</code>
            </p>
            <p className="small">
              They are published with the first preview. Whoever runs the server could still cheat;{' '}
              <Link href="/help">how far to trust it</Link>.
            </p>
          </Sheet>
        ) : null}
        <Unloading read={read} society={society} />
      </div>
    </>
  );
}
