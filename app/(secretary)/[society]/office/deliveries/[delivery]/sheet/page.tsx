import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { dayWords, whenWords } from '@/app/_ui/delivery-words';
import { plotNumbers } from '@/app/_ui/plot-numbers';
import { readGateList } from '@/lib/usecases/deliveries/read-deliveries';
import { PaperSheet } from '@/app/_ui/paper-sheet';

export const metadata: Metadata = { title: 'Blank booking sheet' };

export default async function BlankSheetPage({ params }: { params: Promise<{ society: string; delivery: string }> }) {
  const { society, delivery: deliveryId } = await params;
  const { delivery, rows, timeZone } = await ask(readGateList, society, { deliveryId });
  return (
    <PaperSheet
      title={`Bookings: ${delivery.name}`}
      lead={`${delivery.material}, comes ${dayWords(delivery.arrivesOn)}. Hand in by ${whenWords(delivery.closesAt, timeZone)}.${delivery.capLoads ? ` At most ${delivery.capLoads} a holding.` : ''}`}
      caption="Blank booking sheet"
      columns={[
        { head: 'plot' },
        { head: 'holder' },
        { head: 'ground needs', number: true },
        { head: 'I ask for' },
        { head: 'signed' },
      ]}
      rows={rows.map(({ holding, need, booking }) => ({
        key: holding.id,
        cells: [
          <b key="plot">{plotNumbers(holding.plots)}</b>,
          holding.members.map(({ name }) => name).join(', '),
          need,
          booking ? `(${booking.asked} booked)` : '______',
          '______________',
        ],
      }))}
    />
  );
}
