import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { creditWords, loadsWords, unitWord } from '@/app/_ui/delivery-words';
import { HeldNotice } from '@/app/_ui/held-notice';
import { PrintButton } from '@/app/_ui/print-button';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readQueue } from '@/lib/usecases/deliveries/read-queue';
import { LotChecked } from './_parts/lot-checked';
import { OddLoads } from './_parts/odd-loads';
import { OwnShare } from './_parts/own-share';
import { QueueByRounds } from './_parts/queue-by-rounds';
import { endWords, holdingWords, shortQueueWords } from './_parts/queue-words';
import { RoundsTable } from './_parts/rounds-table';
import { SharesTable } from './_parts/shares-table';
import { WorkAgain } from './_parts/work-again';

export const metadata: Metadata = { title: 'The queue' };

export default async function QueuePage({ params }: { params: Promise<{ society: string; delivery: string }> }) {
  const { society, delivery: deliveryId } = await params;
  const { delivery, result, timeZone } = await ask(readQueue, society, { deliveryId });
  const back = (
    <Link className="button" href={`/${society}/deliveries/${deliveryId}`}>
      Back to the delivery
    </Link>
  );
  const held = <HeldNotice held={delivery.held} state={delivery.state} timeZone={timeZone} />;
  if (!result)
    return (
      <>
        <PageHead title={`The queue of ${delivery.name}`}>{back}</PageHead>
        {held}
        <Empty>
          The queue is made when booking has closed and the secretary opens the first preview. Until then the lot is
          sealed.
        </Empty>
      </>
    );
  const { lines, inputs, ended, provisional, measured, site } = result;
  const unit = delivery.loadUnit;
  const names = Object.fromEntries(lines.map((line) => [line.bookingId, holdingWords(line)]));
  const nameOf = (id: string) => names[id] ?? 'a former holding';
  const parts = { result, unit, nameOf };
  const late = lines.filter((line) => line.late !== null).sort((a, b) => (a.late ?? 0) - (b.late ?? 0));
  const heap = delivery.heapLoads === null ? ' expected' : ' in the heap';
  const again = measured.length > 1 ? ` It was measured ${measured.length} times: ${measured.join(', then ')}.` : '';
  return (
    <div className="queue-paper wide">
      <PageHead
        title={`Share-out: ${delivery.name}`}
        lead={`${provisional ? 'Provisional. ' : ''}${loadsWords(inputs.loads, unit)}${heap}. ${endWords(ended, unit)}${again}`}
      >
        {back}
        <PrintButton>Print the queue</PrintButton>
        <a className="button" href={`/api/queue/${society}/${deliveryId}`} download>
          Its figures, as JSON
        </a>
      </PageHead>
      {held}
      {lines
        .filter(({ mine }) => mine)
        .map((line) => (
          <Sheet key={line.bookingId} title={`Your share: ${holdingWords(line)}`} wide>
            <OwnShare line={line} result={result} unit={unit} />
          </Sheet>
        ))}
      <Sheet title="Is it right?" wide>
        <p>
          By hand: print this page, cross off the places of one holding in the queue below up to place {result.places},
          and count the crosses. That is its share.
        </p>
        <WorkAgain
          inputs={inputs}
          names={names}
          shown={lines.map(({ bookingId: id, share, dueMillionths, creditAfterMillionths }) => ({
            ...{ id, share, dueMillionths, creditAfterMillionths },
          }))}
        />
      </Sheet>
      <Sheet title="Shares" flush wide>
        <SharesTable caption="Shares" lines={lines.filter((line) => line.late === null)} {...parts} />
      </Sheet>
      {late.length ? (
        <Sheet title="Waiting list, in the order of coming" flush wide>
          <SharesTable caption="Shares of the waiting list" lines={late} {...parts} />
        </Sheet>
      ) : null}
      <Sheet title="Rounds" flush wide>
        <RoundsTable {...parts} />
      </Sheet>
      <Sheet title="Where the heap ended" wide>
        <p>
          {endWords(ended, unit)} {shortQueueWords(result, unit)}
        </p>
        <OddLoads {...parts} />
      </Sheet>
      <Sheet title="The queue, place by place" wide>
        <p>
          In each round: owed most first, then the lot{late.length ? '; the waiting list as it came' : ''}. Each place
          is one {unitWord(unit)}.
        </p>
        <QueueByRounds {...parts} />
      </Sheet>
      <Sheet title={`Credits of ${delivery.material} on the site today`} wide>
        <dl>
          <dt>largest that any holding is owed</dt>
          <dd>{creditWords(site.largestMillionths)}</dd>
          <dt>lapsed with former holdings</dt>
          <dd>{creditWords(site.lapsedMillionths)}</dd>
          <dt>all together</dt>
          <dd>
            {creditWords(site.sumMillionths)}
            {site.sumMillionths === 0 ? ', as it must be' : ': it must be 0. Tell the committee.'}
          </dd>
        </dl>
        <p className="no-print">
          <Link href={`/${society}/deliveries/credits`}>Credits of every holding</Link>
        </p>
      </Sheet>
      <Sheet title="The lot, to be checked" wide>
        <LotChecked {...parts} />
      </Sheet>
    </div>
  );
}
