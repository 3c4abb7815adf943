import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { listDeliveries } from '@/lib/usecases/deliveries/read-deliveries';
import { dayWords, loadsWords, stateWords, whenWords } from '@/app/_ui/delivery-words';

export const metadata: Metadata = { title: 'Deliveries' };

export default async function DeliveriesPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { deliveries, timeZone, readsSeason } = await ask(listDeliveries, society);
  const open = deliveries.find(({ state }) => state === 'open');
  return (
    <>
      <PageHead
        title="Deliveries"
        lead={
          open
            ? `“${open.name}” is open for booking until ${whenWords(open.closesAt, timeZone)}.`
            : 'Nothing is open for booking at present.'
        }
      >
        <Link className="button" href={`/${society}/deliveries/credits`}>
          Credits
        </Link>
        <Link className="button" href={`/${society}/money`}>
          Your account
        </Link>
        {readsSeason ? (
          <Link className="button" href={`/${society}/deliveries/season`}>
            After the season
          </Link>
        ) : null}
        <Link className="button" href={`/${society}/deliveries/standing`}>
          Standing bookings
        </Link>
        <Link className="button" href={`/${society}/measures`}>
          Measures
        </Link>
      </PageHead>
      {deliveries.length === 0 ? (
        <Empty>No delivery yet. The secretary plans one; you will be told when booking opens.</Empty>
      ) : null}
      <Sheet title="All deliveries" flush wide>
        <Table
          caption="Deliveries"
          columns={[
            { head: 'delivery' },
            { head: 'comes' },
            { head: 'state' },
            { head: 'heap', number: true },
            { head: 'yours' },
          ]}
          rows={deliveries.map(
            ({ id, name, material, arrivesOn, state, heapLoads, expectedLoads, loadUnit, mine, held, comesWith }) => ({
              key: id,
              mine: state === 'open',
              cells: [
                <div key="name">
                  <Link href={`/${society}/deliveries/${id}`}>{name}</Link>
                  <div className="small soft">
                    {material}
                    {comesWith.length ? `, comes with ${comesWith.join(', ')}` : ''}
                  </div>
                </div>,
                dayWords(arrivesOn),
                `${stateWords(state)}${held && state !== 'called_off' ? '; held' : ''}`,
                heapLoads === null ? `about ${loadsWords(expectedLoads, loadUnit)}` : loadsWords(heapLoads, loadUnit),
                mine
                  .map((booking) =>
                    booking.share === null
                      ? `${loadsWords(booking.asked, loadUnit)} asked`
                      : `share ${booking.share}, ${booking.collectedLoads} collected`,
                  )
                  .join('; ') || '–',
              ],
            }),
          )}
        />
      </Sheet>
    </>
  );
}
