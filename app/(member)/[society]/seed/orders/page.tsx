import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { whenWords } from '@/app/_ui/delivery-words';
import { seedOrderWords } from '@/app/_ui/seed-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { readSeedOrders } from '@/lib/usecases/seed/read-orders';

export const metadata: Metadata = { title: 'Orders of seed' };

export default async function SeedOrdersPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { orders, timeZone, keeps } = await ask(readSeedOrders, society);
  const open = orders.find(({ state }) => state === 'open');
  return (
    <>
      <PageHead
        title="The society’s orders of seed"
        lead={
          open
            ? `“${open.name}” takes lists until ${whenWords(open.closesAt, timeZone)}.`
            : 'No order takes lists at present.'
        }
      >
        <Link className="button" href={`/${society}/seed`}>
          What I need
        </Link>
        {keeps ? (
          <Link className="button" href={`/${society}/office/seed`}>
            Run the orders
          </Link>
        ) : null}
      </PageHead>
      {orders.length === 0 ? (
        <Empty>
          No order yet. When the secretary opens one you are told, and put your list down here; until then{' '}
          <Link href={`/${society}/seed`}>see what your plan needs</Link>.
        </Empty>
      ) : (
        <Sheet title="All orders" flush wide>
          <Table
            caption="Orders of seed"
            columns={[{ head: 'order' }, { head: 'lists close' }, { head: 'state' }, { head: 'yours', number: true }]}
            rows={orders.map(({ id, name, state, closesAt, mine }) => ({
              key: id,
              mine: state === 'open',
              cells: [
                <Link key="name" href={`/${society}/seed/orders/${id}`}>
                  {name}
                </Link>,
                whenWords(closesAt, timeZone),
                seedOrderWords(state),
                mine ? `${mine} ${mine === 1 ? 'thing' : 'things'}` : 'none',
              ],
            }))}
          />
        </Sheet>
      )}
    </>
  );
}
