import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead } from '@/app/_ui/sheet';
import { DemoSignIns } from '../_parts/demo-sign-ins';
import { signInAction } from '../actions';

export const metadata: Metadata = { title: 'Sign in' };

export default async function SignInPage({ searchParams }: { searchParams: Promise<{ to?: string }> }) {
  const { to = '' } = await searchParams;
  return (
    <>
      <PageHead title="Sign in" />
      <div className="narrow">
        <Form
          action={signInAction}
          writeId={randomUUID()}
          submit="Sign in"
          labels={{ email: 'Address', password: 'Password' }}
        >
          <input type="hidden" name="to" value={to} />
          <TextField name="email" type="email" label="E-mail address" autoComplete="username" />
          <TextField name="password" type="password" label="Password" autoComplete="current-password" />
        </Form>
        <p style={{ marginTop: '1.2rem' }}>
          <Link href="/forgot">I have forgotten my password</Link>
        </p>
      </div>
      <DemoSignIns />
    </>
  );
}
