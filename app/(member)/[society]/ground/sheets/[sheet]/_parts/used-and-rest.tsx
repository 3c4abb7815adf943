import { Sheet } from '@/app/_ui/sheet';
import { barrowName, litres, loadsOf, manureName, mealAmount, mealName } from '@/app/_ui/sheet-words';
import { Table } from '@/app/_ui/table';
import { formatArea } from '@/lib/domain/quantity/area';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import type { Amounts } from '@/lib/domain/trench/layers';
import type { SheetRead } from '@/lib/usecases/sheets/read-sheet';

/** What has gone in, and what the rest still needs. */
export function UsedAndRest({ read }: { read: SheetRead }) {
  const { used, rest, sheet, units, figures } = read;
  const total = figures.layers.total;
  const row = (key: string, name: string, told: (amounts: Amounts) => string) => ({
    key,
    cells: [name, told(used), told(rest)],
  });
  const manureMl = (amounts: Amounts) => amounts.manureBottomMl + amounts.manureTopMl;
  return (
    <Sheet title="Used, and still wanted" flush>
      <Table
        caption="Used, and still wanted"
        columns={[{ head: '' }, { head: 'used', number: true }, { head: 'still wanted', number: true }]}
        rows={[
          row('ground', 'ground', (amounts) => formatArea(amounts.areaCm2, units)),
          ...(sheet.order.manure ? [row('manure', manureName(sheet.order), (one) => litres(manureMl(one)))] : []),
          ...total.meals.map(({ key }, at) =>
            row(key, mealName(key), (one) => {
              const meal = one.meals[at];
              return meal && meal.massG > 0 ? mealAmount(meal, units) : '0';
            }),
          ),
          ...(total.strawG > 0 ? [row('straw', 'straw', (one) => formatMassIn(one.strawG, units))] : []),
        ]}
      />
      {sheet.order.manure ? (
        <p className="sheet-body barrow-line">
          {rest.atHandMl > 0 ? `${litres(rest.atHandMl)} left in the ${barrowName(used.barrow.number)}. ` : ''}
          {rest.loadsToFetch > 0
            ? `${loadsOf(rest.loadsToFetch)} still to fetch, of ${total.wholeLoads}.`
            : 'No load to fetch any more.'}
        </p>
      ) : null}
    </Sheet>
  );
}
