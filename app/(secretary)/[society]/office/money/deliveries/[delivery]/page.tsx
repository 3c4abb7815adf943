import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords, loadsWords } from '@/app/_ui/delivery-words';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { shareWords } from '@/app/_ui/money-words';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatPounds, plainPounds } from '@/lib/domain/ledger/pounds';
import { readReconciliation } from '@/lib/usecases/money/read-reconciliation';
import { priceAction, writeOffAction } from '../../actions';
import { EntriesTable } from '../../_parts/entries-table';

export const metadata: Metadata = { title: 'A delivery to the penny' };

const said: Record<string, string> = {
  price:
    'The price is put right: what was entered is taken back, and the shares are worked out anew. Whoever can be mailed is told.',
  'written-off': 'Written off, to the society’s own funds.',
};

type Read = Awaited<ReturnType<typeof readReconciliation.run>>;
type Props = { params: Promise<{ society: string; delivery: string }>; searchParams: Promise<{ said?: string }> };

export default async function ReconcilePage({ params, searchParams }: Props) {
  const { society, delivery: deliveryId } = await params;
  const read = await ask(readReconciliation, society, { deliveryId });
  const { delivery, priceMinor, chargedMinor, entries, names, keeps } = read;
  const told = said[(await searchParams).said ?? ''];
  const room = `/${society}/office/money`;
  return (
    <>
      <PageHead
        title={`${delivery.name}, to the penny`}
        lead={`Came ${dayWords(delivery.arrivesOn)}; ${delivery.collectedLoads} of ${loadsWords(delivery.heapLoads, delivery.loadUnit)} were taken. ${formatPounds(priceMinor)} by ${loadsWords(delivery.collectedLoads, delivery.loadUnit)}.`}
      >
        <Link className="button" href={`${room}/deliveries`}>
          The season
        </Link>
        {keeps ? (
          <Link className="button" href={`${room}/enter?delivery=${deliveryId}`}>
            Enter what the supplier was paid
          </Link>
        ) : null}
        <Link className="button" href={`/${society}/deliveries/${deliveryId}/queue`}>
          The share-out
        </Link>
      </PageHead>
      {told ? (
        <p className="notice kept wide" role="status">
          {told}
        </p>
      ) : null}
      <Sheet title="Each holding’s part" flush>
        {read.parts.length === 0 ? (
          <Empty>Nothing is charged to anybody: it cost nothing, or nobody took a load.</Empty>
        ) : null}
        <Table
          caption="Each holding’s part"
          columns={[
            { head: 'plot' },
            { head: 'loads', number: true },
            { head: 'part', number: true },
            { head: 'still owed', number: true },
            { head: 'why' },
          ]}
          rows={read.parts.map(({ holder, minor, again, outstandingMinor }) => ({
            key: holder.holdingId,
            cells: [
              <Link key="plot" href={`${room}/holdings/${holder.holdingId}`}>
                {holder.plots.join(', ') || 'no plot'}
              </Link>,
              again?.loads ?? '',
              formatPounds(minor),
              outstandingMinor ? formatPounds(outstandingMinor) : 'paid',
              again ? (
                <Reason key="why" ask="Why?">
                  {shareWords(again)}
                </Reason>
              ) : null,
            ],
          }))}
          foot={['sum', delivery.collectedLoads, formatPounds(chargedMinor), formatPounds(read.outstandingMinor), '']}
        />
      </Sheet>
      <div className="stack">
        <Balance read={read} />
        {keeps ? <PutRight society={society} read={read} /> : null}
      </div>
      <Sheet title="Every entry of it" flush wide>
        {entries.length === 0 ? <Empty>Nothing is entered: it cost nothing.</Empty> : null}
        <EntriesTable society={society} entries={entries} names={names} />
      </Sheet>
    </>
  );
}

function Balance({ read }: { read: Read }) {
  const { delivery, priceMinor, chargedMinor, writtenOffMinor, leftMinor, supplierPaidMinor, parts } = read;
  const agrees = parts.every(({ minor, again }) => again?.minor === minor);
  const facts: [string, string][] = [
    ['price', formatPounds(priceMinor)],
    ['charged by loads', formatPounds(chargedMinor)],
    ['written off', formatPounds(writtenOffMinor)],
    ['left over', formatPounds(leftMinor)],
    [`paid to ${delivery.supplier ?? 'the supplier'}`, formatPounds(supplierPaidMinor)],
    ['still to pay them', formatPounds(priceMinor - supplierPaidMinor)],
  ];
  return (
    <Sheet title={leftMinor === 0 ? 'It adds up to the penny' : `${formatPounds(leftMinor)} are left over`}>
      <dl>{facts.map(([name, value]) => [<dt key={name}>{name}</dt>, <dd key={`${name} is`}>{value}</dd>])}</dl>
      <p className="small">
        {agrees
          ? 'Worked out again from the loads taken and the lot just now: every part is the same.'
          : 'Worked out again just now, a part differs from what was charged: the loads were changed since. Put the price right to charge it anew.'}
      </p>
      <p className="small soft">What a holding pays goes to its oldest charge first.</p>
    </Sheet>
  );
}

function PutRight({ society, read: { delivery, priceMinor, leftMinor } }: { society: string; read: Read }) {
  const bound = [null, society, delivery.id] as const;
  return (
    <>
      {leftMinor > 0 ? (
        <Sheet title="Write off what nobody took">
          <Form
            action={writeOffAction.bind(...bound)}
            writeId={randomUUID()}
            submit={`Write ${formatPounds(leftMinor)} off`}
          >
            <p>It falls to the society’s own funds.</p>
            <TextField name="reason" label="Reason" />
          </Form>
        </Sheet>
      ) : null}
      <Sheet title="The price was another">
        <Reason ask="Put it right">
          <Form action={priceAction.bind(...bound)} writeId={randomUUID()} submit="Put it right" danger>
            <p>
              What was entered is taken back, and the right price is split anew by the same loads and the same lot. All
              who took loads are told.
            </p>
            <TextField
              name="price"
              label="The right price"
              value={plainPounds(priceMinor)}
              inputMode="decimal"
              suffix="£"
              className="short-field"
            />
            <TextField name="reason" label="Reason" />
          </Form>
        </Reason>
      </Sheet>
    </>
  );
}
