import Link from 'next/link';
import { dayWords } from '@/app/_ui/delivery-words';
import { inTimeWords, minutesWords, paceNotes, portionWords, sessionsWords } from '@/app/_ui/pace-words';
import { Reason } from '@/app/_ui/sheet';
import { SheetNitrogen } from '@/app/_ui/sheet-nitrogen';
import { limesWithManure, mealName } from '@/app/_ui/sheet-words';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import type { SheetAnswer } from '@/lib/usecases/sheets/preview-sheet';
import { type Asked, askWith } from './asked';
import { BothLayouts } from './both-layouts';
import { Manure, MealWanted, Straw } from './materials-wanted';
import { Soil, Trenches } from './soil-wanted';
import { Supplies } from './supplies';
import { Wanted } from './wanted';

type Props = { society: string; answer: SheetAnswer; units: Units; asked: Asked };

/** What the sheet would want, figure by figure, each with its reason one tap away. */
export function WhatItWants({ society, answer, units, asked }: Props) {
  const { order, figures, nitrogen, portion, limedUntil } = answer;
  const parts = { answer, units, asked };
  return (
    <div className="wants">
      <Trenches {...parts} />
      {order.manure ? <Manure {...parts} /> : <p>No manure: the recipe has none for this group.</p>}
      {figures.layers.total.meals.map((meal) => (
        <MealWanted key={meal.key} {...parts} meal={meal} />
      ))}
      {order.strawGPerM2 > 0 ? <Straw {...parts} /> : null}
      <Soil {...parts} />
      {figures.carrying ? <BothLayouts {...parts} carrying={figures.carrying} /> : null}
      {portion ? (
        <Wanted figure={sessionsWords(portion.plan.sessions, order)}>
          <p>{inTimeWords(portion, dayWords(order.until))}</p>
          {isByTheClock(portion.plan) ? (
            <p>
              Reckoned by the clock, since you have not said your age: say it, with your pace, among{' '}
              <Link href={`/${society}/ground/recipes`}>your habits</Link>.
            </p>
          ) : null}
          <Reason ask="Why so many?">
            <ul className="small">
              <li>{minutesWords(portion, order, figures.digging.plan.trenches.length)}.</li>
              <li>The first time: {portionWords(portion, order)}.</li>
              {paceNotes(portion.plan).map((note) => (
                <li key={note}>{note}</li>
              ))}
            </ul>
          </Reason>
        </Wanted>
      ) : null}
      {order.manure || order.meal ? (
        <Wanted figure="Nitrogen">
          <SheetNitrogen
            nitrogen={nitrogen}
            order={order}
            units={units}
            take={(rate) => (
              <Link className="button" href={askWith(asked, { rateGPerM2: `${rate} g/m²` })}>
                Take {formatRate(rate, units)}
              </Link>
            )}
          />
          <Supplies answer={answer} units={units} />
        </Wanted>
      ) : null}
      {limedUntil ? (
        <p className="notice short">
          This ground was limed: no manure on it before {dayWords(limedUntil.earliestOn)}. Lime drives its nitrogen off.
        </p>
      ) : null}
      {limesWithManure(order) ? (
        <p className="notice short">
          A meal of {mealName(order.meal?.key ?? '')} raises the pH as lime does: laid with manure it drives the
          nitrogen off. Take another meal, or give it {order.limeApartMonths} months apart.
        </p>
      ) : null}
      {order.limeToPhTenths && order.manure ? (
        <p className="small">
          The recipe wants lime, up to pH {(order.limeToPhTenths / 10).toFixed(1)} by a soil test: never with the
          manure, {order.limeApartMonths} months apart.
        </p>
      ) : null}
    </div>
  );
}

type Portion = NonNullable<SheetAnswer['portion']>;

function isByTheClock({ basis }: Portion['plan']): boolean {
  return basis.code === 'by-the-clock' && basis.why === 'age-not-said';
}
