import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { SelectField, TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { listMembers } from '@/lib/usecases/members/list-members';
import { readStanding } from '@/lib/usecases/members/read-standing';
import { roleName } from './_parts/role-name';
import { addMemberAction, handOverAction } from './actions';

export const metadata: Metadata = { title: 'Members' };

export default async function MembersPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const [members, { roles, member: me }] = await Promise.all([ask(listMembers, society), ask(readStanding, society)]);
  const here = members.filter(({ leftOn }) => !leftOn);
  const runs = roles.includes('secretary');
  return (
    <>
      <PageHead
        title="Members"
        lead={`${here.length} members. Whoever cannot be mailed stands on the lists for the gate.`}
      />
      <Sheet title="The list" flush>
        <Table
          caption="Members"
          columns={[{ head: 'name' }, { head: 'plots' }, { head: 'account' }, { head: 'offices' }]}
          rows={members.map(({ id, name, plots, hasAccount, email, roles: held, leftOn }) => ({
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
              leftOn ? `left ${leftOn}` : hasAccount ? 'yes' : email ? 'not yet' : 'no, and no e-mail',
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
                  .filter(({ id, hasAccount }) => hasAccount && id !== me.id)
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
