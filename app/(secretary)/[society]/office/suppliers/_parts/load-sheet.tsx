import { randomUUID } from 'node:crypto';
import { TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { costWords, unitsWords, unitWord } from '@/app/_ui/supplier-words';
import { changeLoadAction, retireLoadAction } from '../actions';
import { type Load, LoadFields } from './load-fields';

type Props = { society: string; supplierId: string; load: Load };

/** One thing a supplier brings: what it costs, a delivery planned from it, and its change. */
export function LoadSheet({ society, supplierId, load }: Props) {
  const { id, material, of, usualGPerL, densityGPerL, priceMinor, thanks } = load;
  return (
    <Sheet title={`${material}: ${unitsWords(of, 1)}`} aside={<span>{costWords(priceMinor, thanks)}</span>}>
      {of.unit === 'bales' ? null : (
        <p>
          {usualGPerL} g a litre{densityGPerL === null ? ', the usual density' : ', as it is of theirs'}.
        </p>
      )}
      <form method="get" action={`/${society}/office/deliveries/new`} className="inline-form">
        <input type="hidden" name="load" value={id} />
        <div className="field short-field">
          <label htmlFor={`units-${id}`}>How many {unitWord(of, 2)}</label>
          <input id={`units-${id}`} name="units" defaultValue="1" inputMode="numeric" />
        </div>
        <button type="submit" className="button first">
          Plan a delivery of these
        </button>
      </form>
      <Reason ask="Change it">
        <Form action={changeLoadAction.bind(null, society, id)} writeId={randomUUID()} submit="Save">
          <LoadFields load={load} />
        </Form>
      </Reason>
      <Reason ask="They no longer bring it">
        <Form
          action={retireLoadAction.bind(null, society, supplierId, id)}
          writeId={randomUUID()}
          submit="Retire it"
          danger
        >
          <p>Deliveries that were planned from it stay as they are.</p>
          <TickField name="sure" label="Yes, they bring it no longer" />
        </Form>
      </Reason>
    </Sheet>
  );
}
