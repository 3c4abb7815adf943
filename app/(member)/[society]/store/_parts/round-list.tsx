import Link from 'next/link';
import { Mark } from '@/app/_ui/mark';
import { Sheet } from '@/app/_ui/sheet';
import { amountWords, foundWords, lotName, placeKindWords, roundWords } from '@/app/_ui/store-words';
import type { Units } from '@/lib/domain/quantity/length';
import type { Round, RoundRow } from './round-rows';
import { UndoInRound } from './undo-in-round';

type Props = { society: string; places: Round['places']; units: Units; inHand: string | undefined };

/** All of the round by place, in an order that stays: what was gone over today, what is due, and what is not yet. */
export function RoundList({ society, places, units, inHand }: Props) {
  return places.map(({ id, name, kind, rows }) => (
    <Sheet key={id} title={name} flush aside={<span className="soft">{placeKindWords[kind]}</span>}>
      <ol className="heap-list round-list">
        {rows.map((row) => (
          <Line key={row.id} society={society} row={row} units={units} isHere={row.id === inHand} />
        ))}
      </ol>
    </Sheet>
  ));
}

function Line({ society, row, units, isHere }: { society: string; row: RoundRow; units: Units; isHere: boolean }) {
  const { id, round, last, measure, now } = row;
  return (
    <li className={isHere ? 'here' : undefined} aria-current={isHere ? 'step' : undefined}>
      <div>
        <p>
          {lotName(row)} <span className="figure">{amountWords(now.sound, measure, units)}</span>
        </p>
        {last?.isToday ? (
          <p className="small">
            <Mark kind="kept">done today</Mark> {foundWords(last, measure, units)}
          </p>
        ) : round ? (
          <p className="small soft">
            {round.isDue ? <Mark kind="short">{roundWords(round)}</Mark> : roundWords(round)}
          </p>
        ) : null}
      </div>
      {last?.isToday ? (
        <UndoInRound society={society} goingOverId={last.id} name={lotName(row)} />
      ) : isHere ? (
        <span className="soft">in hand</span>
      ) : (
        <Link className="button" href={`/${society}/store/round?lot=${id}`}>
          Go over<span className="sr-only"> {lotName(row)}</span>
        </Link>
      )}
    </li>
  );
}
