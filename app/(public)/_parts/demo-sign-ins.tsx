import { readFile } from 'node:fs/promises';
import Link from 'next/link';
import { Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { env } from '@/lib/platform/env';

type SignIn = { role: string; name: string; email: string; password: string };

/** Who can sign in to the demo; nothing anywhere else. */
export async function DemoSignIns() {
  if (!env().demo) return null;
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
