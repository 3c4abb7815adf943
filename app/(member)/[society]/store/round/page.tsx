import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { Empty, PageHead } from '@/app/_ui/sheet';
import { StoreCaution } from '@/app/_ui/store-caution';
import { foundWords, lotName } from '@/app/_ui/store-words';
import { readRound } from '@/lib/usecases/store/read-round';
import { RoundList } from '../_parts/round-list';
import { RoundNow } from '../_parts/round-now';
import { rowInHand } from '../_parts/round-rows';

export const metadata: Metadata = { title: 'The round' };

type Search = { lot?: string; went?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function RoundPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { lot, went } = await searchParams;
  const { places, units, hasLots, today } = await ask(readRound, society);
  const rows = places.flatMap((place) => place.rows);
  const due = rows.filter(({ round }) => round?.isDue).length;
  const inHand = rowInHand(places, lot);
  const done = rows.find(({ id, last }) => id === went && last?.isToday);
  const [next] = rows.flatMap(({ round }) => round?.dueOn ?? []).sort();
  return (
    <>
      <PageHead title={titleOf(due)} lead={dayWords(today)}>
        <Link className="button" href={`/${society}/store`}>
          Back to the store
        </Link>
      </PageHead>
      {done?.last ? (
        <p className="notice kept wide" role="status">
          {lotName(done)}: {foundWords(done.last, done.measure, units)}. It can be undone below.
        </p>
      ) : null}
      <div className="stack">
        {inHand ? (
          <RoundNow society={society} row={inHand} units={units} justDone={went !== undefined} />
        ) : (
          <Empty>
            {hasLots && next
              ? `All that is due is gone over. The next is due on ${dayWords(next)}; any lot below can be gone over sooner.`
              : 'Nothing is in store, so there is nothing to go over.'}{' '}
            {hasLots ? null : <Link href={`/${society}/store`}>To the store</Link>}
          </Empty>
        )}
        {rows.length ? (
          <StoreCaution keepingKeys={inHand ? [inHand.keepingKey] : rows.map((row) => row.keepingKey)} />
        ) : null}
      </div>
      <div className="stack">
        <RoundList society={society} places={places} units={units} inHand={inHand?.id} />
      </div>
    </>
  );
}

function titleOf(due: number): string {
  if (due === 0) return 'Nothing is due';
  return due === 1 ? 'One lot to go over' : `${due} lots to go over`;
}
