import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Caution, Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { loadsWords, unitWord } from '@/app/_ui/delivery-words';
import { LoadCaution } from '@/app/_ui/load-caution';
import { readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import { readCollecting } from '@/lib/usecases/deliveries/read-collecting';
import { giveUpAction, tickAction, undoAction } from '../../actions';

export const metadata: Metadata = { title: 'At the heap' };

type Props = { params: Promise<{ society: string; delivery: string }>; searchParams: Promise<{ gaveUp?: string }> };

export default async function CollectPage({ params, searchParams }: Props) {
  const { society, delivery: deliveryId } = await params;
  const gaveUp = Number((await searchParams).gaveUp ?? 0);
  const [{ delivery, ticks }, rows] = await Promise.all([
    ask(readDelivery, society, { deliveryId }),
    ask(readCollecting, society, { deliveryId }),
  ]);
  const left = (delivery.heapLoads ?? 0) - delivery.collectedLoads;
  const isOn = ['shared', 'collecting'].includes(delivery.state);
  const bound = (bookingId: string) => [null, society, deliveryId, bookingId] as const;
  return (
    <>
      <PageHead
        title="At the heap"
        lead={`${delivery.name}: ${left} of ${loadsWords(delivery.heapLoads ?? 0, delivery.loadUnit)} left.`}
      >
        <Link className="button" href={`/${society}/deliveries/${deliveryId}`}>
          Back
        </Link>
      </PageHead>
      {gaveUp > 0 ? (
        <p className="notice kept wide" role="status">
          Given up: {gaveUp}. They go to whoever comes next in the queue.
        </p>
      ) : null}
      {!isOn ? (
        <Empty>
          There is nothing to tick off now. Loads are ticked off once the delivery is shared out, and until it is
          settled.
        </Empty>
      ) : null}
      {isOn && rows.length === 0 ? <Empty>You have no share of this delivery.</Empty> : null}
      <div className="stack wide">
        {isOn
          ? rows.map(({ bookingId, plots, names, share, collected }) => (
              <Sheet
                key={bookingId}
                title={`Plot ${plots}`}
                aside={<span className="figure">{`${collected} of ${share}`}</span>}
              >
                {ticks ? <p className="soft">{names}</p> : null}
                {collected < share ? (
                  <Form action={tickAction.bind(...bound(bookingId))} writeId={randomUUID()} className="form">
                    <button type="submit" name="loads" value="1" className="button first big">
                      One more {unitWord(delivery.loadUnit)}
                    </button>
                  </Form>
                ) : (
                  <p className="notice kept">All {share} collected.</p>
                )}
                <div className="row" style={{ marginTop: '0.8rem' }}>
                  {collected > 0 ? (
                    <Form action={undoAction.bind(...bound(bookingId))} writeId={randomUUID()} className="inline-form">
                      <button type="submit" className="button">
                        Undo the last
                      </button>
                    </Form>
                  ) : null}
                </div>
                {collected < share ? (
                  <Reason ask="Several at once, or no more wanted">
                    <Form
                      action={tickAction.bind(...bound(bookingId))}
                      writeId={randomUUID()}
                      submit="Tick these off"
                      className="form"
                    >
                      <TextField
                        name="loads"
                        label={delivery.loadUnit === 'bale' ? 'Bales' : 'Loads'}
                        value={String(share - collected)}
                        inputMode="numeric"
                        className="short-field"
                      />
                    </Form>
                    <Form
                      action={giveUpAction.bind(...bound(bookingId))}
                      writeId={randomUUID()}
                      submit={`Give up the other ${share - collected}`}
                      danger
                      className="form"
                    >
                      <p style={{ marginTop: '1rem' }}>
                        They go to whoever comes next in the queue. This cannot be taken back.
                      </p>
                    </Form>
                  </Reason>
                ) : null}
              </Sheet>
            ))
          : null}
        <Caution>
          <LoadCaution load={delivery} />
        </Caution>
      </div>
    </>
  );
}
