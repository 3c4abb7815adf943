import type { EntryKind } from '@/lib/domain/ledger/entry';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { dayWords, loadsWords } from './delivery-words';
import { type ShareOfPrice, shareWords, standsWords } from './money-words';
import { Reason } from './sheet';
import { Table } from './table';

type Line = {
  readonly entryId: string;
  readonly on: string;
  readonly kind: EntryKind;
  readonly words: string;
  readonly reversedBy: string | null;
  readonly minor: number;
  readonly balanceMinor: number;
  readonly share: ShareOfPrice | null;
};

type Statement = {
  readonly from: string;
  readonly to: string;
  readonly openingMinor: number;
  readonly lines: readonly Line[];
  readonly closingMinor: number;
};

/** A holding's account by day: what each line is for, what it puts on and takes off, and what is then owed. */
export function StatementTable({
  caption,
  statement,
  plain,
}: {
  caption: string;
  statement: Statement;
  plain?: boolean;
}) {
  const { from, to, openingMinor, lines, closingMinor } = statement;
  return (
    <Table
      caption={caption}
      columns={[
        { head: 'day' },
        { head: 'what for' },
        { head: 'charged', number: true },
        { head: 'paid', number: true },
        { head: 'then', number: true },
      ]}
      rows={[
        { key: 'opening', cells: [dayWords(from), 'brought forward', '', '', standsWords(openingMinor)] },
        ...lines.map((line) => ({
          key: line.entryId,
          cells: [
            dayWords(line.on),
            <WhatFor key="for" line={line} plain={plain ?? false} />,
            line.minor > 0 ? formatPounds(line.minor) : '',
            line.minor < 0 ? formatPounds(-line.minor) : '',
            standsWords(line.balanceMinor),
          ],
        })),
      ]}
      foot={[dayWords(to), 'in all', '', '', standsWords(closingMinor)]}
    />
  );
}

function WhatFor({ line: { kind, words, share, minor, reversedBy }, plain }: { line: Line; plain: boolean }) {
  const what = share ? `${loadsWords(share.loads)} of “${words}”` : words;
  return (
    <>
      {kind === 'correction' ? `taken back: ${words}` : what}
      {reversedBy ? <span className="soft small"> (taken back later)</span> : null}
      {share && plain ? (
        <span className="soft small" style={{ display: 'block' }}>
          {shareWords(share)}
        </span>
      ) : null}
      {share && !plain ? <Reason ask={`Why ${formatPounds(minor)}?`}>{shareWords(share)}</Reason> : null}
    </>
  );
}
