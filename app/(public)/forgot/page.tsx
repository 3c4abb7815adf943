import type { Metadata } from 'next';
import { randomUUID } from 'node:crypto';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead } from '@/app/_ui/sheet';
import { forgotAction } from '../actions';

export const metadata: Metadata = { title: 'A new password' };

export default function ForgotPage() {
  return (
    <>
      <PageHead title="A new password" lead="We mail you a link that works for an hour." />
      <div className="narrow">
        <Form action={forgotAction} writeId={randomUUID()} submit="Mail me a link">
          <TextField name="email" type="email" label="E-mail address" autoComplete="username" />
        </Form>
      </div>
    </>
  );
}
