import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { SelectField, TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { dayWords } from '@/app/_ui/delivery-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { listMembers } from '@/lib/usecases/members/list-members';
import { readStanding } from '@/lib/usecases/members/read-standing';
import { roleName } from '@/app/_ui/role-name';
import { addMemberAction, handOverAction } from './actions';

export const metadata: Metadata = { title: 'Members' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ q?: string }> };

export default async function MembersPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { q = '' } = await searchParams;
  const [all, found, { roles, memberId }] = await Promise.all([
    ask(listMembers, society),
    ask(listMembers, society, { q }),
    ask(readStanding, society),
  ]);
  const here = all.filter(({ isHere }) => isHere);
  const runs = roles.includes('secretary');
  return (
    <>
      <PageHead
        title="Members"
        lead={`${here.length} members. Whoever cannot be mailed stands on the lists for the gate.`}
      />
      <Sheet title={q ? `${found.length} of ${all.length}` : 'The list'} flush>
        <form className="row" method="get" role="search" style={{ padding: '0.8rem 1rem 0' }}>
          <TextField name="q" type="search" label="Find by name, plot, address or telephone" value={q} />
          <button type="submit" className="button">
            Find
          </button>
        </form>
        {found.length ? null : <Empty>Nobody matches “{q}”. Try part of a name, or a plot number.</Empty>}
        <Table
          caption="Members"
          columns={[{ head: 'name' }, { head: 'plots' }, { head: 'account' }, { head: 'offices' }]}
          rows={found.map(({ id, name, plots, hasAccount, email, roles: held, leftOn, isHere }) => ({
            key: id,
            cells: [
              runs ? (
                <Link key="name" href={`/${society}/office/members/${id}`}>
                  {name}
                </Link>
              ) : (
                name
              ),
              plots.join(', ') || '–',
              leftOn
                ? `${isHere ? 'leaves' : 'left'} ${dayWords(leftOn)}`
                : hasAccount
                  ? 'yes'
                  : email
                    ? 'not yet'
                    : 'no, and no e-mail',
              held.map(roleName).join(', ') || '–',
            ],
          }))}
        />
      </Sheet>
      {runs ? (
        <div className="stack">
          <Sheet title="Add a member">
            <Form action={addMemberAction.bind(null, society)} writeId={randomUUID()} submit="Add">
              <TextField name="name" label="Name" />
              <TextField
                name="email"
                type="email"
                label="E-mail address"
                hint="May be left empty: you can book and log for them."
              />
              <TextField name="phone" type="tel" label="Telephone" />
              <TickField name="invite" label="Make an invitation link at once" />
            </Form>
          </Sheet>
          <Sheet title="Hand over the secretary’s office">
            <Form action={handOverAction.bind(null, society)} writeId={randomUUID()} submit="Hand over" danger>
              <SelectField
                name="memberId"
                label="Successor"
                empty="choose a member"
                choices={here
                  .filter(({ id, hasAccount }) => hasAccount && id !== memberId)
                  .map(({ id, name }) => ({ value: id, label: name }))}
                hint="They need an account."
              />
              <TickField name="keep" label="I stay secretary beside them" />
            </Form>
          </Sheet>
        </div>
      ) : null}
    </>
  );
}
