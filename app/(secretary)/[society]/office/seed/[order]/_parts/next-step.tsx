import { randomUUID } from 'node:crypto';
import Link from 'next/link';
import { TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { formatPounds, plainPounds } from '@/lib/domain/ledger/pounds';
import { mayTakeStep } from '@/lib/domain/seed/order-steps';
import { FactsFields } from '../../_parts/facts-fields';
import {
  callOffAction,
  changeAction,
  closeAction,
  correctAction,
  openAction,
  orderAction,
  settleAction,
} from '../../actions';
import { wallTime } from '@/app/_ui/wall-time';
import type { OrderProps } from './read';

/** What is to be done next with an order, and what else can be. */
export function NextStep({ society, read }: OrderProps) {
  const { order, timeZone } = read;
  const { id, state } = order;
  const bound = [null, society, id] as const;
  return (
    <Sheet title="Next">
      <Step society={society} read={read} />
      {mayTakeStep('change', state) ? (
        <Reason
          ask={state === 'closed' ? 'Give the lists longer, or change the notes' : 'Change name, closing time or notes'}
        >
          <Form action={changeAction.bind(...bound)} writeId={randomUUID()} submit="Change it">
            <FactsFields given={{ ...order, closesAt: wallTime(order.closesAt, timeZone) }} />
          </Form>
        </Reason>
      ) : null}
      {mayTakeStep('call-off', state) ? (
        <Reason ask="Call it off">
          <Form action={callOffAction.bind(...bound)} writeId={randomUUID()} submit="Call it off" danger>
            <p>{state === 'planned' ? 'Nobody knows of it yet.' : 'Everybody is told. Nobody owes anything.'}</p>
            <TickField name="sure" label="Yes, it is not ordered" />
          </Form>
        </Reason>
      ) : null}
    </Sheet>
  );
}

function Step({ society, read: { order, pooled, items, holders } }: OrderProps) {
  const bound = [null, society, order.id] as const;
  const all = formatPounds(pooled.seedMinor + order.extraMinor);
  if (order.state === 'planned')
    return items.length ? (
      <Form action={openAction.bind(...bound)} writeId={randomUUID()} submit="Open it for lists">
        <p>Everybody who can be mailed is told once.</p>
      </Form>
    ) : (
      <p>Put something on the list first; then it can be opened.</p>
    );
  if (order.state === 'open')
    return (
      <Form action={closeAction.bind(...bound)} writeId={randomUUID()} submit="Close the lists now">
        <p>They close by themselves at the closing time. Nothing is put down or changed after.</p>
      </Form>
    );
  if (order.state === 'closed')
    return (
      <Form action={orderAction.bind(...bound)} writeId={randomUUID()} submit="It is ordered">
        <p>Order the packs below; then say so. The lists and the packs are frozen with it.</p>
        <TextField
          name="extra"
          label="Postage and the like"
          suffix="£"
          value={plainPounds(order.extraMinor)}
          inputMode="decimal"
          className="short-field"
        />
      </Form>
    );
  if (order.state === 'ordered') return <p>When it comes, tick off what came.</p>;
  if (order.state === 'arrived')
    return (
      <Form action={settleAction.bind(...bound)} writeId={randomUUID()} submit={`Settle it: ${all}`}>
        <p>
          Hand it out, then settle: {all} are charged to {holders.filter(({ owed }) => owed?.minor).length} holdings in
          one entry, and owed to the seller until you pay them under Money.
        </p>
      </Form>
    );
  if (order.state === 'called-off') return <p>It was called off. Plan another when there is call for it.</p>;
  return (
    <>
      <p>
        {all} are charged.{' '}
        {order.entryId ? <Link href={`/${society}/office/money/entries/${order.entryId}`}>The entry</Link> : null}
      </p>
      <Reason ask="Put it right">
        <Form action={correctAction.bind(...bound)} writeId={randomUUID()} submit="Take the charge back" danger>
          <p>The entry is taken back by another, and the order waits to be ticked off and settled anew.</p>
          <TextField name="reason" label="Reason" />
        </Form>
      </Reason>
    </>
  );
}
