import { dayWords } from '@/app/_ui/delivery-words';

type Props = {
  trial: {
    readonly cropName: string;
    readonly season: number;
    readonly treatmentA: string;
    readonly treatmentB: string;
    readonly measure: 'grams' | 'pieces';
    readonly joinByOn: string;
    readonly resultsByOn: string;
    readonly leastPlots: number;
  };
};

/** What a trial asks: as it was when joining opened. */
export function TrialFacts({ trial }: Props) {
  return (
    <dl>
      <dt>crop and season</dt>
      <dd>
        {trial.cropName}, {trial.season}
      </dd>
      <dt>A</dt>
      <dd>{trial.treatmentA}</dd>
      <dt>B</dt>
      <dd>{trial.treatmentB}</dd>
      <dt>what is measured</dt>
      <dd>{trial.measure === 'grams' ? 'weight from a square metre' : 'count from a square metre'}</dd>
      <dt>joining, to the end of</dt>
      <dd>{dayWords(trial.joinByOn)}</dd>
      <dt>results, to the end of</dt>
      <dd>{dayWords(trial.resultsByOn)}</dd>
      <dt>takes place with</dt>
      <dd>{trial.leastPlots} plots or more</dd>
    </dl>
  );
}
