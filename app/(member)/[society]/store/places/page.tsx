import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { Form } from '@/app/_ui/form';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { placeKindWords } from '@/app/_ui/store-words';
import { formatTemperature } from '@/lib/domain/quantity/typed-temperature';
import { readPlaces } from '@/lib/usecases/store/read-places';
import { addPlaceAction, changePlaceAction, retirePlaceAction } from '../actions';
import { Said } from '../_parts/notice';
import { PlaceForm } from '../_parts/place-form';

export const metadata: Metadata = { title: 'Store places' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ said?: string }> };

export default async function PlacesPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { said } = await searchParams;
  const { holdings, places } = await ask(readPlaces, society);
  return (
    <>
      <PageHead
        title="Where it is kept"
        lead="Lots at one place are gone over in one round, and stand beside each other."
      >
        <Link className="button" href={`/${society}/store`}>
          Back to the store
        </Link>
        {places.length ? (
          <Link className="button first" href={`/${society}/store/lots/new`}>
            Put a lot in
          </Link>
        ) : null}
      </PageHead>
      <Said said={said} />
      <div className="stack">
        {places.length === 0 ? <Empty>No place yet. Say below where you keep things: a shed will do.</Empty> : null}
        {places.map((place) => (
          <Sheet key={place.id} title={place.name} aside={<span className="soft">{placeKindWords[place.kind]}</span>}>
            <p>
              {place.tenthC === null
                ? 'How cold it gets there is not known.'
                : `It gets down to ${formatTemperature(place.tenthC)}.`}{' '}
              {place.lots === 0 ? 'Nothing stands there.' : `${place.lots} ${place.lots === 1 ? 'lot' : 'lots'}.`}
            </p>
            <Reason ask="Change it">
              <PlaceForm action={changePlaceAction.bind(null, society, place.id)} submit="Keep it so" place={place} />
            </Reason>
            {place.lots === 0 ? (
              <Form
                action={retirePlaceAction.bind(null, society, place.id)}
                writeId={randomUUID()}
                submit="Be done with this place"
                danger
              >
                {null}
              </Form>
            ) : null}
          </Sheet>
        ))}
      </div>
      <div className="stack">
        {holdings.map(({ id, plots }) => (
          <Sheet key={id} title={holdings.length > 1 ? `Another place, plot ${plots.join(', ')}` : 'Another place'}>
            <PlaceForm action={addPlaceAction.bind(null, society, id)} submit="Add it" />
          </Sheet>
        ))}
        {holdings.length === 0 ? (
          <Empty>You hold no plot at present. A store goes with a plot: it is its holders’ own.</Empty>
        ) : null}
      </div>
    </>
  );
}
