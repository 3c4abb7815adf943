import Link from 'next/link';
import { dayWords, stateWords } from '@/app/_ui/delivery-words';
import { Empty, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { materialOf } from '@/lib/domain/catalogue/materials';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import type { readSiteNeed } from '@/lib/usecases/ground/read-site-need';

type Read = Extract<Awaited<ReturnType<typeof readSiteNeed.run>>, { deliveries: unknown }>;
type Props = {
  society: string;
  deliveries: Read['deliveries'];
  needG: number;
  barrowLoadG: number;
  season: number;
  units: Units;
  /** Whether the viewer plans deliveries. */
  plans: boolean;
};

/** What is on its way for the season at hand, and what that leaves to be found. */
export function OnOrder({ society, deliveries, needG, barrowLoadG, season, units, plans }: Props) {
  const coming = deliveries.filter(({ state, feedsTurns }) => state !== 'settled' && feedsTurns);
  const comingG = coming.reduce((sum, { loads, loadG }) => sum + loads * loadG, 0);
  const leftG = Math.max(0, needG - comingG);
  return (
    <Sheet title={`On order for ${season}`} flush>
      {deliveries.length === 0 ? (
        <Empty>No delivery is planned for this season. Plan one under deliveries.</Empty>
      ) : null}
      <Table
        caption={`Deliveries for ${season}`}
        columns={[
          { head: 'delivery' },
          { head: 'loads', number: true },
          { head: 'booked', number: true },
          { head: 'collected', number: true },
          { head: 'weight', number: true },
        ]}
        rows={deliveries.map((one) => ({
          key: one.id,
          cells: [
            <div key="name" style={{ minWidth: '11rem' }}>
              <Link href={`/${society}/office/deliveries/${one.id}`}>{one.name}</Link>
              <div className="small soft">
                {materialOf(one.materialKey)?.name ?? one.materialKey}, {dayWords(one.arrivesOn)},{' '}
                {stateWords(one.state)}
              </div>
            </div>,
            one.loads,
            one.askedLoads,
            one.collectedLoads,
            formatMassIn(one.loads * one.loadG, units),
          ],
        }))}
      />
      <div className="sheet-body">
        <p>
          {leftG === 0
            ? `What is on its way, ${formatMassIn(comingG, units)} of manure, covers the need.`
            : `${comingG === 0 ? 'No manure is on its way' : `${formatMassIn(comingG, units)} of manure is on its way`}; ${formatMassIn(leftG, units)}, ${Math.ceil(leftG / barrowLoadG).toLocaleString('en-GB')} barrow-loads, is still to be found.`}
        </p>
        {plans ? (
          <p className="actions">
            <Link className="button" href={`/${society}/office/order`}>
              What to order
            </Link>
          </p>
        ) : null}
        <p className="small soft">
          Manure of settled deliveries counts no longer as needed: the beds that it was booked for have had their turn.
        </p>
      </div>
    </Sheet>
  );
}
