import { IntervalChart } from '@/app/_ui/interval-chart';
import { Empty, Sheet } from '@/app/_ui/sheet';
import { weightWords, yieldUnit } from '@/app/_ui/yield-words';
import { rateIn } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import type { seasonHarvest } from '@/lib/usecases/review/season-harvest';

type Harvest = Awaited<ReturnType<typeof seasonHarvest>>;

/** What crops yielded where at least three holdings let it be told, with how far the mean may lie off. */
export function WhatGrew({ harvest, units }: { harvest: Harvest; units: Units }) {
  const { told, withheld, agreed } = harvest;
  const unit = yieldUnit(units);
  const in2 = (gPerM2: number) => Number(rateIn(gPerM2, unit).toPrecision(2));
  return (
    <Sheet title="What the ground gave">
      {told.length ? (
        <IntervalChart
          title="Yield by crop: the mean over holdings, and where it may truly lie"
          says={told
            .map(
              ({ name, holdings, gPerM2 }) =>
                `${name}: ${weightWords(gPerM2.estimate, units)} over ${holdings} holdings`,
            )
            .join('; ')
            .concat('. Where a line is long, few or unlike holdings stand behind it.')}
          unit={unit}
          rows={told.map(({ name, holdings, gPerM2 }) => ({
            name: `${name}, ${holdings} holdings`,
            values: [],
            mean: in2(gPerM2.estimate),
            low: in2(Math.max(0, gPerM2.low)),
            high: in2(gPerM2.high),
          }))}
        />
      ) : null}
      {told.length + withheld.length === 0 ? (
        <Empty>
          {agreed === 0
            ? 'Nobody lets their results be compared yet, so that no yield is told. Holders agree to it beside the board.'
            : 'Of those who let their results be compared nobody has weighed a crop of this season that is cleared.'}
        </Empty>
      ) : null}
      {withheld.length ? (
        <p className="small">
          Withheld, since fewer than three holdings weighed it and let it be told: {withheld.join(', ').toLowerCase()}.
        </p>
      ) : null}
      {told.length ? (
        <p className="small soft">
          Of cleared ground that was weighed, from the {agreed} {agreed === 1 ? 'holding' : 'holdings'} that let it be
          told: not a sample of the site, and no proof of what another way of growing would have given.
        </p>
      ) : null}
    </Sheet>
  );
}
