import { IntervalChart } from '@/app/_ui/interval-chart';
import { trialFigure, trialUnit, trialValue } from '@/app/_ui/trial-words';
import type { Read, ToldReport } from './told';

type Props = { read: Read; told: ToldReport };

/** Both treatments, and their differences plot by plot with the interval. */
export function TrialChart({ read: { trial, blocks, units }, told }: Props) {
  const inUnit = (value: number) => trialValue(value, trial.measure, units);
  const figure = (value: number) => trialFigure(value, trial.measure, units);
  const mine = new Set(blocks.filter(({ isMine }) => isMine).map(({ id }) => id));
  const strip = (name: string, of: 'a' | 'b' | 'difference', mean: number) => ({
    name,
    values: told.pairs.map((pair) => inUnit(pair[of])),
    own: told.pairs.filter(({ id }) => mine.has(id)).map((pair) => inUnit(pair[of])),
    mean: inUnit(mean),
    low: null,
    high: null,
  });
  const { interval } = told;
  return (
    <IntervalChart
      title="What each plot gave"
      unit={trialUnit(trial.measure, units)}
      says={`${told.pairs.length} plots. A gave ${figure(told.meanA)} on average, B ${figure(told.meanB)}; A less B is ${figure(told.difference)}${interval ? `, between ${figure(interval.low)} and ${figure(interval.high)}` : ''}. Each ring is a plot${mine.size ? ', a full one yours' : ''}.`}
      rows={[
        strip('A', 'a', told.meanA),
        strip('B', 'b', told.meanB),
        {
          ...strip('A less B, plot by plot', 'difference', told.difference),
          low: interval ? inUnit(interval.low) : null,
          high: interval ? inUnit(interval.high) : null,
        },
      ]}
    />
  );
}
