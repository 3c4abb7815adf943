import type { Metadata } from 'next';
import Link from 'next/link';
import { redirect } from 'next/navigation';
import { Empty, PageHead } from '@/app/_ui/sheet';
import { readSession } from '@/lib/platform/session';
import { mySocieties } from '@/lib/usecases/members/own-account';

export const metadata: Metadata = { title: 'Your societies' };

export default async function SocietiesPage() {
  const session = await readSession();
  if (!session) redirect('/sign-in');
  const societies = await mySocieties(session);
  return (
    <>
      <PageHead title="Your societies" />
      {societies.length === 0 ? (
        <Empty>You are not a member of any society at present. Your secretary can invite you.</Empty>
      ) : null}
      <ul>
        {societies.map(({ slug, name }) => (
          <li key={slug}>
            <Link className="button" href={`/${slug}`}>
              {name}
            </Link>
          </li>
        ))}
      </ul>
    </>
  );
}
