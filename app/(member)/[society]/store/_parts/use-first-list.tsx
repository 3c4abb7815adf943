import Link from 'next/link';
import { Mark } from '@/app/_ui/mark';
import { amountWords, lotName, roundWords, firstReasonWords } from '@/app/_ui/store-words';
import type { Units } from '@/lib/domain/quantity/length';
import type { readStore } from '@/lib/usecases/store/read-store';

type Held = Awaited<ReturnType<typeof readStore.run>>['held'];

/** The lots in the order in which they are best used, each with its reasons; those without one keep. */
export function UseFirstList({ society, held, units }: { society: string; held: Held; units: Units }) {
  return (
    <ol className="heap-list">
      {held.map((lot) => (
        <li key={lot.id} className="store-line">
          <div>
            <p>
              <Link href={`/${society}/store/lots/${lot.id}`}>{lotName(lot)}</Link>{' '}
              <span className="soft small">{lot.place.name}</span>
            </p>
            {lot.reasons.map((reason) => (
              <p key={reason.code} className="small">
                {firstReasonWords(reason)}
              </p>
            ))}
            {lot.round ? (
              <p className="small soft">
                {lot.round.isDue ? (
                  <Mark kind="short">{roundWords(lot.round)}</Mark>
                ) : (
                  `gone over: ${roundWords(lot.round)}`
                )}
              </p>
            ) : null}
          </div>
          <p className="figure">{amountWords(lot.now.sound, lot.measure, units)}</p>
        </li>
      ))}
    </ol>
  );
}
