import { Table } from '@/app/_ui/table';
import type { ShownHand, ShownResult } from '@/lib/usecases/ballots/shown-result';
import { handsWords } from './ballot-words';

/** Who raised a hand for what, and whether there were enough of them. */
export function ResultTable({ title, result }: { title: string; result: ShownResult }) {
  const { counts, hands, needed, entitled } = result;
  const quorum = needed === 0 ? 'no quorum was asked for' : `quorum ${needed}, ${hands < needed ? 'not met' : 'met'}`;
  return (
    <>
      <Table
        caption={`Count of hands: ${title}`}
        columns={[{ head: 'for what' }, { head: 'hands', number: true }, { head: 'raised by' }]}
        rows={counts.map(({ id, words, hands: count, by }) => ({
          key: id,
          cells: [words, count, by.map(handWords).join('; ')],
        }))}
        foot={['in all', hands, `of ${handsWords(entitled)} that could be raised; ${quorum}`]}
      />
    </>
  );
}

function handWords({ name, plots, enteredBy }: ShownHand): string {
  const whose = plots.length ? `${plots.join(', ')} (${name})` : name;
  return enteredBy === null ? whose : `${whose}, entered by ${enteredBy}`;
}
