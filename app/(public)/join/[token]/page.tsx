import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Empty, PageHead } from '@/app/_ui/sheet';
import { readInvitation } from '@/lib/usecases/members/join';
import { joinAction } from '../../actions';

export const metadata: Metadata = { title: 'Join' };

export default async function JoinPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const invitation = await readInvitation(token);
  if (!invitation?.open)
    return (
      <>
        <PageHead title="This link lets nobody in any more" />
        <Empty>
          It has been used, has expired or was withdrawn. Ask your secretary for a new one; that takes them a minute.
        </Empty>
      </>
    );
  return (
    <>
      <PageHead
        title={`Welcome, ${invitation.memberName}`}
        lead={`${invitation.societyName} has kept a place for you. Choose how you will sign in.`}
      />
      <div className="narrow">
        <Form
          action={joinAction.bind(null, token)}
          writeId={randomUUID()}
          submit={`Join ${invitation.societyName}`}
          labels={{ email: 'Address', newPassword: 'Password' }}
        >
          <TextField
            name="email"
            type="email"
            label="E-mail address"
            value={invitation.email ?? ''}
            autoComplete="username"
            hint="Have an account with another society? Give the same address and password."
          />
          <TextField
            name="newPassword"
            type="password"
            label="Password"
            autoComplete="new-password"
            hint="At least 10 characters; three odd words do well."
          />
        </Form>
      </div>
    </>
  );
}
