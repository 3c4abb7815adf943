import Link from 'next/link';
import { dayWords } from '@/app/_ui/delivery-words';
import { sourceWords } from '@/app/_ui/setting-words';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { SheetNitrogen } from '@/app/_ui/sheet-nitrogen';
import { layoutReasons, manureName, mealName, soilVolume, trenchesWords, soilWeight } from '@/app/_ui/sheet-words';
import { diggingMethodOf } from '@/lib/domain/catalogue/digging-methods';
import { soilOf } from '@/lib/domain/catalogue/soils';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import { formatShortLength } from '@/lib/domain/quantity/short-length';
import type { SheetRead } from '@/lib/usecases/sheets/read-sheet';

/** The order that the sheet was made to, and how it stands to the guidance on nitrogen. */
export function WhatItIs({ society, read }: { society: string; read: SheetRead }) {
  const { sheet, units, figures, total, done, bed } = read;
  const { order } = sheet;
  const { manure, meal } = order;
  const soil = soilOf(order.soil);
  const { openedMl, massG } = figures.moved.total;
  return (
    <Sheet title="The order">
      <dl>
        <dt>dig</dt>
        <dd>
          {diggingMethodOf(order.method).name.toLowerCase()}, {trenchesWords(order, total)} of{' '}
          {formatShortLength(order.trenchWidthCm, units)}, a spit {formatShortLength(order.spitDepthCm, units)}
        </dd>
        <dt>layout</dt>
        <dd>
          {order.layout === 'two-halves' ? 'along and back, in two halves' : 'straight through'}:{' '}
          {layoutReasons[order.layoutBy]}
        </dd>
        <dt>manure</dt>
        <dd>
          {manure
            ? `${formatRate(manure.bottomGPerM2 + manure.topGPerM2, units)} of ${manureName(order)}${manure.ageMonths === null ? '' : `, ${manure.ageMonths} months old`}, at ${manure.densityGPerL} g a litre, by the barrow of ${order.barrowLitres} L`
            : 'none'}
        </dd>
        <dt>meal</dt>
        <dd>
          {meal
            ? `${formatRate(meal.gPerM2, units)} of ${mealName(meal.key)}, into the ${meal.into}; ${jarWords(meal)}`
            : 'none'}
        </dd>
        <dt>straw</dt>
        <dd>{order.strawGPerM2 ? formatRate(order.strawGPerM2, units) : 'none'}</dd>
        <dt>soil</dt>
        <dd>
          {soil?.name.toLowerCase()}
          {openedMl > 0 ? `: ${soilVolume(openedMl)} to turn, ${soilWeight(massG, units)}` : ''}
        </dd>
        <dt>by</dt>
        <dd>
          {dayWords(order.from)} to {dayWords(order.until)}
        </dd>
      </dl>
      {manure || meal ? <SheetNitrogen nitrogen={read.nitrogen} order={order} units={units} /> : null}
      {done === 0 && !sheet.retiredAt ? (
        <p>
          <Link href={`/${society}/ground/beds/${bed.id}/sheet?group=${sheet.group}&season=${sheet.season}`}>
            Make it otherwise
          </Link>{' '}
          <span className="soft">while no trench is done; then it stands as it is.</span>
        </p>
      ) : null}
      <Reason ask="Where do these come from?">
        <p className="small">
          From your recipe and your habits as they stood when the sheet was made; they are kept with it, so that nothing
          moves under your feet. Soil: swell {soilSource(soil?.sources.swellMostPercent)}, weight{' '}
          {soilSource(soil?.sources.inPlaceMostGPerL)}. Straw and the share of manure below are common practice.
        </p>
      </Reason>
    </Sheet>
  );
}

function jarWords({ jarG, jarBasis }: NonNullable<SheetRead['sheet']['order']['meal']>): string {
  if (jarBasis === 'weighed') return `your jar of it weighs ${jarG} g`;
  return jarBasis === 'estimated'
    ? `a jar of it is reckoned at ${jarG} g: weigh one`
    : 'weigh a jar of it to count by the jar';
}

function soilSource(source: Parameters<typeof sourceWords>[0] | null | undefined): string {
  return source ? sourceWords(source) : 'not known';
}
