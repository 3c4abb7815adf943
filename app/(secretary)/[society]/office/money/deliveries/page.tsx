import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { readSeasonMoney } from '@/lib/usecases/money/read-reconciliation';

export const metadata: Metadata = { title: 'Deliveries to the penny' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ season?: string }> };

export default async function SeasonMoneyPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { season, seasons, rows } = await ask(readSeasonMoney, society, await searchParams);
  const room = `/${society}/office/money`;
  const total = (of: (row: (typeof rows)[number]) => number) =>
    formatPounds(rows.reduce((sum, row) => sum + of(row), 0));
  const isOff = rows.some(
    ({ priceMinor, chargedMinor, writtenOffMinor }) => priceMinor !== chargedMinor + writtenOffMinor,
  );
  return (
    <>
      <PageHead
        title={`Deliveries of ${season}, to the penny`}
        lead={
          rows.length === 0
            ? 'No delivery of that season is settled.'
            : isOff
              ? 'Something is neither charged on nor written off yet: it stands under “left over”.'
              : 'What was charged and written off is the price of each, to the penny.'
        }
      >
        <Link className="button" href={room}>
          Balances
        </Link>
      </PageHead>
      {seasons.length > 1 ? (
        <nav className="seasons wide" aria-label="Season">
          {seasons.map((one) => (
            <a key={one} href={`?season=${one}`} aria-current={one === season ? 'page' : undefined}>
              {one}
            </a>
          ))}
        </nav>
      ) : null}
      <Sheet title="Settled deliveries" flush wide>
        {rows.length === 0 ? (
          <Empty>
            A delivery stands here once the secretary has settled it; its price is then charged by loads taken.
          </Empty>
        ) : null}
        <Table
          caption="Settled deliveries"
          columns={[
            { head: 'delivery' },
            { head: 'loads', number: true },
            { head: 'price', number: true },
            { head: 'charged', number: true },
            { head: 'written off', number: true },
            { head: 'left over', number: true },
            { head: 'holders still owe', number: true },
            { head: 'supplier paid', number: true },
          ]}
          rows={rows.map((row) => ({
            key: row.delivery.id,
            mine: row.leftMinor !== 0,
            cells: [
              <div key="name">
                <Link href={`${room}/deliveries/${row.delivery.id}`}>{row.delivery.name}</Link>
                <div className="small soft">{dayWords(row.delivery.arrivesOn)}</div>
              </div>,
              row.delivery.collectedLoads,
              formatPounds(row.priceMinor),
              formatPounds(row.chargedMinor),
              formatPounds(row.writtenOffMinor),
              formatPounds(row.leftMinor),
              formatPounds(row.outstandingMinor),
              formatPounds(row.supplierPaidMinor),
            ],
          }))}
          foot={[
            'the season',
            rows.reduce((sum, { delivery }) => sum + delivery.collectedLoads, 0),
            total(({ priceMinor }) => priceMinor),
            total(({ chargedMinor }) => chargedMinor),
            total(({ writtenOffMinor }) => writtenOffMinor),
            total(({ leftMinor }) => leftMinor),
            total(({ outstandingMinor }) => outstandingMinor),
            total(({ supplierPaidMinor }) => supplierPaidMinor),
          ]}
        />
      </Sheet>
    </>
  );
}
