import Link from 'next/link';
import { dayWords } from '@/app/_ui/delivery-words';
import { SeasonSwitch } from '@/app/_ui/season-switch';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { loadsWanted, massBetween, type Order } from './order-words';

/** Need, less what lies there, less what is coming: what is still wanted, line by line. */
export function Reckoning({ society, read }: { society: string; read: Order }) {
  const { site, season, seasons, units, material, isStraw, wanted, need, leftLeastG, leftMostG, onOrderG } = read;
  const [first = season] = seasons;
  const loads = (massG: number) => Math.ceil(massG / read.barrowLoadG).toLocaleString('en-GB');
  const rows: [string, string, string][] = [
    [`needed for ${season}`, massBetween(need, need, units), loads(need)],
    [
      'less what is left on old heaps',
      massBetween(leftLeastG, leftMostG, units),
      loadsWanted({ leastG: leftLeastG, mostG: leftMostG }, read.barrowLoadG),
    ],
    ['less what is on order', massBetween(onOrderG, onOrderG, units), loads(onOrderG)],
  ];
  const query = { site: site.id, material: material.key };
  return (
    <Sheet
      title={
        wanted.mostG === 0
          ? `Nothing more is wanted for ${season}`
          : `Still wanted for ${season}: ${massBetween(wanted.leastG, wanted.mostG, units)}`
      }
      aside={<SeasonSwitch seasons={seasons} season={season} thisYear={first} query={query} />}
      flush
    >
      <Table
        caption={`What is still wanted for ${season}`}
        columns={[
          { head: '' },
          { head: 'weight', number: true },
          ...(isStraw ? [] : [{ head: 'barrow-loads', number: true }]),
        ]}
        rows={rows.map(([what, weight, count]) => ({
          key: what,
          cells: isStraw ? [what, weight] : [what, weight, count],
        }))}
        foot={[
          'still wanted',
          massBetween(wanted.leastG, wanted.mostG, units),
          ...(isStraw ? [] : [loadsWanted(wanted, read.barrowLoadG)]),
        ]}
      />
      <div className="sheet-body">
        <DigBy read={read} />
        <Reason ask={`Why ${massBetween(wanted.leastG, wanted.mostG, units)}?`}>
          <p className="small">
            {isStraw
              ? 'Straw as the society’s recipes ask for it, on ground with a crop planned. Straw that was fetched and is not laid yet is not counted: ask who has some.'
              : `Whole barrow-loads of ${formatMassIn(read.barrowLoadG, units)}, rounded up holding by holding as each would book them: a load begun is a load.`}{' '}
            <Link href={`/${society}/office/need?${new URLSearchParams({ ...query, season: String(season) })}`}>
              What the ground asks for
            </Link>
            , holding by holding.
          </p>
          <p className="small">
            The most is wanted where old heaps have shrunk the most. They are counted for {first} alone; what lies a
            year longer is not promised to the next.
          </p>
        </Reason>
      </div>
    </Sheet>
  );
}

function DigBy({ read: { digBy, isStraw } }: { read: Order }) {
  if (!digBy) return null;
  const { soil, from, first, last } = digBy;
  return (
    <p>
      {soil === 'heavy' ? 'Heavy ground' : 'Light ground'} is opened from {dayWords(from)}, and{' '}
      {isStraw ? 'straw' : 'manure'} is dug in by {dayWords(first)}
      {last === first ? '' : ` to ${dayWords(last)}, crop by crop`}
      {soil === 'heavy' ? ', before hard winter' : ''}: the days of the society’s recipes. So it should lie at the gate
      before; how long a supplier takes, ask them.
    </p>
  );
}
