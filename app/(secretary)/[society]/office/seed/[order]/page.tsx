import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { whenWords } from '@/app/_ui/delivery-words';
import { HowItIsSplit } from '@/app/_ui/seed-split';
import { seedOrderWords } from '@/app/_ui/seed-words';
import { PageHead } from '@/app/_ui/sheet';
import { readOfficeSeedOrder } from '@/lib/usecases/seed/read-office-order';
import { Holders } from './_parts/holders';
import { Items } from './_parts/items';
import { ForAnother } from './_parts/for-another';
import { NextStep } from './_parts/next-step';
import { PacksToBuy } from './_parts/packs-to-buy';
import { TickOff } from './_parts/tick-off';

export const metadata: Metadata = { title: 'Run an order of seed' };

const said: Readonly<Record<string, string>> = {
  changed: 'Changed. If the closing time moved, everybody who can be mailed is told.',
  opened: 'Open. Everybody who can be mailed is told.',
  closed: 'The lists are closed.',
  'called-off': 'Called off. Everybody who can be mailed is told; nobody owes anything.',
  ordered: 'Noted as ordered. The lists and the packs are frozen.',
  arrived: 'Ticked off. All wants are met; what each owes is worked out.',
  'arrived-short': 'Ticked off. Some of it came short and is shared out; what each owes is worked out again.',
  settled: 'Settled. It is charged in one entry, and everybody who can be mailed is told what they owe.',
  corrected: 'Taken back. Tick off what came as it should be, then settle it again.',
};

type Props = { params: Promise<{ society: string; order: string }>; searchParams: Promise<{ said?: string }> };

export default async function RunSeedOrderPage({ params, searchParams }: Props) {
  const { society, order: orderId } = await params;
  const told = said[(await searchParams).said ?? ''];
  const read = await ask(readOfficeSeedOrder, society, { orderId });
  const { order, timeZone } = read;
  const { state } = order;
  const isListed = state === 'planned' || state === 'open';
  return (
    <>
      <PageHead
        title={order.name}
        lead={`This order is ${seedOrderWords(state)}. Lists ${isListed ? 'close' : 'closed'} ${whenWords(order.closesAt, timeZone)}${order.seller ? `. Ordered at: ${order.seller}` : ''}.`}
      >
        <Link className="button" href={`/${society}/office/seed`}>
          All orders
        </Link>
        {state === 'arrived' || state === 'settled' ? (
          <Link className="button" href={`/${society}/office/seed/${order.id}/hand-out`}>
            Hand-out list to print
          </Link>
        ) : null}
      </PageHead>
      {told ? (
        <p className="notice kept wide" role="status">
          {told}
        </p>
      ) : null}
      <div className="stack">
        {isListed ? <Items society={society} read={read} /> : null}
        {state === 'ordered' || state === 'arrived' ? <TickOff society={society} read={read} /> : null}
        {state === 'planned' ? null : <PacksToBuy read={read} />}
        {state === 'planned' ? null : <Holders society={society} read={read} />}
      </div>
      <div className="stack">
        <NextStep society={society} read={read} />
        {state === 'open' && read.runsSociety ? <ForAnother society={society} read={read} /> : null}
        <HowItIsSplit />
      </div>
    </>
  );
}
