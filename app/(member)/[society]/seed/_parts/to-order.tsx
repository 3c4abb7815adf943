import Link from 'next/link';
import { seedAmountWords, seedMassWords } from '@/app/_ui/seed-words';
import { Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import type { readSeed } from '@/lib/usecases/seed/read-seed';

type Read = Awaited<ReturnType<typeof readSeed.run>>;

/** The order list: by crop and variety what is needed, what sound seed there is, and what is to order. */
export function ToOrder({ society, read: { lines, sets, season } }: { society: string; read: Read }) {
  const open = lines.filter(({ toOrder }) => toOrder > 0).length + sets.length;
  return (
    <Sheet
      title={open ? `To order: ${open} ${open === 1 ? 'thing' : 'things'}` : 'Nothing to order'}
      aside={<span className="soft">for {season}</span>}
      wide
      flush
    >
      <Table
        caption={`Seed to order for ${season}`}
        columns={[
          { head: 'crop' },
          { head: 'to order', number: true },
          { head: 'about', number: true },
          { head: 'needed', number: true },
          { head: 'sound in the tin', number: true },
        ]}
        rows={[
          ...lines.map(({ cropKey, cropName, variety, needed, inHand, toOrder, mass }) => ({
            key: `${cropKey} ${variety}`,
            mine: toOrder > 0,
            cells: [
              <Named key="name" name={cropName} variety={variety} />,
              toOrder ? <b key="order">{seedAmountWords('seeds', toOrder)}</b> : 'nothing',
              toOrder && mass ? `${seedMassWords(mass)}${mass.isDoubtful ? ', doubtful' : ''}` : '',
              seedAmountWords('seeds', needed),
              inHand ? inHand.toLocaleString('en-GB') : '–',
            ],
          })),
          ...sets.map(({ cropKey, cropName, variety, sets: count }) => ({
            key: `sets ${cropKey} ${variety}`,
            mine: true,
            cells: [
              <Named key="name" name={cropName} variety={variety} />,
              <b key="order">{seedAmountWords('sets', count)}</b>,
              '',
              seedAmountWords('sets', count),
              '–',
            ],
          })),
        ]}
      />
      <div className="sheet-body">
        <p className="small soft">
          Seed that is past, or of which nobody knows the year or the life, is not counted; a test of your own counts by
          what came up. Sets are cloves and tubers too. <Link href={`/${society}/seed/tin`}>Look through the tin</Link>,
          or <Link href={`/${society}/seed/orders`}>put your list down for the society’s order</Link>.
        </p>
      </div>
    </Sheet>
  );
}

function Named({ name, variety }: { name: string; variety: string | null }) {
  return (
    <>
      {name}
      <div className="small soft">{variety ?? 'any variety'}</div>
    </>
  );
}
