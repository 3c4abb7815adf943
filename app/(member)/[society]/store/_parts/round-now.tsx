import { randomUUID } from 'node:crypto';
import Link from 'next/link';
import { dayWords } from '@/app/_ui/delivery-words';
import { Form } from '@/app/_ui/form';
import { Mark } from '@/app/_ui/mark';
import { Sheet } from '@/app/_ui/sheet';
import { amountWords, foundWords, lotName, roundWords } from '@/app/_ui/store-words';
import type { Units } from '@/lib/domain/quantity/length';
import { poundG } from '@/lib/domain/quantity/mass';
import { roundAction } from '../actions';
import { RoundFields } from './round-fields';
import type { RoundRow } from './round-rows';

type Props = { society: string; row: RoundRow; units: Units; justDone: boolean };

/** The lot in hand: how much there should be, and what was found. */
export function RoundNow({ society, row, units, justDone }: Props) {
  const { id, measure, now, round, last, place, putInOn } = row;
  return (
    <Sheet
      title={
        <>
          {lotName(row)} <span className="soft small">{place.name}</span>
        </>
      }
      aside={round?.isDue ? <Mark kind="short">{roundWords(round)}</Mark> : <span className="soft">not due</span>}
    >
      <div className="round-now">
        <p className="heap-count">
          {amountWords(now.sound, measure, units)} <small>should be there</small>
        </p>
        <p className="small soft">
          {last ? `${dayWords(last.on)}: ${foundWords(last, measure, units)}.` : `Put in on ${dayWords(putInOn)}.`}{' '}
          <Link href={`/${society}/store/lots/${id}`}>Its page</Link>
        </p>
        <Form key={`${id} ${now.sound}`} action={roundAction.bind(null, society, id)} writeId={randomUUID()}>
          <RoundFields
            lotId={id}
            {...{ measure, units, justDone }}
            step={stepOf(row, units)}
            there={now.sound}
            isDue={round?.isDue ?? false}
          />
        </Form>
      </div>
    </Sheet>
  );
}

// A piece; or what a kitchen balance shows with ease, finer where there is little.
function stepOf({ measure, now }: RoundRow, units: Units): number {
  if (measure === 'pieces') return 1;
  const isLittle = now.sound < 5000;
  if (units === 'metric') return isLittle ? 100 : 500;
  return isLittle ? poundG / 4 : poundG;
}
