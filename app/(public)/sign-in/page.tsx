import { randomUUID } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import type { Metadata } from 'next';
import Link from 'next/link';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { env } from '@/lib/platform/env';
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
      {env().demo ? <DemoSignIns /> : null}
    </>
  );
}

type SignIn = { role: string; name: string; email: string; password: string };

async function DemoSignIns() {
  const listed: SignIn[] = await readFile(`${env().stateDir}/demo-sign-ins.json`, 'utf8').then(JSON.parse, () => []);
  return (
    <Sheet title="Demo sign-ins" flush>
      <Table
        caption="Demo sign-ins"
        columns={[{ head: 'who' }, { head: 'address' }, { head: 'password' }]}
        rows={listed.map(({ role, name, email, password }) => ({
          key: email,
          cells: [`${name}, ${role}`, email, password],
        }))}
      />
      <p className="small soft" style={{ padding: '0 1rem' }}>
        Mail of the demo is shown in its <Link href="/mailbox">mailbox</Link>.
      </p>
    </Sheet>
  );
}
