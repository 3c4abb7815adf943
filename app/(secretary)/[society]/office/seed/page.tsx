import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { whenWords } from '@/app/_ui/delivery-words';
import { Form } from '@/app/_ui/form';
import { seedOrderWords } from '@/app/_ui/seed-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { readOfficeSeed } from '@/lib/usecases/seed/read-office-order';
import { FactsFields } from './_parts/facts-fields';
import { planAction } from './actions';

export const metadata: Metadata = { title: 'Orders of seed' };

export default async function OfficeSeedPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { orders, timeZone } = await ask(readOfficeSeed, society);
  return (
    <>
      <PageHead
        title="Running the orders of seed"
        lead="Members’ lists pooled, bought in whole packs, handed out, and charged to the penny."
      />
      <div className="stack">
        {orders.length === 0 ? (
          <Empty>None yet. Plan one: a name and a closing time are enough; then say what can be ordered.</Empty>
        ) : (
          <Sheet title="All of them" flush>
            <Table
              caption="Orders of seed"
              columns={[
                { head: 'order' },
                { head: 'lists close' },
                { head: 'state' },
                { head: 'holdings', number: true },
              ]}
              rows={orders.map(({ id, name, state, closesAt, holdings }) => ({
                key: id,
                mine: state !== 'settled' && state !== 'called-off',
                cells: [
                  <Link key="name" href={`/${society}/office/seed/${id}`}>
                    {name}
                  </Link>,
                  whenWords(closesAt, timeZone),
                  seedOrderWords(state),
                  holdings,
                ],
              }))}
            />
          </Sheet>
        )}
      </div>
      <Sheet title="Plan an order">
        <Form
          action={planAction.bind(null, society)}
          writeId={randomUUID()}
          submit="Plan it"
          labels={{ name: 'Name', closesAt: 'Lists close' }}
        >
          <FactsFields />
        </Form>
      </Sheet>
    </>
  );
}
