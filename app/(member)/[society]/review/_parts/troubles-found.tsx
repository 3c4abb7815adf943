import { Empty, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { troubleName } from '@/lib/domain/catalogue/troubles';
import { formatArea } from '@/lib/domain/quantity/area';
import type { Units } from '@/lib/domain/quantity/length';
import type { TroubleOfSeason } from '@/lib/domain/review/troubles-of-season';

/** Troubles by kind: found this season, and the ground that still waits. Never where. */
export function TroublesFound({ troubles, units }: { troubles: readonly TroubleOfSeason[]; units: Units }) {
  return (
    <Sheet title="Troubles of the soil" flush>
      {troubles.length === 0 ? <Empty>None is on record, which is not to say that there is none.</Empty> : null}
      <Table
        caption="Troubles found, and ground that waits"
        columns={[
          { head: 'trouble' },
          { head: 'found this season', number: true },
          { head: 'ground that waits', number: true },
          { head: 'for', number: true },
        ]}
        rows={troubles.map(({ troubleKey, found, waitingCm2, breakYears }) => ({
          key: troubleKey,
          cells: [
            troubleName(troubleKey),
            found,
            formatArea(waitingCm2, units),
            breakYears === null ? 'good' : `${breakYears} years`,
          ],
        }))}
      />
    </Sheet>
  );
}
