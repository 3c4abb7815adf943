import Link from 'next/link';
import { dayWords, loadsWords, unitWord, whenWords } from '@/app/_ui/delivery-words';
import { Sheet } from '@/app/_ui/sheet';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { formatMass } from '@/lib/domain/quantity/load';
import { loadMassG } from '@/lib/domain/quantity/load-mass';
import type { Read } from './read';

/** What comes, from whom, when, where it is tipped, and what is given for it. */
export function Facts({ read: { delivery, tippedAt, keyHolder, timeZone }, society }: { read: Read; society: string }) {
  const { thousandths, unit } = delivery.amount;
  const ordered = `${(thousandths / 1000).toLocaleString('en-GB')} ${unit === 'm3' ? 'm³' : unit}`;
  const expected = loadsWords(delivery.expectedLoads, delivery.loadUnit);
  const facts: [string, string | null][] = [
    ['material', `${delivery.material}${delivery.ageMonths === null ? '' : `, ${delivery.ageMonths} months old`}`],
    ['from', delivery.supplier],
    ['amount', delivery.loadUnit === 'bale' ? expected : `${ordered}, about ${expected}`],
    [
      'heap',
      delivery.heapLoads === null
        ? null
        : `${loadsWords(delivery.heapLoads, delivery.loadUnit)} as measured, ${delivery.collectedLoads} collected`,
    ],
    ['comes', dayWords(delivery.arrivesOn)],
    ['booking closes', whenWords(delivery.closesAt, timeZone)],
    ['collect by', dayWords(delivery.collectByOn)],
    ['drop point', [tippedAt, delivery.dropPoint].filter(Boolean).join(', ') || null],
    ['key-holder', keyHolder],
    ['at the gate', delivery.gateNote],
    [
      'price',
      delivery.priceMinor
        ? `${formatPounds(delivery.priceMinor)}, split by ${unitWord(delivery.loadUnit)}s taken`
        : null,
    ],
    [delivery.priceMinor ? 'besides' : 'in return', delivery.thanks],
    delivery.loadUnit === 'bale'
      ? ['a bale', `about ${formatMass(loadMassG(delivery))}`]
      : ['barrow-load', `${delivery.barrowLitres} L, about ${formatMass(loadMassG(delivery))}`],
  ];
  return (
    <Sheet title="The load">
      <dl>
        {facts.map(([name, value]) =>
          value ? [<dt key={name}>{name}</dt>, <dd key={`${name} is`}>{value}</dd>] : null,
        )}
      </dl>
      <p>
        <Link href={`/${society}/site/heap?site=${delivery.siteId}&loads=${delivery.id}`}>
          How far the loads are wheeled from there, and from where least
        </Link>
      </p>
    </Sheet>
  );
}
