import Link from 'next/link';
import { shortDayWords } from '@/app/_ui/delivery-words';
import { kindWords } from '@/app/_ui/money-words';
import { Table } from '@/app/_ui/table';
import type { readLedger } from '@/lib/usecases/money/read-ledger';
import { amountOf, EntryLines } from './entry-lines';

type Read = Awaited<ReturnType<typeof readLedger.run>>;

/** Entries of the ledger, each with its lines, and whether it was taken back. */
export function EntriesTable({ society, entries, names }: Pick<Read, 'entries' | 'names'> & { society: string }) {
  return (
    <Table
      caption="Entries"
      columns={[{ head: 'day' }, { head: 'entry' }, { head: 'amount', number: true }]}
      rows={entries.map(({ id, on, kind, words, lines, reversedBy }) => ({
        key: id,
        cells: [
          shortDayWords(on),
          <div key="entry">
            <Link href={`/${society}/office/money/entries/${id}`}>{words}</Link>
            <span className="small soft">
              {' '}
              {kindWords[kind]}
              {reversedBy ? '; taken back later' : ''}
            </span>
            <EntryLines lines={lines} names={names} />
          </div>,
          amountOf(lines),
        ],
      }))}
    />
  );
}
