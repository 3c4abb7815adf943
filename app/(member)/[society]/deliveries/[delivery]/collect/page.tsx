import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { loadsWords } from '@/app/_ui/delivery-words';
import { LoadCaution } from '@/app/_ui/load-caution';
import { Caution, Empty, PageHead } from '@/app/_ui/sheet';
import { readCollecting } from '@/lib/usecases/deliveries/read-collecting';
import { GateList } from './_parts/gate-list';
import { Mine } from './_parts/mine';
import { OneMore } from './_parts/one-more';
import { RunsShort, WhatIsLeft } from './_parts/what-is-left';

export const metadata: Metadata = { title: 'At the heap' };

type Search = { gaveUp?: string; plot?: string | string[] };
type Props = { params: Promise<{ society: string; delivery: string }>; searchParams: Promise<Search> };

export default async function CollectPage({ params, searchParams }: Props) {
  const { society, delivery: deliveryId } = await params;
  const { gaveUp, plot: typed = '' } = await searchParams;
  const plot = ([typed].flat()[0] ?? '').slice(0, 20);
  const read = await ask(readCollecting, society, { deliveryId });
  const { delivery, rows, ticks } = read;
  const left = (delivery.heapLoads ?? 0) - delivery.collectedLoads;
  const isOn = ['shared', 'collecting'].includes(delivery.state);
  const mine = isOn ? rows.filter(({ isMine }) => isMine) : [];
  const atHand = mine.find(({ share, collected }) => collected < share);
  return (
    <>
      <PageHead
        title="At the heap"
        lead={`${delivery.name}: ${left} of ${loadsWords(delivery.heapLoads ?? 0, delivery.loadUnit)} left.`}
      >
        <Link className="button" href={`/${society}/deliveries/${deliveryId}`}>
          Back
        </Link>
        {isOn && ticks ? (
          <a className="button" href="#by-plot">
            By plot
          </a>
        ) : null}
      </PageHead>
      {Number(gaveUp) > 0 ? (
        <p className="notice kept wide" role="status">
          Given up: {Number(gaveUp)}. They go to whoever comes next in the queue.
        </p>
      ) : null}
      {isOn ? <RunsShort society={society} read={read} /> : null}
      {!isOn ? (
        <Empty>
          There is nothing to tick off now. Loads are ticked off once the delivery is shared out, and until it is
          settled.
        </Empty>
      ) : null}
      <div className="stack">
        {isOn && mine.length === 0 && !ticks ? <Empty>You have no share of this delivery.</Empty> : null}
        {mine.map((row) => (
          <Mine key={row.bookingId} society={society} read={read} row={row} />
        ))}
      </div>
      <div className="stack">
        {isOn ? <WhatIsLeft society={society} read={read} /> : null}
        <Caution>
          <LoadCaution load={delivery} />
        </Caution>
      </div>
      {isOn && ticks ? <GateList society={society} read={read} plot={plot} /> : null}
      {atHand ? (
        <OneMore society={society} delivery={delivery} row={atHand} several={mine.length > 1 || ticks} />
      ) : null}
    </>
  );
}
