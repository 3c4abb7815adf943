import Link from 'next/link';
import { redirect } from 'next/navigation';
import { PageHead } from '@/app/_ui/sheet';
import { readSession } from '@/lib/platform/session';
import { mySocieties } from '@/lib/usecases/members/own-account';
import { DemoSignIns } from './_parts/demo-sign-ins';

export default async function FrontPage() {
  const session = await readSession();
  const societies = session ? await mySocieties(session) : [];
  if (societies.length === 1) redirect(`/${societies[0]?.slug}`);
  if (societies.length > 1) redirect('/societies');
  return (
    <>
      <PageHead
        title="One heap, and dozens of us to share it"
        lead="Barrowmoot keeps an allotment society’s rotation by the ground itself, works out what each bed needs, and shares out every load of manure by a rule anybody can follow with a pencil."
      >
        <Link className="button first" href="/sign-in">
          Sign in
        </Link>
        <Link className="button" href="/help">
          How it works
        </Link>
      </PageHead>
      <p className="soft">New here? Your secretary can send you an invitation, or hand it to you on paper.</p>
      <DemoSignIns />
    </>
  );
}
