import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { whenWords } from '@/app/_ui/delivery-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readSeedOrder } from '@/lib/usecases/seed/read-orders';
import { HowItIsSplit } from '@/app/_ui/seed-split';
import { ListSheet } from './_parts/list-sheet';
import { OutcomeSheet } from './_parts/outcome-sheet';
import { leadOf } from './_parts/lead-of';

export const metadata: Metadata = { title: 'Order of seed' };

type Props = {
  params: Promise<{ society: string; order: string }>;
  searchParams: Promise<{ holding?: string }>;
};

export default async function SeedOrderPage({ params, searchParams }: Props) {
  const { society, order: orderId } = await params;
  const { holding } = await searchParams;
  const read = await ask(readSeedOrder, society, { orderId, holdingId: holding || null });
  const { order, items, claims, timeZone, keeps } = read;
  return (
    <>
      <PageHead title={order.name} lead={leadOf(order.state, whenWords(order.closesAt, timeZone))}>
        <Link className="button" href={`/${society}/seed/orders`}>
          All orders
        </Link>
        {keeps ? (
          <Link className="button" href={`/${society}/office/seed/${order.id}`}>
            Run it
          </Link>
        ) : null}
      </PageHead>
      <div className="stack">
        {claims.map((claim) =>
          order.state === 'open' ? (
            <ListSheet key={claim.holding.id} society={society} order={order} items={items} claim={claim} />
          ) : (
            <OutcomeSheet key={claim.holding.id} society={society} order={order} items={items} claim={claim} />
          ),
        )}
        {claims.length === 0 ? (
          <Empty>You hold no plot at present, and seed is ordered by plot. Ask the secretary.</Empty>
        ) : null}
      </div>
      <div className="stack">
        {order.notes ? (
          <Sheet title="Notes">
            {order.notes.split('\n').map((line, at) => (
              <p key={at}>{line}</p>
            ))}
          </Sheet>
        ) : null}
        <HowItIsSplit />
      </div>
    </>
  );
}
