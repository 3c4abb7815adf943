import { SelectField, TextField } from '@/app/_ui/field';
import { AskForm } from '@/app/_ui/form';
import { Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { citation } from '@/lib/domain/catalogue/sources';
import { rateUnits } from '@/lib/domain/quantity/area-rate';
import { type UnitKind, unitKinds, type UnitsAnswer } from '@/lib/usecases/measures/ask-units';
import { Answer } from './answer';
import { figures } from './numbers';
import type { Tool } from './tool';

const kinds: Readonly<Record<UnitKind, { title: string; hint: string; why: string }>> = {
  length: {
    title: 'Feet, inches, metres',
    hint: 'such as 12 ft 6 in or 3.8 m',
    why: 'An inch is 25.4 mm, a foot 12 inches, a yard 3 feet, a rod 5½ yards.',
  },
  area: {
    title: 'Rods, square feet, square metres',
    hint: 'such as 10 rods or 250 m2',
    why: 'A square rod is 30¼ square yards, an acre 160 square rods; a square yard is 0.83612736 m².',
  },
  weight: {
    title: 'Pounds, hundredweight, kilograms',
    hint: 'such as 3 cwt, 12 lb 4 oz or 25 kg',
    why: 'A pound is 453.59237 g and 16 ounces; a hundredweight is 112 lb, a ton 20 hundredweight.',
  },
  rate: {
    title: 'Dressings: ounces a square yard, tons an acre',
    hint: 'such as 4',
    why: 'Each follows from the yard of 0.9144 m and the pound of 453.59237 g; a rod here is a square rod of 30¼ square yards.',
  },
};

const labels = { length: 'Length', area: 'Area', weight: 'Weight', rate: 'How much' };

/** A length, an area, a weight or a dressing in every unit that one is given in. */
export function UnitsMeasure({ answer, typed, errors }: Tool<'units'>) {
  return (
    <>
      <div className="stack">
        {unitKinds.map((of) => {
          const isAsked = typed?.of === of;
          return (
            <Sheet key={of} title={kinds[of].title}>
              <AskForm
                values={isAsked ? typed : null}
                errors={isAsked ? errors : {}}
                submit="In other units"
                labels={labels}
              >
                <input type="hidden" name="what" value="units" />
                <input type="hidden" name="of" value={of} />
                <input type="hidden" name="ask" value="yes" />
                <div className="row">
                  <TextField name={of} label={labels[of]} hint={kinds[of].hint} className="short-field" />
                  {of === 'rate' ? (
                    <SelectField
                      name="unit"
                      label="in"
                      value="oz/sq yd"
                      choices={rateUnits.map((unit) => ({ value: unit, label: unit }))}
                      className="short-field"
                    />
                  ) : null}
                </div>
              </AskForm>
            </Sheet>
          );
        })}
      </div>
      {answer?.ok ? <Found found={answer.value} asked={askedWords(typed ?? {})} /> : null}
    </>
  );
}

function askedWords({ of = '', unit = '', ...typed }: Readonly<Record<string, string>>): string {
  return `${typed[of] ?? ''} ${of === 'rate' ? unit : ''}`.trim();
}

function Found({ found: { of, amounts }, asked }: { found: UnitsAnswer; asked: string }) {
  return (
    <Answer
      title={`${asked} in other units`}
      why={
        <p>
          {kinds[of].why} ({citation('weights-1985')})
        </p>
      }
    >
      <Table
        caption="In other units"
        columns={[{ head: 'is', number: true }, { head: 'in' }]}
        rows={amounts.map(({ unit, amount }) => ({ key: unit, cells: [figures(amount), unit] }))}
      />
    </Answer>
  );
}
