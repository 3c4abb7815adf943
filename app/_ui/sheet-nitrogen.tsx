import type { ReactNode } from 'react';
import { hectareLimit } from '@/lib/domain/catalogue/nitrogen-limits';
import { sources } from '@/lib/domain/catalogue/sources';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import type { RateWithin } from '@/lib/domain/nutrients/rate-within';
import type { SheetNitrogen as Nitrogen } from '@/lib/domain/sheet/sheet-nitrogen';
import type { SheetOrder } from '@/lib/domain/sheet/sheet-order';
import { nutrientWords } from './nutrient-words';
import { sourceWords } from './setting-words';
import { Reason } from './sheet';
import { manureName, timesWords } from './sheet-words';

type Props = {
  readonly nitrogen: Nitrogen;
  readonly order: SheetOrder;
  readonly units: Units;
  /** How a rate that keeps the guidance is taken; nothing where it is too late for that. */
  readonly take?: ((rateGPerM2: number) => ReactNode) | undefined;
};

/** The dressing against the guidance on nitrogen: for the year, over the rotation, and the rate that keeps it. */
export function SheetNitrogen({ nitrogen, order, units, take }: Props) {
  const { timesYear, timesMean, intervalYears, isLeast, keepsYear } = nitrogen;
  const isOver = timesYear > 1;
  return (
    <>
      <p>
        With what the ground had{isLeast ? ', as far as that is known, at least' : ''}:{' '}
        <strong>{timesWords(timesYear)} the guidance</strong> for the twelve months, {timesWords(timesMean)} as the mean
        of {intervalYears} years.{' '}
        {isOver && timesMean <= 1 ? 'Over the years it keeps; in this one it is too much at a time.' : ''}
        {isOver && timesMean > 1 ? 'It is too much for the year, and for all of them.' : ''}
      </p>
      {isOver && keepsYear ? <Keeps keepsYear={keepsYear} order={order} units={units} take={take} /> : null}
      <ThumbRule nitrogen={nitrogen} units={units} />
      <Reason ask="What guidance, and how reckoned?">
        <p className="small">
          {hectareLimit.kgPerHa} kg of nitrogen in organic manures on any hectare in any twelve months:{' '}
          {sources[hectareLimit.source].title}, {sources[hectareLimit.source].table}. It is law for farmland in
          designated zones, and guidance on a plot. It is the same as {nutrientWords(nitrogen.limitMgPerM2, units)}.
        </p>
        <ul className="small">
          <li>
            This sheet brings{' '}
            {nitrogen.broughtMgPerM2 === null
              ? 'nitrogen that nobody knows the amount of'
              : nutrientWords(nitrogen.broughtMgPerM2, units)}
            {order.meal ? ', its meal with it' : ''}.
          </li>
          {nitrogen.besideMgPerM2 > 0 ? (
            <li>
              Beside the manure the same ground has {nutrientWords(nitrogen.besideMgPerM2, units)} within twelve months
              {order.meal ? ', the meal with it' : ''}.
            </li>
          ) : null}
          {keepsYear ? (
            <li>
              {manureName(order)}: {keepsYear.nitrogenGPerT / 1000} kg of nitrogen in a tonne (
              {sourceWords(keepsYear.source)}).
            </li>
          ) : null}
        </ul>
      </Reason>
    </>
  );
}

function Keeps({
  keepsYear,
  order,
  units,
  take,
}: Pick<Props, 'order' | 'units' | 'take'> & { readonly keepsYear: RateWithin }) {
  const rate = keepsYear.rateGPerM2;
  if (rate === 0)
    return (
      <p>
        The ground has had all that the guidance allows: the rate of {manureName(order)} that keeps it is none this
        year.
      </p>
    );
  return (
    <p>
      {formatRate(rate, units)} of {manureName(order)} keeps it. {take?.(rate)}
    </p>
  );
}

/** The thumb rule beside the guidance. It sets nothing. */
function ThumbRule({ nitrogen: { thumb }, units }: Pick<Props, 'nitrogen' | 'units'>) {
  if (!thumb) return null;
  return (
    <p className="small">
      The old thumb rule, half a load in the bottom of a trench and a sprinkling of the other half on top, comes to{' '}
      {formatRate(thumb.bottomGPerM2, units)} here, and up to {formatRate(thumb.mostGPerM2, units)}:{' '}
      <strong>
        {timesWords(thumb.timesBottom)} to {timesWords(thumb.timesMost)} the guidance
      </strong>
      . It sets no need and no rate here.
    </p>
  );
}
