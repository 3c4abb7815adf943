import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords, loadsWords, stateWords, whenWords } from '@/app/_ui/delivery-words';
import { SelectField, TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { HeldNotice } from '@/app/_ui/held-notice';
import { PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { plotNumbers } from '@/app/_ui/plot-numbers';
import { readGateList } from '@/lib/usecases/deliveries/read-deliveries';
import { readDeliveryTests } from '@/lib/usecases/residue/read-tests';
import { isComing } from '@/lib/domain/delivery/steps';
import { ComesWith } from '../_parts/comes-with';
import { LateSheet } from './_parts/late-sheet';
import { HoldSheet } from '../_parts/hold-sheet';
import { wallTime } from '@/app/_ui/wall-time';
import {
  beyondAction,
  callOffAction,
  closeAction,
  confirmAction,
  measureAction,
  openAction,
  postponeAction,
  previewAction,
  settleAction,
} from '../actions';

export const metadata: Metadata = { title: 'Run a delivery' };

const said: Record<string, string> = {
  opened: 'Booking is open. The lot is drawn and its hash published; everybody who can be mailed is told.',
  closed: 'Booking is closed.',
  postponed: 'Put off. All who booked are told; their bookings stand.',
  'called-off': 'Called off. All who booked are told; no credit changes.',
  held: 'Held. All who booked are told; nothing is shared out until you decide.',
  released: 'Released. All who booked are told; it can be shared out again.',
  weighed: 'The density is set from the bucket test, and the loads expected are worked out anew.',
  measured: 'The heap is measured.',
  shared: 'Confirmed. Everybody who can be mailed is told their share.',
  beyond: 'Entered. The shares were worked out again.',
  settled:
    'Settled. Credits are written, the beds that loads were booked for are logged as manured, and the price is charged by loads taken.',
};

type Props = { params: Promise<{ society: string; delivery: string }>; searchParams: Promise<{ said?: string }> };

export default async function RunPage({ params, searchParams }: Props) {
  const { society, delivery: deliveryId } = await params;
  const told = said[(await searchParams).said ?? ''];
  const [read, residues] = await Promise.all([
    ask(readGateList, society, { deliveryId }),
    ask(readDeliveryTests, society, { deliveryId }),
  ]);
  const { delivery, also, rows, standing, timeZone } = read;
  const { state, loadUnit: unit } = delivery;
  const booked = rows.filter(({ booking }) => booking);
  const inTime = booked.filter(({ booking }) => !booking?.lateAt);
  const asked = inTime.reduce((sum, { booking }) => sum + (booking?.asked ?? 0), 0);
  const outstanding = booked.filter(({ booking }) => (booking?.share ?? 0) > (booking?.collectedLoads ?? 0));
  const bound = [null, society, deliveryId] as const;
  const is = (...states: (typeof state)[]) => states.includes(state);
  const paper = (path: string, label: string) => (
    <Link className="button" href={`/${society}/office/deliveries/${deliveryId}/${path}`}>
      {label}
    </Link>
  );
  return (
    <>
      <PageHead
        title={delivery.name}
        lead={`${stateWords(state)}; comes ${dayWords(delivery.arrivesOn)}. ${inTime.length} claims for ${loadsWords(asked, unit)}; ${delivery.heapLoads === null ? `about ${delivery.expectedLoads} expected` : `${delivery.heapLoads} in the heap`}.`}
      >
        {is('planned', 'open') ? paper('edit', 'Change the facts') : null}
        {is('planned', 'open') ? paper('sheet', 'Blank booking sheet') : null}
        {is('open') ? paper('type-in', 'Type paper bookings in') : null}
        {is('shared', 'collecting', 'settled') ? paper('share-list', 'Share list for the gate') : null}
        {is('planned', 'open') ? (
          <Link className="button" href={`/${society}/office/deliveries/new?with=${deliveryId}`}>
            Add a material that comes with it
          </Link>
        ) : null}
        {is('planned', 'open') && unit === 'barrow' ? (
          <Link className="button" href={`/${society}/measures?what=bucket`}>
            Weigh it by the bucket
          </Link>
        ) : null}
        <Link className="button" href={`/${society}/deliveries/${deliveryId}`}>
          As members see it
        </Link>
      </PageHead>
      {told ? (
        <p className="notice kept wide" role="status">
          {told}
        </p>
      ) : null}
      <HeldNotice held={delivery.held} state={state} timeZone={timeZone} />
      <ComesWith society={society} also={also} />
      <div className="stack">
        {is('planned') ? (
          <Sheet title="1 · Open booking">
            <p>
              The lot is drawn and its hash published; everybody who can be mailed is told. Booking closes{' '}
              {whenWords(delivery.closesAt, timeZone)}.
            </p>
            {standing.length ? (
              <p>
                {standing.length === 1 ? 'One standing booking' : `${standing.length} standing bookings`} will ask for
                about{' '}
                {loadsWords(
                  standing.reduce((sum, loads) => sum + loads, 0),
                  unit,
                )}{' '}
                at once.
              </p>
            ) : null}
            <Form action={openAction.bind(...bound)} writeId={randomUUID()} submit="Open booking">
              {null}
            </Form>
          </Sheet>
        ) : null}
        {is('open') ? (
          <Sheet title="2 · Booking is open">
            <p>It closes by itself {whenWords(delivery.closesAt, timeZone)}. From then on the bookings are frozen.</p>
            <Reason ask="Close it now">
              <Form action={closeAction.bind(...bound)} writeId={randomUUID()} submit="Close booking now" danger>
                {null}
              </Form>
            </Reason>
          </Sheet>
        ) : null}
        {is('closed', 'tipped', 'shared', 'collecting') ? (
          <div id="heap">
            <Sheet title={delivery.heapLoads === null ? '3 · Measure the heap' : 'The heap'}>
              <p>
                {delivery.heapLoads === null
                  ? `Count ${unit === 'bale' ? 'the bales' : 'what it holds in barrow-loads'}, before anything is taken.`
                  : `${loadsWords(delivery.heapLoads, unit)} as measured; ${delivery.collectedLoads} collected. If it runs short, measure again: the shares are worked out anew by the same queue.`}
              </p>
              <Form
                action={measureAction.bind(...bound)}
                writeId={randomUUID()}
                submit={delivery.heapLoads === null ? 'That is the heap' : 'Measure again'}
              >
                <TextField
                  name="loads"
                  label={unit === 'bale' ? 'Bales' : 'Barrow-loads'}
                  value={String(delivery.heapLoads ?? '')}
                  inputMode="numeric"
                  className="short-field"
                  hint={`${delivery.expectedLoads} were expected${unit === 'bale' ? '' : ` at ${delivery.barrowLitres} L a barrow`}`}
                />
              </Form>
            </Sheet>
          </div>
        ) : null}
        {is('closed', 'tipped') ? (
          <Sheet title={delivery.lot?.bytesHex ? 'The provisional share-out' : '4 · First preview'}>
            {delivery.lot?.bytesHex ? (
              <p>
                <Link href={`/${society}/deliveries/${deliveryId}/queue`}>See the provisional queue</Link>.
              </p>
            ) : (
              <Form action={previewAction.bind(...bound)} writeId={randomUUID()} submit="Show the first preview">
                <p>
                  The lot’s bytes are published with it, and the book notes it, even if the delivery is then called off.
                </p>
              </Form>
            )}
          </Sheet>
        ) : null}
        {is('tipped') && !delivery.held ? (
          <Sheet title="5 · Confirm the share-out">
            <Form
              action={confirmAction.bind(...bound)}
              writeId={randomUUID()}
              submit={`Share out ${loadsWords(delivery.heapLoads ?? 0, unit)}`}
            >
              <p>
                {booked.length} claims for {loadsWords(asked, unit)}. This is done once; everybody is told their share
                and why.
              </p>
            </Form>
          </Sheet>
        ) : null}
        {is('shared', 'collecting') ? (
          <>
            <Sheet
              title={`6 · Collecting: ${outstanding.length ? `${outstanding.length} still to come` : 'everybody has theirs'}`}
            >
              <ul>
                {outstanding.slice(0, 60).map(({ holding, booking }) => (
                  <li key={holding.id}>
                    plot {plotNumbers(holding.plots)}: {(booking?.share ?? 0) - (booking?.collectedLoads ?? 0)} of{' '}
                    {booking?.share}
                    {holding.members.some(({ canBeMailed }) => canBeMailed) ? '' : ', cannot be mailed'}
                  </li>
                ))}
              </ul>
              <p className="actions">
                <Link className="button first" href={`/${society}/deliveries/${deliveryId}/collect`}>
                  Tick off, or give up a no-show’s share
                </Link>
              </p>
            </Sheet>
            <Sheet title="Somebody took more than their share">
              <Form action={beyondAction.bind(...bound)} writeId={randomUUID()} submit="Enter it">
                <SelectField
                  name="bookingId"
                  label="Plot"
                  choices={booked.map(({ holding, booking }) => ({
                    value: booking?.id ?? '',
                    label: `${plotNumbers(holding.plots)}: ${holding.members.map(({ name }) => name).join(' and ')}`,
                  }))}
                />
                <TextField
                  name="loads"
                  label={unit === 'bale' ? 'Bales beyond the share' : 'Loads beyond the share'}
                  inputMode="numeric"
                  className="short-field"
                />
                <TextField name="reason" label="Reason" />
              </Form>
            </Sheet>
            <Sheet title="7 · Settle">
              <Form action={settleAction.bind(...bound)} writeId={randomUUID()} submit="Settle">
                <p>
                  {outstanding.length
                    ? 'Every share must be collected or given up first.'
                    : 'Credits are written once: what was due minus what was received. The beds that loads were booked for are logged as manured, and the price is charged by loads taken.'}
                </p>
              </Form>
            </Sheet>
          </>
        ) : null}
        {is('closed', 'tipped', 'shared', 'collecting') ? <LateSheet society={society} read={read} /> : null}
        {is('settled') ? (
          <Sheet title="Settled">
            <p>
              {delivery.collectedLoads} of {loadsWords(delivery.heapLoads ?? 0, unit)} were collected.{' '}
              <Link href={`/${society}/deliveries/credits`}>Credits</Link>,{' '}
              <Link href={`/${society}/office/money/deliveries/${deliveryId}`}>money to the penny</Link>.
            </p>
          </Sheet>
        ) : null}
      </div>
      {is('planned', 'open', 'closed', 'tipped', 'shared') ? (
        <div className="stack">
          {is('shared') ? null : <HoldSheet society={society} read={residues} timeZone={timeZone} />}
          <Sheet title="Put it off">
            <Form action={postponeAction.bind(...bound)} writeId={randomUUID()} submit="Put it off">
              <p>Bookings stand, and all who booked are told.</p>
              <TextField name="arrivesOn" type="date" label="Comes on" value={delivery.arrivesOn} />
              <TextField name="collectByOn" type="date" label="Collect by" value={delivery.collectByOn} />
              <TextField
                name="closesAt"
                type="datetime-local"
                label="Booking closes"
                value={wallTime(delivery.closesAt, timeZone)}
                {...(is('planned', 'open') ? {} : { hint: 'Booking is closed and stays closed.' })}
              />
            </Form>
          </Sheet>
          <Sheet title="Call it off">
            <Form action={callOffAction.bind(...bound)} writeId={randomUUID()} submit="Call it off" danger>
              <p>Nobody’s credit changes. All who booked are told.</p>
              {also.some(({ state: its }) => isComing(its)) ? (
                <TickField name="together" label="And nothing that comes with it" ticked />
              ) : null}
              <TickField name="sure" label="Yes, it does not come" />
            </Form>
          </Sheet>
        </div>
      ) : null}
    </>
  );
}
