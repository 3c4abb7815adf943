import { randomUUID } from 'node:crypto';
import { TextField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { seedAmountWords } from '@/app/_ui/seed-words';
import { Sheet } from '@/app/_ui/sheet';
import { plainPounds } from '@/lib/domain/ledger/pounds';
import { arriveAction } from '../../actions';
import type { OrderProps } from './read';

/** Tick off what came of what was ordered; it stands ready as if all of it had, at the price it was listed for. */
export function TickOff({ society, read: { order, items } }: OrderProps) {
  const packs = items.flatMap((item) => item.packs.filter(({ ordered }) => ordered).map((pack) => ({ item, pack })));
  const labels = Object.fromEntries(
    packs.flatMap(({ item, pack }) => [
      [`came:${pack.id}`, `“${item.variety}”`],
      [`price:${pack.id}`, `Price of “${item.variety}”`],
    ]),
  );
  return (
    <Sheet title={order.state === 'arrived' ? 'What came: put it right' : 'Tick off what came'}>
      <Form
        action={arriveAction.bind(null, society, order.id)}
        writeId={randomUUID()}
        submit="This came"
        labels={labels}
      >
        <TickGroup name="packs" kind="checkbox" legend="By thing and pack" className="form">
          {packs.map(({ item, pack: { id, amount, ordered, arrived, priceMinor } }) => (
            <fieldset key={id}>
              <legend>
                {item.cropName} “{item.variety}”: {ordered} × {seedAmountWords(item.unit, amount)}
              </legend>
              <div className="row">
                <TextField
                  name={`came:${id}`}
                  label="Packs that came"
                  value={String(arrived ?? ordered)}
                  inputMode="numeric"
                  className="short-field"
                />
                <TextField
                  name={`price:${id}`}
                  label="Each cost"
                  suffix="£"
                  value={plainPounds(priceMinor)}
                  inputMode="decimal"
                  className="short-field"
                />
              </div>
            </fieldset>
          ))}
        </TickGroup>
        <TextField
          name="extra"
          label="Postage and the like"
          suffix="£"
          value={plainPounds(order.extraMinor)}
          inputMode="decimal"
          className="short-field"
        />
        <p className="small soft">
          Where fewer came, small wants are met first, and only what came is paid for.
          {order.state === 'ordered' ? ' Everybody who waits for some is told that it is here.' : ''}
        </p>
      </Form>
    </Sheet>
  );
}
