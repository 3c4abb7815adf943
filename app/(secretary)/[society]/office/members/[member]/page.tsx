import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { NoteField, TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { dayWords } from '@/app/_ui/delivery-words';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import type { Role } from '@/lib/domain/policy/standing';
import { readMember } from '@/lib/usecases/members/list-members';
import { roleName } from '@/app/_ui/role-name';
import { changeMemberAction, eraseAction, inviteAction, leaveAction, rolesAction, withdrawAction } from '../actions';

export const metadata: Metadata = { title: 'A member' };

const offices: Role[] = ['secretary', 'treasurer', 'chair', 'gate_helper'];

export default async function MemberPage({ params }: { params: Promise<{ society: string; member: string }> }) {
  const { society, member: memberId } = await params;
  const member = await ask(readMember, society, { memberId });
  const bound = [null, society, memberId] as const;
  return (
    <>
      <PageHead
        title={member.name}
        lead={
          member.leftOn
            ? `${member.isHere ? 'Leaves' : 'Left'} on ${dayWords(member.leftOn)}.`
            : `Since ${dayWords(member.joinedOn)}. ${member.plots.length ? `Plot ${member.plots.join(', ')}.` : 'Holds no plot.'}`
        }
      >
        <Link className="button" href={`/${society}/office/members`}>
          Back to the list
        </Link>
      </PageHead>
      <Sheet title="Contact">
        <Form action={changeMemberAction.bind(...bound)} writeId={randomUUID()} submit="Save">
          <TextField name="name" label="Name" value={member.name} />
          <TextField name="email" type="email" label="E-mail address" value={member.email ?? ''} />
          <TextField name="phone" type="tel" label="Telephone" value={member.phone ?? ''} />
          <NoteField name="postal" label="Postal address" value={member.postal ?? ''} />
        </Form>
      </Sheet>
      <div className="stack">
        {member.hasAccount || member.leftOn ? null : (
          <Sheet title="Invitation">
            <p>
              They have no account. A link lets them in; it is mailed where there is an address, and shown to you once
              to copy or write down.
            </p>
            <Form action={inviteAction.bind(...bound)} writeId={randomUUID()} submit="Make a link">
              {null}
            </Form>
            <Form action={withdrawAction.bind(...bound)} writeId={randomUUID()} submit="Withdraw the link">
              {null}
            </Form>
          </Sheet>
        )}
        {member.leftOn ? null : (
          <Sheet title="Offices">
            <Form action={rolesAction.bind(...bound)} writeId={randomUUID()} submit="Set the offices">
              <fieldset>
                <legend className="sr-only">Offices</legend>
                {offices.map((office) => (
                  <TickField
                    key={office}
                    name={office}
                    label={roleName(office)}
                    ticked={member.roles.includes(office)}
                  />
                ))}
              </fieldset>
            </Form>
          </Sheet>
        )}
        <Sheet title={member.isHere ? 'Leaving' : 'Erase'}>
          {member.isErased ? (
            <p>Their name and contact details are gone.</p>
          ) : !member.isHere ? (
            <Form action={eraseAction.bind(...bound)} writeId={randomUUID()} submit="Erase name and contact" danger>
              <p>Their name and contact details go. What stood on the ground, and the book, stay.</p>
              <TickField name="sure" label="Yes, erase them" />
            </Form>
          ) : member.leftOn ? (
            <p>Until that day they come in as before, and hold what they hold. Then their name can be erased.</p>
          ) : (
            <Form action={leaveAction.bind(...bound)} writeId={randomUUID()} submit="They leave" danger>
              <TextField
                name="on"
                type="date"
                label="From"
                hint="Today, or a day to come. They come in until then; offices end at once."
              />
              <TickField name="sure" label="Yes, they leave the society" />
            </Form>
          )}
        </Sheet>
      </div>
    </>
  );
}
