import 'server-only';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { Masthead } from '@/app/_ui/masthead';
import { canReadCommitteePapers } from '@/lib/domain/policy/standing';
import { readStanding } from '@/lib/usecases/members/read-standing';
import { ask } from './caller';

/** The head line and frame of every page inside a society. It shows; each page's own use-case authorises. */
export async function SocietyShell({ slug, children }: { slug: string; children: ReactNode }) {
  const { societyName, memberName, plots, shared, roles, memberId } = await ask(readStanding, slug);
  const home = `/${slug}`;
  const links = [
    { href: home, label: 'This week' },
    { href: `${home}/ground`, label: 'My ground' },
    { href: `${home}/deliveries`, label: 'Deliveries' },
    { href: `${home}/site`, label: 'Site' },
    { href: `${home}/board`, label: 'Board' },
    ...(canReadCommitteePapers({ memberId, roles }) ? [{ href: `${home}/office`, label: 'Office' }] : []),
  ];
  const ground = plots.length
    ? ` · ${plots.length === 1 ? 'plot' : 'plots'} ${plots.join(', ')}${shared ? ', shared' : ''}`
    : '';
  return (
    <>
      <Masthead
        society={societyName}
        links={links}
        home={home}
        who={<Link href={`${home}/me`}>{`${memberName}${ground}`}</Link>}
      />
      <main className="page" id="main">
        {children}
      </main>
    </>
  );
}
