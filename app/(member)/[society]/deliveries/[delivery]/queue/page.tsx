import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { HeldNotice } from '@/app/_ui/held-notice';
import { PrintButton } from '@/app/_ui/print-button';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { readQueue } from '@/lib/usecases/deliveries/read-deliveries';
import { creditWords, loadsWords, reasonWords } from '@/app/_ui/delivery-words';

export const metadata: Metadata = { title: 'The queue' };

export default async function QueuePage({ params }: { params: Promise<{ society: string; delivery: string }> }) {
  const { society, delivery: deliveryId } = await params;
  const { delivery, result, mine, timeZone } = await ask(readQueue, society, { deliveryId });
  const back = (
    <Link className="button" href={`/${society}/deliveries/${deliveryId}`}>
      Back to the delivery
    </Link>
  );
  if (!result)
    return (
      <>
        <PageHead title={`The queue of ${delivery.name}`}>{back}</PageHead>
        <HeldNotice held={delivery.held} state={delivery.state} timeZone={timeZone} />
        <Empty>
          The queue is made when booking has closed and the secretary opens the first preview. Until then the lot is
          sealed.
        </Empty>
      </>
    );
  const { lines, places, ended, seed, loads, provisional, canonical, lotOrder } = result;
  const plotsOf = new Map(
    lines.map(({ bookingId, holding }) => [bookingId, holding.plots.map(({ number }) => number).join('+')]),
  );
  const total = (pick: (line: (typeof lines)[number]) => number) => lines.reduce((sum, line) => sum + pick(line), 0);
  const largest = lines.reduce((most, { creditAfterMillionths }) => Math.max(most, creditAfterMillionths), 0);
  return (
    <>
      <PageHead
        title={`Share-out: ${delivery.name}`}
        lead={`${provisional ? 'Provisional. ' : ''}${loadsWords(loads, delivery.loadUnit)}${delivery.heapLoads === null ? ' expected' : ' in the heap'}. ${endWords(ended)}`}
      >
        {back}
        <PrintButton>Print the queue</PrintButton>
      </PageHead>
      <HeldNotice held={delivery.held} state={delivery.state} timeZone={timeZone} />
      <Sheet title="Shares" flush wide>
        <Table
          caption="Shares"
          columns={[
            { head: 'plot' },
            { head: 'asked', number: true },
            { head: 'needs', number: true },
            { head: 'owed before', number: true },
            { head: 'share', number: true },
            { head: 'owed after', number: true },
            { head: 'because' },
          ]}
          rows={lines.map((line) => ({
            key: line.bookingId,
            mine: mine?.includes(line.holding.id) ?? false,
            cells: [
              plotsOf.get(line.bookingId),
              line.asked,
              line.need,
              creditWords(line.creditBeforeMillionths),
              <b key="share">{line.share}</b>,
              creditWords(line.creditAfterMillionths),
              reasonWords(line.reason, line.creditBeforeMillionths),
            ],
          }))}
          foot={[
            `all ${lines.length}`,
            total(({ asked }) => asked),
            total(({ need }) => need),
            '',
            total(({ share }) => share),
            '',
            `largest credit on the site: ${creditWords(largest)} of a load`,
          ]}
        />
      </Sheet>
      <Sheet title="The queue, place by place" wide>
        <p>
          In the order: owed most first, then the lot. Each place is one load. Count the first {loads}: your share is
          how many of them are yours.
          {places.length < loads ? ' The whole queue is shorter than the heap.' : ''}
        </p>
        <QueueList
          places={places}
          plotsOf={plotsOf}
          mine={new Set(lines.filter(({ holding }) => mine?.includes(holding.id)).map(({ bookingId }) => bookingId))}
        />
      </Sheet>
      <Sheet title="The lot, to be checked" wide>
        <dl>
          <dt>published before booking</dt>
          <dd>
            <code>{delivery.lot?.commitment}</code>
          </dd>
          <dt>the 32 bytes</dt>
          <dd>
            <code>{delivery.lot?.bytesHex}</code>
          </dd>
          <dt>seed</dt>
          <dd>
            <code>{seed}</code>
          </dd>
          <dt>order drawn</dt>
          <dd>{lotOrder.map((id) => plotsOf.get(id)).join(', ')}</dd>
        </dl>
        <Reason ask="How to check it with any SHA-256 tool">
          <p>
            The SHA-256 of the 32 bytes (as bytes, not as text) is what was published. The seed is the SHA-256 of those
            bytes followed by this text, in UTF-8, each line ended by a line feed:
          </p>
          <pre className="small" style={{ overflow: 'auto' }}>
            {canonical}
          </pre>
          <p>
            A claim’s rank is the SHA-256 of the text “seed:id”, smallest first. Whoever runs the server knew the bytes
            from the start and could still cheat.
          </p>
        </Reason>
      </Sheet>
    </>
  );
}

type Result = NonNullable<Awaited<ReturnType<typeof readQueue.run>>['result']>;

function QueueList({
  places,
  plotsOf,
  mine,
}: {
  places: Result['places'];
  plotsOf: ReadonlyMap<string, string>;
  mine: ReadonlySet<string>;
}) {
  const rounds = [...new Set(places.map(({ stage, round }) => `${stage} ${round}`))];
  return (
    <div className="table-frame">
      <table>
        <caption className="sr-only">The queue by rounds</caption>
        <tbody>
          {rounds.map((name) => {
            const here = places.filter(({ stage, round }) => `${stage} ${round}` === name);
            return (
              <tr key={name}>
                <th scope="row" style={{ whiteSpace: 'nowrap' }}>
                  {name.replace(' ', ', round ')}
                  <span className="soft">
                    {' '}
                    places {here[0]?.position}–{here.at(-1)?.position}
                  </span>
                </th>
                <td>
                  {here.map(({ position, id }) => (
                    <span
                      key={position}
                      className={mine.has(id) ? 'mark unknown' : undefined}
                      style={{ display: 'inline-block', marginRight: '0.6rem' }}
                    >
                      {plotsOf.get(id)}
                    </span>
                  ))}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

function endWords({ stage, round, contenders, left }: Result['ended']): string {
  if (stage === 'all-met') return 'Everything asked for is met.';
  const where = `The heap ended in round ${round} of ${stage}`;
  return left
    ? `${where}: ${left} ${left === 1 ? 'load' : 'loads'} for ${contenders} claims.`
    : `${where}, to the load.`;
}
