import { creditWords } from '@/app/_ui/delivery-words';
import { Table } from '@/app/_ui/table';
import type { QueueLine, QueueProps } from './queue-result';
import { roundWords, whyWords } from './queue-words';

/** Every share with its reason, and the round in which a claim had all it asked for. */
export function SharesTable({
  caption,
  lines,
  result,
  nameOf,
}: Pick<QueueProps, 'result' | 'nameOf'> & { caption: string; lines: readonly QueueLine[] }) {
  const metIn = new Map(result.rounds.flatMap((round) => round.met.map((id) => [id, roundWords(round)])));
  const total = (pick: (line: QueueLine) => number) => lines.reduce((sum, line) => sum + pick(line), 0);
  const number = true;
  return (
    <Table
      caption={caption}
      columns={[
        { head: 'plot' },
        { head: 'asked', number },
        { head: 'needs', number },
        { head: 'owed before', number },
        { head: 'share', number },
        { head: 'owed after', number },
        { head: 'because' },
      ]}
      rows={lines.map((line) => ({
        key: line.bookingId,
        mine: line.mine,
        cells: [
          nameOf(line.bookingId),
          line.asked,
          line.need,
          creditWords(line.creditBeforeMillionths),
          <b key="share">{line.share}</b>,
          creditWords(line.creditAfterMillionths),
          <span key="why" className="why">
            {whyWords(line, metIn.get(line.bookingId))}
          </span>,
        ],
      }))}
      foot={[
        `all ${lines.length}`,
        total(({ asked }) => asked),
        total(({ need }) => need),
        creditWords(total(({ creditBeforeMillionths }) => creditBeforeMillionths)),
        total(({ share }) => share),
        creditWords(total(({ creditAfterMillionths }) => creditAfterMillionths)),
        '',
      ]}
    />
  );
}
