import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead } from '@/app/_ui/sheet';
import { resetAction } from '../../actions';

export const metadata: Metadata = { title: 'A new password' };

export default async function ResetPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  return (
    <>
      <PageHead
        title="Choose a new password"
        lead="Every device is signed out, and this one signed in with the new one."
      />
      <div className="narrow">
        <Form action={resetAction.bind(null, token)} writeId={randomUUID()} submit="Set the new password">
          <TextField
            name="newPassword"
            type="password"
            label="New password"
            autoComplete="new-password"
            hint="At least 10 characters; three odd words do well."
          />
        </Form>
      </div>
    </>
  );
}
