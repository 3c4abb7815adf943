import { randomUUID } from 'node:crypto';
import { SelectField, TextField, TickField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { seedAmountWords } from '@/app/_ui/seed-words';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { addItemAction, takeOffAction } from '../../actions';
import type { OrderProps } from './read';

const packRows = [0, 1, 2];

/** What can be ordered: put on the list, and taken off, until the lists close. */
export function Items({ society, read: { order, items, choices } }: OrderProps) {
  return (
    <>
      <Sheet title={items.length ? `On the list: ${items.length}` : 'Nothing is on the list yet'}>
        {items.length ? (
          <ul className="plain-list">
            {items.map(({ id, cropName, variety, unit, packs }) => (
              <li key={id} className="ruled">
                <p>
                  <strong>{cropName}</strong> “{variety}”{' '}
                  <span className="soft">
                    {packs
                      .map(
                        ({ amount, priceMinor }) => `${seedAmountWords(unit, amount)} for ${formatPounds(priceMinor)}`,
                      )
                      .join(', or ')}
                  </span>
                </p>
                <Reason ask="Take it off">
                  <Form
                    action={takeOffAction.bind(null, society, id)}
                    writeId={randomUUID()}
                    submit={`Take “${variety}” off`}
                    danger
                  >
                    {order.state === 'open' ? <p>Whoever put it down is told.</p> : null}
                  </Form>
                </Reason>
              </li>
            ))}
          </ul>
        ) : (
          <p>Add what can be ordered: a crop, a variety, and the packs that it is sold in.</p>
        )}
      </Sheet>
      <Sheet title="Add to the list">
        <Form
          action={addItemAction.bind(null, society, order.id)}
          writeId={randomUUID()}
          submit="Add it"
          labels={{ cropKey: 'Crop', variety: 'Variety', 'amount:0': 'First pack' }}
        >
          <SelectField name="cropKey" label="Crop" empty="choose" choices={choices.crops} />
          <TextField name="variety" label="Variety" />
          <TickGroup name="unit" legend="Sold by">
            <TickField kind="radio" name="unit" value="seeds" label="seeds, counted" ticked />
            <TickField kind="radio" name="unit" value="milligrams" label="weight, in grams" />
            <TickField kind="radio" name="unit" value="sets" label="sets, cloves or tubers" />
          </TickGroup>
          <TickGroup name="packs" kind="checkbox" legend="Packs that it is sold in" className="form">
            {packRows.map((at) => (
              <div key={at} className="row">
                <TextField
                  name={`amount:${at}`}
                  label={`In pack ${at + 1}`}
                  inputMode="decimal"
                  className="short-field"
                  {...(at ? { hint: 'Empty: no such pack.' } : { hint: 'Seeds, grams or sets.' })}
                />
                <TextField name={`price:${at}`} label="costs" suffix="£" inputMode="decimal" className="short-field" />
              </div>
            ))}
          </TickGroup>
        </Form>
      </Sheet>
    </>
  );
}
