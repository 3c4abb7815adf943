import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { TextField, TickField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { HeldNotice } from '@/app/_ui/held-notice';
import { NeedReason } from '@/app/_ui/need-reason';
import { Caution, Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { LoadCaution } from '@/app/_ui/load-caution';
import { formatMass } from '@/lib/domain/quantity/load';
import { loadMassG } from '@/lib/domain/quantity/load-mass';
import { readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import { readDeliveryTests } from '@/lib/usecases/residue/read-tests';
import { TestList } from '../../_parts/residue-list';
import { WaitingList } from './_parts/waiting-list';
import { unloadAction, bookAction, withdrawAction } from '../actions';
import { dayWords, loadsWords, reasonWords, stateWords, whenWords, unitWord } from '@/app/_ui/delivery-words';
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
  const { delivery, also, units, timeZone, claims, totals, waiting, runs, ticks } = read;
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
            <WaitingList key={claim.holding.id} claim={claim} society={society} heap={read} />
          ) : isShared ? (
            <ShareSheet key={claim.holding.id} claim={claim} society={society} delivery={delivery} />
          ) : (
            <BookSheet key={claim.holding.id} claim={claim} society={society} delivery={delivery} units={units} />
          ),
        )}
        {also.map((other) => (
          <AlsoComes key={other.delivery.id} society={society} other={other} units={units} />
        ))}
      </div>
      <div className="stack">
        <Facts read={read} society={society} />
        <Sheet title="Weedkiller residues">
          {tests.length ? (
            <TestList society={society} tests={tests} />
          ) : (
            <p>Nobody has tested it for residues. Bought-in manure and straw can carry weedkiller.</p>
          )}
          <p className="actions">
            <Link className="button" href={`/${society}/deliveries/${deliveryId}/residue`}>
              {tests.length ? 'The tests' : 'Test it'}
            </Link>
          </p>
        </Sheet>
        <Sheet title="So far">
          <p>
            {totals.claims} holdings ask for {loadsWords(totals.asked, delivery.loadUnit)}; their ground needs{' '}
            {loadsWords(totals.need, delivery.loadUnit)}.
            {totals.late.claims
              ? ` On the waiting list: ${totals.late.claims}, for ${loadsWords(totals.late.asked, delivery.loadUnit)}.`
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

// What comes on the same lorry is booked from the same page, each by its own form.
function AlsoComes({ society, other, units }: { society: string; other: Read['also'][number]; units: Read['units'] }) {
  const { delivery, claims } = other;
  return (
    <>
      <p>
        It comes with <Link href={`/${society}/deliveries/${delivery.id}`}>{delivery.name}</Link> (
        {delivery.material.toLowerCase()}, {stateWords(delivery.state)}).
      </p>
      {delivery.state === 'open'
        ? claims.map((claim) => (
            <BookSheet
              key={claim.holding.id}
              claim={claim}
              society={society}
              delivery={delivery}
              units={units}
              isOther
            />
          ))
        : claims
            .filter(({ booking }) => other.waiting.mayJoin && (!booking || booking.lateAt))
            .map((claim) => <WaitingList key={claim.holding.id} claim={claim} society={society} heap={other} />)}
    </>
  );
}

type BookSheetProps = {
  claim: Read['claims'][number];
  society: string;
  delivery: Read['delivery'];
  units: Read['units'];
  /** Of what comes with the delivery that the page is about: its buttons say which. */
  isOther?: boolean;
};

function BookSheet({ claim, society, delivery, units, isOther = false }: BookSheetProps) {
  const { holding, need, booking, mayBook } = claim;
  const isOpen = delivery.state === 'open';
  const plots = plotNumbers(holding.plots);
  // Straw resets no turn, so it is asked for nobody's bed by name.
  const beds = need?.serves === 'manure' ? need.lines.filter(({ kind, massG }) => kind === 'bed' && massG > 0) : [];
  const bound = [null, society, delivery.id, holding.id] as const;
  return (
    <Sheet
      title={booking ? `You ask for ${loadsWords(booking.asked, delivery.loadUnit)}` : `What plot ${plots} needs`}
      aside={
        <span className="soft">
          {booking ? `plot ${plots}, ` : ''}
          {delivery.material.toLowerCase()}
        </span>
      }
    >
      {need ? (
        <>
          <p>
            Your ground needs <strong>{loadsWords(need.loads, delivery.loadUnit)}</strong> for {need.season}.
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
          submit={`${booking ? 'Change the booking' : 'Book'}${isOther ? `: ${delivery.material.toLowerCase()}` : ''}`}
          labels={{ asked: delivery.loadUnit === 'bale' ? 'Bales' : 'Loads' }}
        >
          <TextField
            name="asked"
            label={delivery.loadUnit === 'bale' ? 'Bales you ask for' : 'Barrow-loads you ask for'}
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
        <LoadCaution load={delivery} />
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
    <Sheet
      title={`Your share: ${loadsWords(share, delivery.loadUnit)}`}
      aside={<span className="soft">plot {plots}</span>}
    >
      <p>
        Because:{' '}
        {booking.reason ? reasonWords(booking.reason, booking.creditBeforeMillionths ?? 0) : 'not shared out yet'}. You
        asked for {booking.asked} and needed {booking.needLoads}.
      </p>
      <p>
        {booking.collectedLoads} of {share} collected
        {delivery.state === 'settled' ? '' : `; collect by ${dayWords(delivery.collectByOn)}`}.
      </p>
      {delivery.state === 'settled' && delivery.priceMinor ? (
        <p>
          What you pay for them, and why, stands on <Link href={`/${society}/money`}>your account</Link>.
        </p>
      ) : null}
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

function Facts({ read: { delivery, tippedAt, keyHolder, timeZone }, society }: { read: Read; society: string }) {
  const { thousandths, unit } = delivery.amount;
  const ordered = `${(thousandths / 1000).toLocaleString('en-GB')} ${unit === 'm3' ? 'm³' : unit}`;
  const expected = loadsWords(delivery.expectedLoads, delivery.loadUnit);
  const facts: [string, string | null][] = [
    ['material', `${delivery.material}${delivery.ageMonths === null ? '' : `, ${delivery.ageMonths} months old`}`],
    ['from', delivery.supplier],
    ['amount', delivery.loadUnit === 'bale' ? expected : `${ordered}, about ${expected}`],
    [
      'heap',
      delivery.heapLoads === null
        ? null
        : `${loadsWords(delivery.heapLoads, delivery.loadUnit)} as measured, ${delivery.collectedLoads} collected`,
    ],
    ['comes', dayWords(delivery.arrivesOn)],
    ['booking closes', whenWords(delivery.closesAt, timeZone)],
    ['collect by', dayWords(delivery.collectByOn)],
    ['drop point', [tippedAt, delivery.dropPoint].filter(Boolean).join(', ') || null],
    ['key-holder', keyHolder],
    ['at the gate', delivery.gateNote],
    [
      'price',
      delivery.priceMinor
        ? `${formatPounds(delivery.priceMinor)}, split by ${unitWord(delivery.loadUnit)}s taken`
        : null,
    ],
    [delivery.priceMinor ? 'besides' : 'in return', delivery.thanks],
    delivery.loadUnit === 'bale'
      ? ['a bale', `about ${formatMass(loadMassG(delivery))}`]
      : ['barrow-load', `${delivery.barrowLitres} L, about ${formatMass(loadMassG(delivery))}`],
  ];
  return (
    <Sheet title="The load">
      <dl>
        {facts.map(([name, value]) =>
          value ? [<dt key={name}>{name}</dt>, <dd key={`${name} is`}>{value}</dd>] : null,
        )}
      </dl>
      <p>
        <Link href={`/${society}/site/heap?site=${delivery.siteId}&loads=${delivery.id}`}>
          How far the loads are wheeled from there, and from where least
        </Link>
      </p>
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
