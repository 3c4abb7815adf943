import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { NoteField, TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { accountWords } from '@/app/_ui/money-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { readAccounts } from '@/lib/usecases/money/read-money';
import { addAccountAction, payNoteAction, retireAction, takeUpAction } from '../actions';

export const metadata: Metadata = { title: 'Accounts, and how to pay' };

const said: Record<string, string> = {
  retired: 'Retired. Its entries stay; nothing new is entered on it.',
  'taken-up': 'Taken up again.',
};

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ said?: string }> };

export default async function AccountsPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { own, payNote, keeps } = await ask(readAccounts, society);
  const told = said[(await searchParams).said ?? ''];
  return (
    <>
      <PageHead
        title="Accounts, and how to pay"
        lead="Bank, cash, suppliers and the society’s own funds are there by themselves. Keep others apart as you like: seed, rents, keys."
      >
        <Link className="button" href={`/${society}/office/money`}>
          Balances
        </Link>
      </PageHead>
      {told ? (
        <p className="notice kept wide" role="status">
          {told}
        </p>
      ) : null}
      <Sheet title="The society’s own accounts">
        {own.length === 0 ? <Empty>None yet. Add one before you charge seed or rents.</Empty> : null}
        <ul className="plain-list">
          {own.map(({ id, key, name, isRetired, minor }) => (
            <li key={id} className="row" style={{ justifyContent: 'space-between', alignItems: 'center' }}>
              <p>
                <Link href={`/${society}/office/money/ledger?account=other:${encodeURIComponent(key)}`}>
                  {accountWords(`other:${key}`, name)}
                </Link>
                : {formatPounds(minor)}
                {isRetired ? ', retired' : ''}
              </p>
              {keeps ? (
                <Form
                  action={(isRetired ? takeUpAction : retireAction).bind(null, society, id)}
                  writeId={randomUUID()}
                  submit={isRetired ? `Take ${name} up again` : `Retire ${name}`}
                  danger={!isRetired}
                >
                  {null}
                </Form>
              ) : null}
            </li>
          ))}
        </ul>
      </Sheet>
      <div className="stack">
        {keeps ? (
          <Sheet title="Add an account">
            <Form action={addAccountAction.bind(null, society)} writeId={randomUUID()} submit="Add it">
              <TextField name="name" label="Name" hint="such as: Seed" />
            </Form>
          </Sheet>
        ) : null}
        <Sheet title="How members pay">
          {keeps ? (
            <Form action={payNoteAction.bind(null, society)} writeId={randomUUID()} submit="Keep it">
              <NoteField
                name="note"
                label="What stands on “Your account”"
                value={payNote ?? ''}
                hint="It is shown to signed-in members only, and is never put into mail."
              />
            </Form>
          ) : (
            <p style={{ whiteSpace: 'pre-line' }}>{payNote ?? 'The treasurer has not said yet.'}</p>
          )}
        </Sheet>
      </div>
    </>
  );
}
