import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { dayWords, stateWords } from '@/app/_ui/delivery-words';
import { listDeliveries } from '@/lib/usecases/deliveries/read-deliveries';

export const metadata: Metadata = { title: 'Deliveries' };

export default async function OfficeDeliveriesPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { deliveries } = await ask(listDeliveries, society);
  return (
    <>
      <PageHead title="Running the deliveries">
        <Link className="button first" href={`/${society}/office/deliveries/new`}>
          Plan a delivery
        </Link>
      </PageHead>
      {deliveries.length === 0 ? (
        <Empty>None yet. Plan one: material, amount, day and closing time are enough.</Empty>
      ) : null}
      <Sheet title="All of them" flush wide>
        <Table
          caption="Deliveries"
          columns={[{ head: 'delivery' }, { head: 'comes' }, { head: 'state' }]}
          rows={deliveries.map(({ id, name, arrivesOn, state, comesWith }) => ({
            key: id,
            mine: !['settled', 'called_off'].includes(state),
            cells: [
              <div key="name">
                <Link href={`/${society}/office/deliveries/${id}`}>{name}</Link>
                {comesWith.length ? <div className="small soft">comes with {comesWith.join(', ')}</div> : null}
              </div>,
              dayWords(arrivesOn),
              stateWords(state),
            ],
          }))}
        />
      </Sheet>
    </>
  );
}
