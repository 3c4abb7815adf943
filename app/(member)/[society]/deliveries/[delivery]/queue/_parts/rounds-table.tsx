import { loadsWords } from '@/app/_ui/delivery-words';
import { Table } from '@/app/_ui/table';
import type { QueueProps } from './queue-result';
import { roundWords } from './queue-words';

/** The rounds: how many loads each gave, and to how many of those who had a place in it. */
export function RoundsTable({ result, unit }: Omit<QueueProps, 'nameOf'>) {
  return (
    <Table
      caption="Rounds"
      columns={[
        { head: 'round' },
        { head: 'places' },
        { head: 'given' },
        { head: 'served' },
        { head: 'then met in full', number: true },
      ]}
      rows={result.rounds.map((round) => {
        const { from, served, missed, met } = round;
        return {
          key: roundWords(round),
          cells: [
            roundWords(round),
            `${from} to ${from + served.length - 1}`,
            loadsWords(served.length, unit),
            missed.length
              ? `${served.length} of ${served.length + missed.length}; ${missed.length} missed`
              : 'all served',
            met.length,
          ],
        };
      })}
    />
  );
}
