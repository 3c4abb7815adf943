import { Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import type { SiteNeed } from '@/lib/domain/need/site-need';
import { formatArea, percent } from '@/lib/domain/quantity/area';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { strewnWords } from './strewn-words';

type Year = SiteNeed & { readonly season: number };

/** The need of this season and the years to come, from the plans that were taken on. */
export function Coming({
  years,
  units,
  intervalYears,
}: {
  years: readonly Year[];
  units: Units;
  intervalYears: number;
}) {
  return (
    <Sheet title="This season and the years to come" wide flush>
      <Table
        caption="What the site needs, season by season"
        columns={[
          { head: 'season' },
          { head: 'loads', number: true },
          { head: 'manure', number: true },
          { head: 'due', number: true },
          { head: 'assumed, of ground without a record', number: true },
          { head: 'skipped', number: true },
          { head: 'ground with a plan', number: true },
          { head: 'straw and meals, as planned' },
        ]}
        rows={years.map((year) => ({
          key: String(year.season),
          cells: [
            year.season,
            year.loads.toLocaleString('en-GB'),
            formatMassIn(year.massG, units),
            formatArea(year.dueCm2, units),
            `1/${intervalYears} of ${formatArea(year.unloggedCm2, units)}`,
            formatArea(year.skippedCm2, units),
            percent(year.plannedCm2, year.areaCm2),
            <div key="strewn" style={{ minWidth: '11rem' }}>
              {year.strewn.length ? strewnWords(year.strewn, units) : '–'}
            </div>,
          ],
        }))}
      />
      <div className="sheet-body">
        <p className="small">
          For the years to come it is taken that what is due is manured in its year, and comes round again{' '}
          {intervalYears === 1 ? 'a year' : `${intervalYears} years`} later. Plans are those on the board; ground
          without one counts as open for manure, and brings no straw or meal. Plots without beds, and beds without a
          record, are assumed each year anew.
        </p>
      </div>
    </Sheet>
  );
}
