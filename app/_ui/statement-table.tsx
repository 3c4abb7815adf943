import type { EntryKind } from '@/lib/domain/ledger/entry';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { loadsWords, shortDayWords } from './delivery-words';
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

/** A holding’s account by day: what each line is for, what it puts on or takes off (−), and what is then owed. */
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
  // The year is said once where it is the same all through: a phone has no room for it on every line.
  const dayOf = (day: string) =>
    !plain && from.slice(0, 4) === to.slice(0, 4) ? shortDayWords(day).slice(0, -5) : shortDayWords(day);
  return (
    <Table
      caption={caption}
      columns={[
        { head: 'day' },
        { head: 'what for' },
        { head: 'amount', number: true },
        { head: 'owed', number: true },
      ]}
      rows={[
        { key: 'opening', cells: [shortDayWords(from), 'brought forward', '', owedWords(openingMinor)] },
        ...lines.map((line) => ({
          key: line.entryId,
          cells: [
            dayOf(line.on),
            <WhatFor key="for" line={line} plain={plain ?? false} />,
            formatPounds(line.minor),
            owedWords(line.balanceMinor),
          ],
        })),
      ]}
      foot={[shortDayWords(to), 'carried forward', '', owedWords(closingMinor)]}
    />
  );
}

function owedWords(minor: number): string {
  return minor < 0 ? standsWords(minor) : formatPounds(minor);
}

function WhatFor({ line: { kind, words, share, minor, reversedBy }, plain }: { line: Line; plain: boolean }) {
  const what = share ? `${loadsWords(share.loads, share.loadUnit)} of “${words}”` : words;
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
