import { randomUUID } from 'node:crypto';
import Link from 'next/link';
import { loadsWords } from '@/app/_ui/delivery-words';
import { TextField, TickField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { LoadCaution } from '@/app/_ui/load-caution';
import { NeedReason } from '@/app/_ui/need-reason';
import { plotNumbers } from '@/app/_ui/plot-numbers';
import { Caution, Reason, Sheet } from '@/app/_ui/sheet';
import { formatMass } from '@/lib/domain/quantity/load';
import { bookAction, withdrawAction } from '../../actions';
import type { Read } from './read';

type BookSheetProps = {
  claim: Read['claims'][number];
  society: string;
  delivery: Read['delivery'];
  units: Read['units'];
  /** Of what comes with the delivery that the page is about: its buttons say which. */
  isOther?: boolean;
};

/** What a holding's ground needs of a delivery, and its booking until that closes. */
export function BookSheet({ claim, society, delivery, units, isOther = false }: BookSheetProps) {
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
