import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { TextField, TickField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { HeldNotice } from '@/app/_ui/held-notice';
import { NeedReason } from '@/app/_ui/need-reason';
import { Caution, Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { formatMass } from '@/lib/domain/quantity/load';
import { readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import { readDeliveryTests } from '@/lib/usecases/residue/read-tests';
import { TestList } from '../../_parts/residue-list';
import { WaitingList } from './_parts/waiting-list';
import { unloadAction, bookAction, withdrawAction } from '../actions';
import { dayWords, loadsWords, reasonWords, stateWords, whenWords } from '@/app/_ui/delivery-words';
import { plotNumbers } from '@/app/_ui/plot-numbers';

export const metadata: Metadata = { title: 'Delivery' };

type Read = Awaited<ReturnType<typeof readDelivery.run>>;
type Props = { params: Promise<{ society: string; delivery: string }> };

export default async function DeliveryPage({ params }: Props) {
  const { society, delivery: deliveryId } = await params;
  const [read, { tests }] = await Promise.all([
    ask(readDelivery, society, { deliveryId }),
    ask(readDeliveryTests, society, { deliveryId }),
  ]);
  const { delivery, timeZone, claims, totals, waiting, runs, ticks } = read;
  const lead =
    delivery.state === 'open'
      ? `Booking closes on ${whenWords(delivery.closesAt, timeZone)}.`
      : `It is ${stateWords(delivery.state)}.`;
  const isShared = ['shared', 'collecting', 'settled'].includes(delivery.state);
  return (
    <>
      <PageHead title={delivery.name} lead={lead}>
        {delivery.lot?.bytesHex ? (
          <Link className="button" href={`/${society}/deliveries/${deliveryId}/queue`}>
            The whole queue
          </Link>
        ) : null}
        {ticks && ['shared', 'collecting'].includes(delivery.state) ? (
          <Link className="button" href={`/${society}/deliveries/${deliveryId}/collect`}>
            At the heap
          </Link>
        ) : null}
        {runs ? (
          <Link className="button" href={`/${society}/office/deliveries/${deliveryId}`}>
            Run this delivery
          </Link>
        ) : null}
      </PageHead>
      <HeldNotice held={delivery.held} state={delivery.state} timeZone={timeZone} />
      <div className="stack">
        {claims.length === 0 ? <Empty>You hold no plot, so there is nothing to book for.</Empty> : null}
        {claims.map((claim) =>
          waiting.mayJoin && (!claim.booking || claim.booking.lateAt) ? (
            <WaitingList key={claim.holding.id} claim={claim} society={society} read={read} />
          ) : isShared ? (
            <ShareSheet key={claim.holding.id} claim={claim} society={society} delivery={delivery} />
          ) : (
            <BookSheet key={claim.holding.id} claim={claim} society={society} read={read} />
          ),
        )}
      </div>
      <div className="stack">
        <Facts read={read} />
        <Sheet title="Weedkiller residues">
          {tests.length ? (
            <TestList society={society} tests={tests} />
          ) : (
            <p>Nobody has tested it for residues. Bought-in manure can carry weedkiller.</p>
          )}
          <p className="actions">
            <Link className="button" href={`/${society}/deliveries/${deliveryId}/residue`}>
              {tests.length ? 'The tests' : 'Test it'}
            </Link>
          </p>
        </Sheet>
        <Sheet title="So far">
          <p>
            {totals.claims} holdings ask for {loadsWords(totals.asked)}; their ground needs {loadsWords(totals.need)}.
            {totals.late.claims
              ? ` On the waiting list: ${totals.late.claims}, for ${loadsWords(totals.late.asked)}.`
              : ''}
          </p>
        </Sheet>
        {delivery.lot ? (
          <Sheet title="The lot">
            <p className="small">
              Thirty-two bytes were drawn when booking opened and shown to nobody. This is their SHA-256, so that they
              cannot be changed: <code>{delivery.lot.commitment}</code>
            </p>
            <p className="small">
              They are published with the first preview. Whoever runs the server could still cheat;{' '}
              <Link href="/help">how far to trust it</Link>.
            </p>
          </Sheet>
        ) : null}
        <Unloading read={read} society={society} />
      </div>
    </>
  );
}

function BookSheet({ claim, society, read }: { claim: Read['claims'][number]; society: string; read: Read }) {
  const { holding, need, booking, mayBook } = claim;
  const { delivery, units } = read;
  const isOpen = delivery.state === 'open';
  const plots = plotNumbers(holding.plots);
  const beds = need?.lines.filter(({ kind, massG }) => kind === 'bed' && massG > 0) ?? [];
  const bound = [null, society, delivery.id, holding.id] as const;
  return (
    <Sheet
      title={booking ? `You ask for ${loadsWords(booking.asked)}` : `What plot ${plots} needs`}
      aside={booking ? <span className="soft">plot {plots}</span> : null}
    >
      {need ? (
        <>
          <p>
            Your ground needs <strong>{loadsWords(need.loads)}</strong> for {need.season}.
          </p>
          <Reason ask={`Why ${need.loads}?`}>
            <NeedReason need={need} units={units} />
          </Reason>
        </>
      ) : null}
      {booking?.fromStanding ? (
        <p className="soft">
          Booked by your <Link href={`/${society}/deliveries/standing`}>standing booking</Link>; change it here for this
          delivery alone.
        </p>
      ) : null}
      {isOpen && mayBook ? (
        <Form
          action={bookAction.bind(...bound)}
          writeId={randomUUID()}
          submit={booking ? 'Change the booking' : 'Book'}
          labels={{ asked: 'Loads' }}
        >
          <TextField
            name="asked"
            label="Barrow-loads you ask for"
            value={String(booking?.asked ?? Math.min(need?.loads || 1, delivery.capLoads ?? 9999))}
            inputMode="numeric"
            className="short-field"
            hint={`${delivery.capLoads ? `At most ${delivery.capLoads} a holding. ` : ''}What goes beyond your need comes after everybody’s needs.`}
          />
          {beds.length ? (
            <TickGroup
              name="beds"
              kind="checkbox"
              legend="For which beds? Loads collected reset their turn, in this order."
            >
              {beds.map(({ id, label, plotNumber, massG }) => (
                <TickField
                  key={id}
                  name="beds"
                  value={id}
                  label={`plot ${plotNumber}, bed ${label}: ${formatMass(massG)}`}
                  ticked={booking ? booking.bedIds.includes(id) : true}
                />
              ))}
            </TickGroup>
          ) : null}
        </Form>
      ) : null}
      {isOpen && !mayBook ? (
        <p className="soft">
          The secretary has named{' '}
          {holding.members.find(({ id }) => id === holding.bookerMemberId)?.name ?? 'one holder'} to book for this
          holding.
        </p>
      ) : null}
      {isOpen && mayBook && booking ? (
        <Reason ask="Withdraw it">
          <Form action={withdrawAction.bind(...bound)} writeId={randomUUID()} submit="Yes, withdraw the booking" danger>
            {null}
          </Form>
        </Reason>
      ) : null}
      {!isOpen && !booking ? <p className="soft">Nothing was booked for plot {plots}.</p> : null}
      <Caution>
        A barrow-load of this weighs about {formatMass(delivery.barrowLitres * delivery.densityGPerL)}. Push half-loads
        where a full one strains you; gloves on, and wash your hands before you eat.
      </Caution>
    </Sheet>
  );
}

function ShareSheet({
  claim,
  society,
  delivery,
}: {
  claim: Read['claims'][number];
  society: string;
  delivery: Read['delivery'];
}) {
  const { booking, holding } = claim;
  const plots = plotNumbers(holding.plots);
  if (!booking)
    return (
      <Sheet title={`Plot ${plots}`}>
        <p className="soft">Nothing was booked.</p>
      </Sheet>
    );
  const share = booking.share ?? 0;
  return (
    <Sheet title={`Your share: ${loadsWords(share)}`} aside={<span className="soft">plot {plots}</span>}>
      <p>
        Because:{' '}
        {booking.reason ? reasonWords(booking.reason, booking.creditBeforeMillionths ?? 0) : 'not shared out yet'}. You
        asked for {booking.asked} and needed {booking.needLoads}.
      </p>
      <p>
        {booking.collectedLoads} of {share} collected
        {delivery.state === 'settled' ? '' : `; collect by ${dayWords(delivery.collectByOn)}`}.
      </p>
      {['shared', 'collecting'].includes(delivery.state) ? (
        <p className="actions">
          <Link className="button first" href={`/${society}/deliveries/${delivery.id}/collect`}>
            At the heap
          </Link>
        </p>
      ) : null}
    </Sheet>
  );
}

function Facts({ read: { delivery, keyHolder, timeZone } }: { read: Read }) {
  const { thousandths, unit } = delivery.amount;
  const amount = `${(thousandths / 1000).toLocaleString('en-GB')} ${unit === 'm3' ? 'm³' : unit}`;
  const facts: [string, string | null][] = [
    ['material', `${delivery.material}${delivery.ageMonths === null ? '' : `, ${delivery.ageMonths} months old`}`],
    ['from', delivery.supplier],
    ['amount', `${amount}, about ${loadsWords(delivery.expectedLoads)}`],
    [
      'heap',
      delivery.heapLoads === null
        ? null
        : `${loadsWords(delivery.heapLoads)} as measured, ${delivery.collectedLoads} collected`,
    ],
    ['comes', dayWords(delivery.arrivesOn)],
    ['booking closes', whenWords(delivery.closesAt, timeZone)],
    ['collect by', dayWords(delivery.collectByOn)],
    ['drop point', delivery.dropPoint],
    ['key-holder', keyHolder],
    ['at the gate', delivery.gateNote],
    ['price', delivery.priceMinor ? `£${(delivery.priceMinor / 100).toFixed(2)}, split by loads taken` : null],
    ['barrow-load', `${delivery.barrowLitres} L, about ${formatMass(delivery.barrowLitres * delivery.densityGPerL)}`],
  ];
  return (
    <Sheet title="The load">
      <dl>
        {facts.map(([name, value]) =>
          value ? [<dt key={name}>{name}</dt>, <dd key={`${name} is`}>{value}</dd>] : null,
        )}
      </dl>
    </Sheet>
  );
}

function Unloading({ read: { delivery, unloaders, iUnload }, society }: { read: Read; society: string }) {
  if (!delivery.unloadersWanted || !['open', 'closed', 'tipped'].includes(delivery.state)) return null;
  return (
    <Sheet title="Unloading">
      <p>
        {delivery.unloadersWanted} wanted; {unloaders.length ? unloaders.join(', ') : 'nobody yet'}.
      </p>
      <Form
        action={unloadAction.bind(null, society, delivery.id)}
        writeId={randomUUID()}
        submit={iUnload ? 'I can’t after all' : 'I can help'}
      >
        <input type="hidden" name="offers" value={iUnload ? '' : 'yes'} />
      </Form>
    </Sheet>
  );
}
