import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { dayWords, loadsWords, reasonWords, unitWord } from '@/app/_ui/delivery-words';
import { plotNumbers } from '@/app/_ui/plot-numbers';
import { readGateList } from '@/lib/usecases/deliveries/read-deliveries';
import { PaperSheet } from '@/app/_ui/paper-sheet';

export const metadata: Metadata = { title: 'Share list' };

const boxes = 12;

export default async function ShareListPage({ params }: { params: Promise<{ society: string; delivery: string }> }) {
  const { society, delivery: deliveryId } = await params;
  const { delivery, rows } = await ask(readGateList, society, { deliveryId });
  // Those who came late stand last, as they came.
  const claims = rows
    .flatMap(({ holding, booking }) => (booking ? [{ holding, booking }] : []))
    .sort((one, other) => Number(one.booking.lateAt ?? 0) - Number(other.booking.lateAt ?? 0));
  return (
    <PaperSheet
      title={`Shares: ${delivery.name}`}
      lead={`${loadsWords(delivery.heapLoads ?? 0, delivery.loadUnit)} in the heap. Collect by ${dayWords(delivery.collectByOn)}. Tick a box for each ${unitWord(delivery.loadUnit)}.`}
      caption="Shares, with boxes to tick"
      columns={[
        { head: 'plot' },
        { head: 'holder' },
        { head: 'share', number: true },
        { head: 'collected' },
        { head: 'because' },
      ]}
      rows={claims.map(({ holding, booking }) => ({
        key: holding.id,
        cells: [
          <b key="plot">{plotNumbers(holding.plots)}</b>,
          `${holding.members.map(({ name }) => name).join(', ')}${holding.members.some(({ canBeMailed }) => canBeMailed) ? '' : ' (tell them)'}`,
          <b key="share">{booking.share ?? 0}</b>,
          <Boxes key="boxes" share={booking.share ?? 0} collected={booking.collectedLoads} />,
          <span key="because" className="small">
            {booking.reason ? reasonWords(booking.reason, booking.creditBeforeMillionths ?? 0) : ''}
          </span>,
        ],
      }))}
    />
  );
}

function Boxes({ share, collected }: { share: number; collected: number }) {
  const shown = Math.min(share, boxes);
  return (
    <span aria-label={`${collected} of ${share} collected`} style={{ letterSpacing: '0.15em' }}>
      {'☒'.repeat(Math.min(collected, shown))}
      {'☐'.repeat(Math.max(0, shown - collected))}
      {share > boxes ? ` of ${share}` : ''}
    </span>
  );
}
