import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { NoteField, TextField, TickField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { readNameStays } from '@/lib/usecases/board/name-stays';
import { readOwnDetails } from '@/lib/usecases/members/read-standing';
import {
  changeDetailsAction,
  changePasswordAction,
  nameStaysAction,
  signOutAction,
  signOutEverywhereAction,
} from './actions';

export const metadata: Metadata = { title: 'You' };

export default async function MePage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { member, units } = await ask(readOwnDetails, society);
  const { nameStays } = await ask(readNameStays, society);
  return (
    <>
      <PageHead
        title={member.name}
        lead="How the society reaches you, and what you measure in. Other members never see your address, telephone or notes."
      >
        <Link className="button" href={`/${society}/money`}>
          Your account
        </Link>
        <Link className="button" href={`/${society}/me/reminders`}>
          Reminders
        </Link>
      </PageHead>
      <Sheet title="Name and contact">
        <Form action={changeDetailsAction.bind(null, society)} writeId={randomUUID()} submit="Save">
          <TextField name="name" label="Name" value={member.name} autoComplete="name" />
          <TextField
            name="email"
            type="email"
            label="E-mail address for the society’s mail"
            value={member.email ?? ''}
          />
          <TextField name="phone" type="tel" label="Telephone" value={member.phone ?? ''} autoComplete="tel" />
          <NoteField name="postal" label="Postal address" value={member.postal ?? ''} />
          <TickGroup name="units" legend="You measure in">
            <TickField kind="radio" name="units" value="metric" label="metres" ticked={units === 'metric'} />
            <TickField
              kind="radio"
              name="units"
              value="imperial"
              label="feet and inches"
              ticked={units === 'imperial'}
            />
          </TickGroup>
        </Form>
      </Sheet>
      <div className="stack">
        <Sheet title="Password">
          <Form action={changePasswordAction} writeId={randomUUID()} submit="Change the password">
            <TextField name="password" type="password" label="Present password" autoComplete="current-password" />
            <TextField
              name="newPassword"
              type="password"
              label="New password"
              autoComplete="new-password"
              hint="At least 10 characters; three odd words do well."
            />
          </Form>
        </Sheet>
        <Sheet title="Signing out">
          <div className="row">
            <form action={signOutAction}>
              <button type="submit" className="button">
                Sign out
              </button>
            </form>
            <form action={signOutEverywhereAction}>
              <button type="submit" className="button">
                Sign out everywhere
              </button>
            </form>
          </div>
        </Sheet>
        <Sheet title="When you leave">
          <Form action={nameStaysAction.bind(null, society)} writeId={randomUUID()} submit="Save this choice">
            <TickField
              name="nameStays"
              label="My name stays on what I wrote on the board"
              hint="Without it, it says “a former member” from the day you leave."
              ticked={nameStays}
            />
          </Form>
        </Sheet>
        <Sheet title="What is on record of you">
          <p>
            Your own beds, plantings with their notes, works, sheets, troubles, bookings, shares and account, as one
            archive (.zip) of open files. It is as private as your notes are: keep it to yourself.
          </p>
          <a className="button" href={`/api/export/${society}/own`} download>
            Take out my own
          </a>
        </Sheet>
      </div>
    </>
  );
}
