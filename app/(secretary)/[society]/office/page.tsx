import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { PageHead } from '@/app/_ui/sheet';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { listMembers } from '@/lib/usecases/members/list-members';
import { readStanding } from '@/lib/usecases/members/read-standing';

export const metadata: Metadata = { title: 'Office' };

const rooms: readonly { path: string; name: string; says: string; forSecretary?: boolean; forMoney?: boolean }[] = [
  { path: 'deliveries', name: 'Deliveries', says: 'Plan a load, type in paper bookings, share out, tick off, settle.' },
  {
    path: 'need',
    name: 'What the ground asks for',
    says: 'Manure, straw and meals for this season and the next three: in all, by holding, and what is on order.',
  },
  {
    path: 'order',
    name: 'What to order',
    says: 'What is still wanted once old heaps and what is coming are counted, in each supplier’s own loads.',
  },
  {
    path: 'suppliers',
    name: 'Suppliers',
    says: 'Who brings manure and straw, in what loads, for what; and whether they brought what they said.',
  },
  {
    path: 'seed',
    name: 'Orders of seed',
    says: 'Pool members’ lists, buy whole packs, hand out, charge to the penny.',
    forMoney: true,
  },
  {
    path: 'plots',
    name: 'Plots and tenancies',
    says: 'Take in the list of plots, draw them, let, halve and join them.',
  },
  {
    path: 'money',
    name: 'Money',
    says: 'What each holding owes, payments and charges, deliveries to the penny, the ledger.',
  },
  {
    path: 'paths',
    name: 'Paths and drop points',
    says: 'Draw the paths, say where a lorry can drive, and where a load can be tipped.',
  },
  { path: 'members', name: 'Members', says: 'Add and invite people, give offices, hand over.' },
  {
    path: 'rotation',
    name: 'How the rotation holds',
    says: 'By season, group, trouble and plot; what if a kin had to wait longer; report and CSV.',
  },
  {
    path: 'troubles',
    name: 'Troubles found',
    says: 'Clubroot, white rot and the rest: where, how sure, how long their hosts stay away.',
  },
  {
    path: '../deliveries/season',
    name: 'After the season',
    says: 'Loads, credits and money by delivery and by holding, for the annual meeting; print and CSV.',
  },
  {
    path: '../review',
    name: 'Season review',
    says: 'The whole season on one page with charts; and for the landlord, without names.',
  },
  { path: 'crops', name: 'Crops', says: 'Add what the catalogue lacks.' },
  { path: 'settings', name: 'The society’s rules', says: 'Breaks, interval, dressing, barrow: each with its source.' },
  {
    path: 'recipes',
    name: 'The society’s recipes',
    says: 'How each crop group’s ground is made ready: digging, manure, meal, lime and when.',
  },
  { path: 'book', name: 'The book of changes', says: 'Who did what, for whom, and when.' },
  {
    path: 'export',
    name: 'Take everything out',
    says: 'All that the society has on record, as one archive of open files.',
    forSecretary: true,
  },
];

export default async function OfficePage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const [members, standing] = await Promise.all([ask(listMembers, society), ask(readStanding, society)]);
  const mine = rooms
    .filter(({ forSecretary }) => !forSecretary || canRunSociety(standing))
    .filter(({ forMoney }) => !forMoney || canKeepMoney(standing));
  const here = members.filter(({ isHere }) => isHere);
  return (
    <>
      <PageHead
        title="Office"
        lead={`${here.length} members; ${here.filter(({ hasAccount }) => !hasAccount).length} of them have no account, and ${here.filter(({ email }) => !email).length} cannot be mailed.`}
      />
      <ol className="due wide">
        {mine.map(({ path, name, says }) => (
          <li key={path} style={{ gridTemplateColumns: '1fr auto' }}>
            <div>
              <p>
                <strong>{name}</strong>
              </p>
              <p className="why">{says}</p>
            </div>
            <Link className="button" href={`/${society}/office/${path}`}>
              Open
            </Link>
          </li>
        ))}
      </ol>
    </>
  );
}
