import { dayWords } from '@/app/_ui/delivery-words';
import { Sheet } from '@/app/_ui/sheet';
import { daysWords, placeKindWords } from '@/app/_ui/store-words';
import { Table } from '@/app/_ui/table';
import { formatTemperature } from '@/lib/domain/quantity/typed-temperature';
import type { readStore } from '@/lib/usecases/store/read-store';
import Link from 'next/link';

type Place = Awaited<ReturnType<typeof readStore.run>>['places'][number];

/** The rounds by place: what is due, how late, and what was missed. */
export function PlacesDue({ society, places }: { society: string; places: readonly Place[] }) {
  return (
    <Sheet title="By place" flush>
      <Table
        caption="Rounds by place"
        columns={[{ head: 'place' }, { head: 'lots', number: true }, { head: 'round' }]}
        rows={places.map((place) => ({
          key: place.id,
          mine: place.due > 0,
          cells: [
            <>
              <Link href={`/${society}/store/places`}>{place.name}</Link>
              <br />
              <span className="small soft">
                {placeKindWords[place.kind]}
                {place.tenthC === null ? '' : `, down to ${formatTemperature(place.tenthC)}`}
              </span>
            </>,
            place.lots,
            dueWords(place),
          ],
        }))}
      />
    </Sheet>
  );
}

function dueWords({ lots, due, mostDaysLate, missedRounds, nextOn }: Place): string {
  if (lots === 0 || nextOn === null) return 'nothing stands there';
  if (due === 0) return `next on ${dayWords(nextOn)}`;
  const late = mostDaysLate ? `, ${daysWords(mostDaysLate)} late` : ' today';
  const missed = missedRounds ? `, ${missedRounds} missed` : '';
  return `${due} due${late}${missed}`;
}
