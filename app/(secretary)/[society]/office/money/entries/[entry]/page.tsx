import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords, whenWords } from '@/app/_ui/delivery-words';
import { TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { accountWords, kindWords } from '@/app/_ui/money-words';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { readEntry } from '@/lib/usecases/money/read-ledger';
import { reverseAction } from '../../actions';

export const metadata: Metadata = { title: 'An entry' };

type Props = { params: Promise<{ society: string; entry: string }>; searchParams: Promise<{ said?: string }> };

export default async function EntryPage({ params, searchParams }: Props) {
  const { society, entry: entryId } = await params;
  const { entry, names, by, timeZone, ofPrice, keeps, mayTakeBack } = await ask(readEntry, society, { entryId });
  const { said } = await searchParams;
  const room = `/${society}/office/money`;
  return (
    <>
      <PageHead
        title={entry.words}
        lead={`${kindWords[entry.kind]}, ${dayWords(entry.on)}; entered by ${by}, ${whenWords(entry.at, timeZone)}.`}
      >
        <Link className="button" href={`${room}/ledger`}>
          The ledger
        </Link>
        {keeps ? (
          <Link className="button" href={`${room}/enter`}>
            Enter anew
          </Link>
        ) : null}
      </PageHead>
      {said === 'taken-back' ? (
        <p className="notice kept wide" role="status">
          Taken back, by this entry. What is right can now be entered anew.
        </p>
      ) : null}
      <Sheet title="Its lines" flush>
        <Table
          caption="Its lines"
          columns={[{ head: 'account' }, { head: 'on to it, or off (−)', number: true }]}
          rows={entry.lines.map(({ account, minor }) => ({
            key: account,
            cells: [accountWords(account, names[account]), formatPounds(minor)],
          }))}
          foot={['sum', formatPounds(0)]}
        />
      </Sheet>
      <Sheet title="Is it wrong?">
        {entry.reverses ? (
          <p>
            It takes <Link href={`${room}/entries/${entry.reverses}`}>another entry</Link> back, and stands.
          </p>
        ) : null}
        {entry.reversedBy ? (
          <p>
            It was taken back, by <Link href={`${room}/entries/${entry.reversedBy}`}>this entry</Link>.
          </p>
        ) : null}
        {ofPrice && !entry.reversedBy ? (
          <p>
            It is the price of a delivery.{' '}
            <Link href={`${room}/deliveries/${entry.deliveryId}`}>Put the price right there</Link>; the shares are
            worked out anew.
          </p>
        ) : null}
        {mayTakeBack ? (
          <Form action={reverseAction.bind(null, society, entryId)} writeId={randomUUID()} submit="Take it back" danger>
            <p>Another entry with every sign turned takes it back, today. Both stay in the ledger for all to see.</p>
            <TextField name="reason" label="Reason" />
            <TickField name="sure" label="Yes, it is wrong" />
          </Form>
        ) : null}
        {!mayTakeBack && !ofPrice && !entry.reverses && !entry.reversedBy ? (
          <p>The treasurer or the secretary can take it back.</p>
        ) : null}
      </Sheet>
    </>
  );
}
