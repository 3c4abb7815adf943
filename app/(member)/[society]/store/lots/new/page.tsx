import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { SelectField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { StoreCaution } from '@/app/_ui/store-caution';
import { amountWords, placeKindWords } from '@/app/_ui/store-words';
import { readLotForm } from '@/lib/usecases/store/read-lot-form';
import { putInAction } from '../../actions';
import { LotFields, type TypedLot } from '../../_parts/lot-fields';
import { typedMass } from '../../_parts/typed-mass';

export const metadata: Metadata = { title: 'Put a lot in' };

type Search = { harvest?: string; place?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };
type Read = Awaited<ReturnType<typeof readLotForm.run>>;

export default async function NewLotPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { harvest: harvestId, place } = await searchParams;
  const read = await ask(readLotForm, society, { harvestId: harvestId || null });
  const { places, units, harvest } = read;
  return (
    <>
      <PageHead
        title="Put a lot in"
        lead="One kind, one variety and one state make a lot: what keeps alike is counted together."
      >
        <Link className="button" href={`/${society}/store`}>
          Back to the store
        </Link>
      </PageHead>
      {places.length === 0 ? (
        <div className="wide">
          <Empty>
            {read.holdings.length === 0
              ? 'You hold no plot at present. A store goes with a plot: it is its holders’ own.'
              : 'Say first where you keep things. '}
            {read.holdings.length ? <Link href={`/${society}/store/places`}>Add a place</Link> : null}
          </Empty>
        </div>
      ) : (
        <Sheet title={harvest ? 'From the harvest' : 'What it is'}>
          {harvest ? (
            <p>
              {amountWords(harvest.amount, harvest.measure, units)}
              {harvest.measure === 'pieces' ? ' pieces' : ''} lifted. What was eaten or given away since, take off.
            </p>
          ) : null}
          <Form
            action={putInAction.bind(null, society, harvest?.id ?? null)}
            writeId={randomUUID()}
            submit="Put it in store"
          >
            <SelectField
              name="placeId"
              label="Where"
              value={place ?? places[0]?.id ?? ''}
              choices={places.map(({ id, name, kind }) => ({ value: id, label: `${name} (${placeKindWords[kind]})` }))}
            />
            <LotFields lot={typedOf(read)} units={units} first={harvest?.keepings ?? []} />
          </Form>
        </Sheet>
      )}
      <StoreCaution keepingKeys={['potato']} />
    </>
  );
}

/** What the form begins with: what is known of the harvest, or nothing but today. */
function typedOf({ harvest, today, units }: Read): TypedLot {
  return {
    keepingKey: harvest?.keepings[0] ?? '',
    variety: harvest?.variety ?? '',
    measure: harvest?.measure ?? 'pieces',
    amount: harvest ? (harvest.measure === 'pieces' ? String(harvest.amount) : typedMass(harvest.amount, units)) : '',
    pieceWeight: '',
    putInOn: today,
    condition: 'sound',
    goingOverDays: '',
    curingFrom: '',
    source: '',
    notes: '',
  };
}
