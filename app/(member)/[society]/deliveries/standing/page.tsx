import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { loadsWords } from '@/app/_ui/delivery-words';
import { SelectField, TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { plotNumbers } from '@/app/_ui/plot-numbers';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { standingFor, type StandingFor } from '@/lib/domain/delivery/standing';
import { readStandingBookings } from '@/lib/usecases/deliveries/standing-bookings';
import { changeStandingAction, endStandingAction, startStandingAction } from './actions';

export const metadata: Metadata = { title: 'Standing bookings' };

const names: Record<StandingFor, string> = { manure: 'Rotted manure', straw: 'Straw' };

type Read = Awaited<ReturnType<typeof readStandingBookings.run>>[number];

export default async function StandingPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const holdings = await ask(readStandingBookings, society);
  return (
    <>
      <PageHead
        title="Standing bookings"
        lead="Say once what is to be booked for your ground whenever a delivery opens: what its due ground needs, no more. You are told each time, and can change or withdraw it until booking closes."
      >
        <Link className="button" href={`/${society}/deliveries`}>
          Back to the deliveries
        </Link>
      </PageHead>
      {holdings.length === 0 ? <Empty>You hold no plot, so there is nothing to book for.</Empty> : null}
      <div className="stack">
        {holdings.map((one) => (
          <HoldingSheet key={one.holding.id} society={society} read={one} />
        ))}
      </div>
    </>
  );
}

function HoldingSheet({ society, read: { holding, mayBook, standing } }: { society: string; read: Read }) {
  const free = standingFor.filter((serves) => !standing.some((one) => one.serves === serves));
  return (
    <Sheet title={`Plot ${plotNumbers(holding.plots)}`}>
      {standing.length === 0 ? <p className="soft">Nothing is booked by itself yet.</p> : null}
      {standing.map((one) => (
        <Standing key={one.id} society={society} standing={one} mayBook={mayBook} />
      ))}
      {!mayBook ? (
        <p className="soft">The secretary has named one holder to book for this holding.</p>
      ) : free.length ? (
        <Form
          action={startStandingAction.bind(null, society, holding.id)}
          writeId={randomUUID()}
          submit="Let it stand"
          labels={{ serves: 'What', when: 'When', mostLoads: 'At most' }}
        >
          <h3>{standing.length ? 'And for the other' : 'Start one'}</h3>
          <SelectField
            name="serves"
            label="What"
            choices={free.map((serves) => ({ value: serves, label: names[serves] }))}
          />
          <WhenAndMost autumnOnly={true} mostLoads={null} />
        </Form>
      ) : null}
    </Sheet>
  );
}

function WhenAndMost({ autumnOnly, mostLoads }: { autumnOnly: boolean; mostLoads: number | null }) {
  return (
    <>
      <SelectField
        name="when"
        label="When"
        value={autumnOnly ? 'autumn' : 'always'}
        choices={[
          { value: 'autumn', label: 'deliveries in autumn, September to December' },
          { value: 'always', label: 'every delivery' },
        ]}
      />
      <TextField
        name="mostLoads"
        label="At most"
        value={mostLoads === null ? '' : String(mostLoads)}
        inputMode="numeric"
        className="short-field"
        suffix="loads or bales"
        hint="empty: all that your ground needs"
      />
    </>
  );
}

type StandingProps = { society: string; standing: Read['standing'][number]; mayBook: boolean };

function Standing({ society, standing, mayBook }: StandingProps) {
  const { id, serves, autumnOnly, mostLoads, last } = standing;
  return (
    <section>
      <h3>{names[serves]}</h3>
      <p>
        {autumnOnly ? 'On deliveries in autumn' : 'On every delivery'}: what your due ground needs
        {mostLoads === null ? '' : `, at most ${mostLoads}`}.
      </p>
      {last ? (
        <p className="soft">
          Last time: {loadsWords(last.asked, last.loadUnit)} of{' '}
          <Link href={`/${society}/deliveries/${last.deliveryId}`}>{last.name}</Link>
          {last.share === null ? '' : `; share ${last.share}`}.
        </p>
      ) : (
        <p className="soft">It has booked nothing yet.</p>
      )}
      {mayBook ? (
        <>
          <Reason ask={`Change it: ${names[serves].toLowerCase()}`}>
            <Form action={changeStandingAction.bind(null, society, id)} writeId={randomUUID()} submit="Change it">
              <WhenAndMost autumnOnly={autumnOnly} mostLoads={mostLoads} />
            </Form>
          </Reason>
          <Reason ask={`End it: ${names[serves].toLowerCase()}`}>
            <Form action={endStandingAction.bind(null, society, id)} writeId={randomUUID()} submit="Yes, end it" danger>
              {null}
            </Form>
          </Reason>
        </>
      ) : null}
    </section>
  );
}
