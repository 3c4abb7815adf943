import { nutrientFigure, nutrientUnit, rangeFigure } from '@/app/_ui/nutrient-words';
import { Reason } from '@/app/_ui/sheet';
import { mealName } from '@/app/_ui/sheet-words';
import { Table } from '@/app/_ui/table';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { mealOf } from '@/lib/domain/catalogue/meals';
import type { Units } from '@/lib/domain/quantity/length';
import type { Amount, FirstYear } from '@/lib/domain/nutrients/supply';
import type { SheetAnswer } from '@/lib/usecases/sheets/preview-sheet';

/** What the dressing feeds: nutrients in all, and what of its nitrogen the next crop can count on. */
export function Supplies({ answer: { supplies }, units }: { answer: SheetAnswer; units: Units }) {
  if (supplies.length === 0) return null;
  const cell = (amount: Amount | FirstYear | null) =>
    amount ? `${nutrientFigure(amount.mgPerM2, units)} (${rangeFigure(amount, units)})` : 'not known';
  return (
    <Reason ask="What does it feed?">
      <Table
        caption="What the dressing supplies"
        columns={[
          { head: nutrientUnit(units) },
          { head: 'N in all', number: true },
          { head: 'N, first year', number: true },
          { head: 'P₂O₅', number: true },
          { head: 'K₂O', number: true },
          { head: 'MgO', number: true },
        ]}
        rows={supplies.map(({ key, supply }) => ({
          key,
          cells: [
            mealOf(key) ? mealName(key) : (materialOf(key)?.name.toLowerCase() ?? key),
            cell(supply.nitrogen),
            cell(supply.firstYear),
            cell(supply.phosphate),
            cell(supply.potash),
            cell(supply.magnesia),
          ],
        }))}
      />
      <p className="small soft">
        In brackets the least and the most that any source gives. Heaps differ: only a laboratory knows yours. The bed’s
        page holds it against what the crop demands.
      </p>
    </Reason>
  );
}
