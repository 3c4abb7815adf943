import { ComplianceByGroup, ComplianceByPlot, Trend } from '@/app/_ui/compliance';
import { Empty, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { troubleName } from '@/lib/domain/catalogue/troubles';
import { formatArea } from '@/lib/domain/quantity/area';
import type { Units } from '@/lib/domain/quantity/length';
import type { readRotation } from '@/lib/usecases/site/read-rotation';

type Read = Extract<Awaited<ReturnType<typeof readRotation.run>>, { site: object }>;

/** How the rotation holds by group, trouble, season and plot: the same on the page and in the report. */
export function HowItHolds({ read }: { read: Read }) {
  const { byGroup, byTrouble, byPlot, trend, thisYear, units } = read;
  return (
    <>
      <Sheet title="By crop group" flush>
        {byGroup.length ? <ComplianceByGroup groups={byGroup} units={units} /> : <Empty>Nothing is recorded.</Empty>}
      </Sheet>
      <Sheet title="Short for a trouble found" flush>
        <ByTrouble byTrouble={byTrouble} units={units} />
      </Sheet>
      <Sheet title="Season by season" flush>
        <Trend seasons={trend} thisYear={thisYear} />
      </Sheet>
      <Sheet title="By plot" flush wide>
        <ComplianceByPlot plots={byPlot} units={units} />
      </Sheet>
    </>
  );
}

function ByTrouble({ byTrouble, units }: { byTrouble: Read['byTrouble']; units: Units }) {
  if (byTrouble.length === 0) return <Empty>No host stands on ground where its trouble was found.</Empty>;
  return (
    <Table
      caption="Ground short because a trouble was found there"
      columns={[{ head: 'trouble' }, { head: 'short', number: true }]}
      rows={byTrouble.map(({ troubleKey, shortCm2 }) => ({
        key: troubleKey,
        cells: [troubleName(troubleKey), formatArea(shortCm2, units)],
      }))}
    />
  );
}
