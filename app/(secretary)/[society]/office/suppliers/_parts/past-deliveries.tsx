import Link from 'next/link';
import { dayWords, stateWords } from '@/app/_ui/delivery-words';
import { Mark } from '@/app/_ui/mark';
import { verdictMarks, verdictWords } from '@/app/_ui/residue-words';
import { Empty, Sheet } from '@/app/_ui/sheet';
import { costWords, poundsWords } from '@/app/_ui/supplier-words';
import { Table } from '@/app/_ui/table';
import type { readSupplier } from '@/lib/usecases/suppliers/read-suppliers';

type Read = Awaited<ReturnType<typeof readSupplier.run>>;
type Brings = Read['brings'][number];

/** What they brought: ordered, measured, and what it cost by the load. */
export function PastDeliveries({ society, read: { deliveries, brings } }: { society: string; read: Read }) {
  return (
    <Sheet title="What they brought" wide flush>
      {deliveries.length === 0 ? (
        <Empty>No delivery names them yet. Choose them when you plan one, and it is kept here.</Empty>
      ) : null}
      {brings.length ? (
        <div className="sheet-body">
          {brings.map((one) => (
            <p key={one.key}>{bringsWords(one)}</p>
          ))}
        </div>
      ) : null}
      <Table
        caption="Deliveries of this supplier"
        columns={[
          { head: 'delivery' },
          { head: 'ordered', number: true },
          { head: 'measured', number: true },
          { head: 'difference', number: true },
          { head: 'cost' },
          { head: 'a load', number: true },
          { head: 'residue tests' },
        ]}
        rows={deliveries.map((one) => ({
          key: one.id,
          cells: [
            <div key="name" style={{ minWidth: '10rem' }}>
              <Link href={`/${society}/office/deliveries/${one.id}`}>{one.name}</Link>
              <div className="small soft">
                {one.material}, {dayWords(one.arrivesOn)}, {stateWords(one.state)}
              </div>
            </div>,
            one.orderedLoads,
            one.heapLoads ?? '–',
            one.heapLoads === null ? '–' : signed(one.heapLoads - one.orderedLoads),
            one.priceMinor || one.thanks ? costWords(one.priceMinor || null, one.thanks) : '–',
            one.loadMinor === null ? '–' : poundsWords(one.loadMinor),
            one.tests.length ? (
              <ul key="tests" className="plain-list">
                {one.tests.map(({ testId, tested, verdict, isEnded }) => (
                  <li key={testId}>
                    <Link href={`/${society}/deliveries/${one.id}/residue/${testId}`}>{tested}</Link>{' '}
                    <Mark kind={verdictMarks[verdict]}>{verdictWords(verdict, isEnded)}</Mark>
                  </li>
                ))}
              </ul>
            ) : (
              'not tested'
            ),
          ],
        }))}
      />
    </Sheet>
  );
}

function bringsWords({ material, differencePercent, deliveries, orderedLoads, heapLoads }: Brings): string {
  const over = `over ${deliveries === 1 ? 'one delivery' : `${deliveries} deliveries`}: ${orderedLoads.toLocaleString('en-GB')} loads ordered, ${heapLoads.toLocaleString('en-GB')} measured`;
  if (differencePercent === 0) return `${material}: brings what is said, ${over}.`;
  return `${material}: brings ${Math.abs(differencePercent)} % ${differencePercent < 0 ? 'less' : 'more'} than said, ${over}.`;
}

function signed(loads: number): string {
  return loads === 0 ? '0' : `${loads > 0 ? '+' : '−'}${Math.abs(loads)}`;
}
