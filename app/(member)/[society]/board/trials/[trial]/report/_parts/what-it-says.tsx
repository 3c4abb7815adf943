import { trialFigure, trialUnit } from '@/app/_ui/trial-words';
import type { Read, Report, ToldReport } from './told';

type Props = { trial: Read['trial']; report: Report; told: ToldReport; units: Read['units'] };

/** In words, what these plots allow to be concluded, and what they don't: never a bare winner. */
export function WhatItSays({ trial, report, told, units }: Props) {
  const unit = trialUnit(trial.measure, units);
  const figure = (value: number) => `${trialFigure(value, trial.measure, units)} ${unit}`;
  const { interval, hiddenBelow, verdict } = told;
  return (
    <>
      <p>
        On {report.whole} plots A gave {figure(told.meanA)} and B {figure(told.meanB)}: a difference of{' '}
        <strong>{figure(told.difference)}</strong> (A less B)
        {interval ? `, and it may well be anything from ${figure(interval.low)} to ${figure(interval.high)}` : ''}.
      </p>
      {verdict === 'likely-more' || verdict === 'likely-less' ? (
        <p>
          So on plots like these {verdict === 'likely-more' ? 'A likely gave more than B' : 'B likely gave more than A'}
          ; by how much is not settled beyond that range. Intervals made like this miss the truth in about 5 cases of
          100.
        </p>
      ) : null}
      {verdict === 'cannot-tell' && interval ? (
        <p>
          So it can’t be told which of the two gave more. That is not to say that they are alike: a mean difference
          smaller than {figure(hiddenBelow ?? 0)} would not have shown.
        </p>
      ) : null}
      {interval ? null : (
        <p>
          Every plot has the same difference, so that nothing tells how far it spreads, and no interval can be had. Look
          at how it was weighed.
        </p>
      )}
      <p className="soft">
        It holds for this crop, this season and the plots that joined. Whether it holds in another year or on other
        ground this trial can’t say.
      </p>
    </>
  );
}
