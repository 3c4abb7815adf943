import { Empty, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatArea } from '@/lib/domain/quantity/area';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';

type Holding = {
  readonly id: string;
  readonly plots: readonly string[];
  readonly loads: number;
  readonly massG: number;
  readonly assumedG: number;
  readonly dueCm2: number;
  readonly unloggedCm2: number;
  readonly skippedCm2: number;
};

/** What each holding needs, by plot numbers, with the reasons by area. */
export function ByHolding({ holdings, season, units }: { holdings: readonly Holding[]; season: number; units: Units }) {
  const area = (cm2: number) => (cm2 ? formatArea(cm2, units) : '–');
  const mass = (g: number) => (g ? formatMassIn(g, units) : '–');
  const sum = (of: (holding: Holding) => number) => holdings.reduce((all, holding) => all + of(holding), 0);
  return (
    <Sheet title={`By holding, for ${season}`} wide flush>
      {holdings.length === 0 ? <Empty>No plot of this site is let, so nobody needs anything yet.</Empty> : null}
      <Table
        caption={`What each holding needs for ${season}`}
        columns={[
          { head: 'plots' },
          { head: 'loads', number: true },
          { head: 'weight', number: true },
          { head: 'of it assumed', number: true },
          { head: 'due', number: true },
          { head: 'no record', number: true },
          { head: 'skipped: crop takes none', number: true },
        ]}
        rows={holdings.map((one) => ({
          key: one.id,
          cells: [
            one.plots.join(', '),
            one.loads,
            mass(one.massG),
            mass(one.assumedG),
            area(one.dueCm2),
            area(one.unloggedCm2),
            area(one.skippedCm2),
          ],
        }))}
        foot={[
          'together',
          sum(({ loads }) => loads).toLocaleString('en-GB'),
          mass(sum(({ massG }) => massG)),
          mass(sum(({ assumedG }) => assumedG)),
          area(sum(({ dueCm2 }) => dueCm2)),
          area(sum(({ unloggedCm2 }) => unloggedCm2)),
          area(sum(({ skippedCm2 }) => skippedCm2)),
        ]}
      />
    </Sheet>
  );
}
