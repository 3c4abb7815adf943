import { randomUUID } from 'node:crypto';
import { SelectField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { badWhyWords, placeKindWords } from '@/app/_ui/store-words';
import { badWhys } from '@/lib/domain/store/lot';
import type { ReadLot } from '@/lib/usecases/store/read-lot';
import { correctLotAction, finishLotAction, moveLotAction, takeBackLotAction } from '../actions';
import { LotFields, type TypedLot } from './lot-fields';
import { typedMass, typedSmallMass } from './typed-mass';

type Props = { society: string; read: ReadLot };

/** A lot moved, finished, corrected or taken back. */
export function KeepLot({ society, read }: Props) {
  const bound = [null, society, read.id] as const;
  const others = read.places.filter(({ id }) => id !== read.place.id);
  return (
    <Sheet title="Move, finish, correct">
      {others.length && read.now.sound ? (
        <Reason ask="Move it to another place">
          <Form action={moveLotAction.bind(...bound)} writeId={randomUUID()} submit="Move it">
            <SelectField
              name="placeId"
              label="To"
              value={others[0]?.id ?? ''}
              choices={others.map(({ id, name, kind }) => ({ value: id, label: `${name} (${placeKindWords[kind]})` }))}
              hint="What it must not stand beside there, and what is too cold, is said at once."
            />
          </Form>
        </Reason>
      ) : null}
      {read.now.sound ? <FinishLot society={society} read={read} /> : null}
      <Reason ask="Correct it">
        <Form action={correctLotAction.bind(...bound)} writeId={randomUUID()} submit="Keep it so">
          <LotFields lot={typedOf(read)} units={read.units} />
        </Form>
      </Reason>
      <Reason ask="Take it back, if it was a mistake">
        <Form action={takeBackLotAction.bind(...bound)} writeId={randomUUID()} submit="Take the lot back" danger>
          <p>It goes from your store with its goings over, and counts in no forecast.</p>
          <TickField name="sure" label="Yes, it was a mistake" />
        </Form>
      </Reason>
    </Sheet>
  );
}

function FinishLot({ society, read }: Props) {
  return (
    <Reason ask="Nothing is left of it">
      <Form action={finishLotAction.bind(null, society, read.id)} writeId={randomUUID()} submit="Be done with it">
        <SelectField
          name="how"
          label="The rest of it"
          value="used"
          choices={[
            { value: 'used', label: 'was used, or given away' },
            { value: 'bad', label: 'went bad' },
          ]}
        />
        <SelectField
          name="badWhy"
          label="Why, if it went bad"
          empty="not said"
          choices={badWhys.map((value) => ({ value, label: badWhyWords[value] }))}
        />
      </Form>
    </Reason>
  );
}

function typedOf(read: ReadLot): TypedLot {
  const { keepingKey, variety, measure, putIn, pieceG, putInOn, condition, goingOverDays, curingFrom, source, notes } =
    read;
  return {
    ...{ keepingKey, measure, putInOn, condition },
    variety: variety ?? '',
    amount: measure === 'pieces' ? String(putIn) : typedMass(putIn, read.units),
    pieceWeight: pieceG === null ? '' : typedSmallMass(pieceG, read.units),
    goingOverDays: goingOverDays === null ? '' : String(goingOverDays),
    curingFrom: curingFrom ?? '',
    source: source ?? '',
    notes: notes ?? '',
  };
}
