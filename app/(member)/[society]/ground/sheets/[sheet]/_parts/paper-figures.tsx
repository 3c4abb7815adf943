import { dayWords } from '@/app/_ui/delivery-words';
import { inTimeWords, portionWords, sessionWords } from '@/app/_ui/pace-words';
import { SheetCautions } from '@/app/_ui/sheet-cautions';
import {
  limesWithManure,
  litres,
  loadsOf,
  manureName,
  mealAmount,
  mealName,
  soilWeight,
  soilVolume,
  spanWords,
  timesWords,
  trenchWord,
} from '@/app/_ui/sheet-words';
import { formatArea } from '@/lib/domain/quantity/area';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import type { SheetRead } from '@/lib/usecases/sheets/read-sheet';
import { PaperTable } from './paper-table';

/** The second page: how much of everything, trench by trench, days, and what to take care of. */
export function PaperFigures({ read }: { read: SheetRead }) {
  const { sheet, plot, bed } = read;
  return (
    <section className="paper-page">
      <header>
        <h2>
          Plot {plot.number}, bed {bed.name}: how much of everything
        </h2>
      </header>
      <div className="paper-columns">
        <Totals read={read} />
        <Days read={read} />
      </div>
      <PaperTable read={read} />
      <h3>Take care</h3>
      <SheetCautions order={sheet.order} />
    </section>
  );
}

function Totals({ read }: { read: SheetRead }) {
  const { sheet, units, figures, nitrogen } = read;
  const { order } = sheet;
  const { total } = figures.layers;
  const { openedMl, massG } = figures.moved.total;
  const volumeMl = total.manureBottomMl + total.manureTopMl;
  const carried = figures.carrying?.[order.layout === 'two-halves' ? 'twoHalves' : 'straightThrough'].carriedMetreKg;
  return (
    <div>
      <h3>In all, on {formatArea(total.areaCm2, units)}</h3>
      <ul>
        {order.manure ? (
          <li>
            <b>{loadsOf(total.wholeLoads)}</b> of {manureName(order)}: {litres(volumeMl)}, by the barrow of{' '}
            {order.barrowLitres} L; {formatRate(order.manure.bottomGPerM2 + order.manure.topGPerM2, units)}
          </li>
        ) : null}
        {total.meals.map((meal) => (
          <li key={meal.key}>
            <b>{mealAmount(meal, units)}</b> of {mealName(meal.key)}, into the {meal.into}
            {order.meal?.jarBasis === 'estimated' ? ' (the jar reckoned: weigh one)' : ''}
          </li>
        ))}
        {total.strawG > 0 ? (
          <li>
            <b>{formatMassIn(total.strawG, units)}</b> of straw
          </li>
        ) : null}
        {openedMl > 0 ? (
          <li>
            <b>{soilVolume(openedMl)}</b> of soil turned, {soilWeight(massG, units)}
            {carried ? `; ${spanWords(carried, (value) => value.toLocaleString('en-GB'))} m·kg carried` : ''}
          </li>
        ) : null}
        {order.manure || order.meal ? (
          <li>
            nitrogen: <b>{timesWords(nitrogen.timesYear)}</b> the guidance of 250 kg/ha for the year
            {nitrogen.isLeast ? ' at least' : ''}, {timesWords(nitrogen.timesMean)} as the mean of{' '}
            {nitrogen.intervalYears}
            {nitrogen.timesYear > 1 && nitrogen.keepsYear
              ? `; ${nitrogen.keepsYear.rateGPerM2 > 0 ? formatRate(nitrogen.keepsYear.rateGPerM2, units) : 'none'} keeps it`
              : ''}
          </li>
        ) : null}
        {order.limeToPhTenths ? <li>lime by a soil test: {order.limeApartMonths} months apart from manure</li> : null}
        {limesWithManure(order) ? (
          <li>{mealName(order.meal?.key ?? '')} limes: it drives off the manure’s nitrogen</li>
        ) : null}
      </ul>
    </div>
  );
}

function Days({ read }: { read: SheetRead }) {
  const { portion, sheet } = read;
  if (!portion) return null;
  const { firstSession, laterSession } = portion.plan;
  return (
    <div>
      <h3>Days</h3>
      <ul>
        <li>{inTimeWords(portion, dayWords(sheet.order.until))}</li>
        <li>
          Next time: {portionWords(portion, sheet.order)}; {sessionWords(firstSession, sheet.order)}.
        </li>
        {laterSession.totalMin === firstSession.totalMin ? null : (
          <li>Later: {sessionWords(laterSession, sheet.order)}.</li>
        )}
        <li>Leave off at the end of a {trenchWord(sheet.order)}. Guidance only: stop when you tire.</li>
      </ul>
    </div>
  );
}
