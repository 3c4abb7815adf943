import { Table } from '@/app/_ui/table';
import { trialFigure, trialUnit } from '@/app/_ui/trial-words';
import type { Read, ToldReport } from './told';

type Props = { read: Read; told: ToldReport };

/** Each plot with both results, by its block's number; whose it is stands only on one's own. */
export function PairTable({ read: { trial, blocks, units }, told }: Props) {
  const figure = (value: number) => trialFigure(value, trial.measure, units);
  const rows = blocks.flatMap(({ id, number, isMine }) => {
    const pair = told.pairs.find((one) => one.id === id);
    return pair
      ? [
          {
            key: id,
            mine: isMine,
            cells: [`${number}${isMine ? ' (yours)' : ''}`, figure(pair.a), figure(pair.b), figure(pair.difference)],
          },
        ]
      : [];
  });
  return (
    <Table
      caption={`Results by plot, in ${trialUnit(trial.measure, units)}`}
      columns={[
        { head: `block (${trialUnit(trial.measure, units)})` },
        { head: 'A', number: true },
        { head: 'B', number: true },
        { head: 'A less B', number: true },
      ]}
      rows={rows}
      foot={['mean', figure(told.meanA), figure(told.meanB), figure(told.difference)]}
    />
  );
}
