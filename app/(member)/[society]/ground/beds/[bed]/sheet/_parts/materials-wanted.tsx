import { sourceWords } from '@/app/_ui/setting-words';
import { Reason } from '@/app/_ui/sheet';
import { litres, loadsOf, manureName, mealAmount, mealName } from '@/app/_ui/sheet-words';
import { baleOf } from '@/lib/domain/catalogue/bales';
import { mealOf } from '@/lib/domain/catalogue/meals';
import { formatArea } from '@/lib/domain/quantity/area';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import { balesFor } from '@/lib/domain/quantity/bales';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import type { SheetAnswer } from '@/lib/usecases/sheets/preview-sheet';
import { Wanted } from './wanted';

type Props = { answer: SheetAnswer; units: Units };

/** The loads of manure, and how they were worked out. */
export function Manure({ answer, units }: Props) {
  const { order, figures } = answer;
  const { manure } = order;
  const { total } = figures.layers;
  if (!manure) return null;
  const rate = manure.bottomGPerM2 + manure.topGPerM2;
  const volumeMl = total.manureBottomMl + total.manureTopMl;
  return (
    <Wanted figure={`${loadsOf(total.wholeLoads)} of ${manureName(order)}`}>
      <p>
        {litres(total.manureBottomMl)} below, {litres(total.manureTopMl)} in the top: {formatRate(rate, units)}.
      </p>
      <Reason ask={`Why ${total.wholeLoads}?`}>
        <p className="small">
          {formatArea(total.areaCm2, units)} × {formatRate(rate, units)} ={' '}
          {formatMassIn(total.manureBottomG + total.manureTopG, units)}; ÷ {manure.densityGPerL} g a litre ={' '}
          {litres(volumeMl)}; ÷ a barrow of {order.barrowLitres} L = {(volumeMl / 1000 / order.barrowLitres).toFixed(2)}
          , rounded up once.
        </p>
      </Reason>
    </Wanted>
  );
}

type MealTotal = SheetAnswer['figures']['layers']['total']['meals'][number];

/** The meal by the jar, and what the jar is reckoned from. */
export function MealWanted({ answer, units, meal }: Props & { meal: MealTotal }) {
  const { order } = answer;
  const row = mealOf(meal.key);
  return (
    <Wanted figure={`${mealAmount(meal, units)} of ${mealName(meal.key)}`}>
      <Reason ask="Why so much?">
        <p className="small">
          {formatRate(order.meal?.gPerM2 ?? 0, units)} ({row ? sourceWords(row.usualRate.source) : ''}), into the{' '}
          {meal.into}.{' '}
          {order.meal?.jarBasis === 'weighed'
            ? `Your jar of it weighs ${order.meal.jarG} g.`
            : order.meal?.jarBasis === 'estimated'
              ? `A jar of it is reckoned at ${order.meal.jarG} g${row?.density?.proxy ? `, as ${row.density.proxy}` : ''}: weigh one, and say so in your habits.`
              : 'What a jar of it weighs nobody has published: weigh one, and say so in your habits.'}
        </p>
      </Reason>
    </Wanted>
  );
}

/** The straw, in small bales. */
export function Straw({ answer, units }: Props) {
  const { order, figures } = answer;
  const bale = baleOf('small');
  const { areaCm2, strawG } = figures.layers.total;
  const count = bale ? balesFor(areaCm2, order.strawGPerM2, bale.massG) : 0;
  return (
    <Wanted figure={`${formatMassIn(strawG, units)} of straw`}>
      <p>
        {count === 1 ? 'A small bale is enough.' : `${count} small bales.`}
        {bale ? (
          <span className="soft small">
            {' '}
            A bale weighs {bale.leastG / 1000} to {bale.mostG / 1000} kg: {sourceWords(bale.source)}.
          </span>
        ) : null}
      </p>
    </Wanted>
  );
}
