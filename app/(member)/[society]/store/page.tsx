import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { StoreCaution } from '@/app/_ui/store-caution';
import { amountWords, curingWords, lotName } from '@/app/_ui/store-words';
import { readStore } from '@/lib/usecases/store/read-store';
import { Said } from './_parts/notice';
import { PlacesDue } from './_parts/places-due';
import { UseFirstList } from './_parts/use-first-list';

export const metadata: Metadata = { title: 'The store' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ said?: string }> };

export default async function StorePage({ params, searchParams }: Props) {
  const { society } = await params;
  const { said } = await searchParams;
  const { held, places, curing, usedUp, holdings, units } = await ask(readStore, society);
  const due = places.reduce((sum, place) => sum + place.due, 0);
  return (
    <>
      <PageHead
        title="The store"
        lead="What you keep, what to use first, and what wants looking over. Nobody else sees it."
      >
        {held.length ? (
          <Link className={due ? 'button first' : 'button'} href={`/${society}/store/round`}>
            {due ? `Begin the round: ${due} ${due === 1 ? 'lot' : 'lots'}` : 'Go round'}
          </Link>
        ) : null}
        {places.length ? (
          <Link className={held.length ? 'button' : 'button first'} href={`/${society}/store/lots/new`}>
            Put a lot in
          </Link>
        ) : null}
        {held.length || usedUp.length ? (
          <Link className="button" href={`/${society}/store/lasts`}>
            Will it last?
          </Link>
        ) : null}
        {holdings.length ? (
          <Link className={places.length ? 'button' : 'button first'} href={`/${society}/store/places`}>
            Places
          </Link>
        ) : null}
      </PageHead>
      <Said said={said} />
      <div className="stack">
        {held.length ? (
          <Sheet title="Use first" flush>
            <UseFirstList society={society} held={held} units={units} />
          </Sheet>
        ) : (
          <Empty>
            {holdings.length === 0
              ? 'You hold no plot at present. A store goes with a plot: it is its holders’ own.'
              : places.length === 0
                ? 'Nothing is in store yet. Say first where you keep things, under “Places”: a shed, a string of onions, a clamp. Then put the first lot in.'
                : 'Nothing is in store yet. Put the first lot in: onions by the count, potatoes by weight.'}
          </Empty>
        )}
        {held.length ? <StoreCaution keepingKeys={held.map(({ keepingKey }) => keepingKey)} /> : null}
      </div>
      <div className="stack">
        {places.length ? <PlacesDue society={society} places={places} /> : null}
        {curing.length ? (
          <Sheet title="Curing">
            <ul className="plain-list">
              {curing.map((lot) => (
                <li key={lot.id}>
                  <p>
                    <Link href={`/${society}/store/lots/${lot.id}`}>{lotName(lot)}</Link>: {curingWords(lot.clock)}
                  </p>
                </li>
              ))}
            </ul>
          </Sheet>
        ) : null}
        {usedUp.length ? (
          <Sheet title="Used up">
            <ul>
              {usedUp.map((lot) => (
                <li key={lot.id}>
                  <Link href={`/${society}/store/lots/${lot.id}`}>{lotName(lot)}</Link>{' '}
                  <span className="small soft">
                    {amountWords(lot.putIn, lot.measure, units)} put in on {dayWords(lot.putInOn)}
                  </span>
                </li>
              ))}
            </ul>
          </Sheet>
        ) : null}
      </div>
    </>
  );
}
