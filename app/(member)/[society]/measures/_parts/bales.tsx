import { SelectField, TextField } from '@/app/_ui/field';
import { AskForm } from '@/app/_ui/form';
import { sourceWords } from '@/app/_ui/setting-words';
import { Caution, Sheet } from '@/app/_ui/sheet';
import { bales } from '@/lib/domain/catalogue/bales';
import { formatArea } from '@/lib/domain/quantity/area';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import type { BalesAnswer } from '@/lib/usecases/measures/ask-bales';
import { Answer } from './answer';
import { number, range } from './numbers';
import type { Tool } from './tool';

const labels = {
  baleWeight: 'Weight of a bale',
  rate: 'Straw laid',
  thickness: 'Thickness',
  area: 'Ground',
  count: 'Bales',
};

/** Bales for a piece of ground, or the ground that bales cover. */
export function BalesMeasure({ read: { units }, answer, typed, errors }: Tool<'bales'>) {
  return (
    <>
      <div className="stack">
        <Sheet title="Straw bales and ground">
          <AskForm values={typed} errors={errors} submit="How much is it?" labels={labels}>
            <input type="hidden" name="what" value="bales" />
            <input type="hidden" name="ask" value="yes" />
            <SelectField
              name="bale"
              label="Bales"
              choices={bales.map(({ key, name, leastG, mostG }) => ({
                value: key,
                label: `${name}: ${range(formatMassIn(leastG, units), formatMassIn(mostG, units))}`,
              }))}
            />
            <TextField
              name="baleWeight"
              label="One weighs"
              className="short-field"
              hint="if you know it, such as 13 kg"
            />
            <div className="row">
              <TextField
                name="rate"
                label="Straw laid"
                value={typed ? undefined : units === 'metric' ? '500 g/m²' : '15 oz/sq yd'}
                className="short-field"
                hint="such as 500 g/m2"
              />
              <TextField name="thickness" label="or how thick" className="short-field" hint="such as 5 cm" />
            </div>
            <div className="row">
              <TextField name="area" label="For this ground" className="short-field" hint="such as 12 m2 or 10 rods" />
              <TextField name="count" label="or of so many bales" inputMode="numeric" className="short-field" />
            </div>
          </AskForm>
        </Sheet>
      </div>
      {answer?.ok ? <Found found={answer.value} units={units} /> : null}
    </>
  );
}

function Found({ found: answer, units }: { found: BalesAnswer; units: Units }) {
  const { bale, baleG, isSaid, rateGPerM2, thicknessCm, strawGPerL, found } = answer;
  const [mass, rate] = [formatMassIn(baleG, units), formatRate(rateGPerM2, units)];
  const area = (areaCm2: number) => formatArea(areaCm2, units);
  const bales = (count: number) => `${number(count)} ${count === 1 ? 'bale' : 'bales'}`;
  const title =
    found.of === 'ground'
      ? `${bales(found.bales.usual)} for ${area(found.areaCm2)}`
      : `${area(found.areaCm2.usual)} from ${bales(found.bales)}`;
  const ends =
    found.of === 'ground'
      ? found.bales.least === found.bales.most
        ? bales(found.bales.most)
        : `${number(found.bales.least)} to ${bales(found.bales.most)}`
      : range(area(found.areaCm2.least), area(found.areaCm2.most));
  return (
    <Answer
      title={title}
      why={
        <>
          {thicknessCm === null ? null : (
            <p>
              {number(thicknessCm, 1)} cm over a square metre are {number(thicknessCm * 10, 1)} L; at {strawGPerL} g/L
              of loose straw, {rate}. (Source: {sourceWords('composting-materials')}.)
            </p>
          )}
          <p>
            {found.of === 'ground'
              ? `${area(found.areaCm2)} × ${rate} ÷ ${mass} a bale, rounded up: a bale is bought whole.`
              : `${bales(found.bales)} × ${mass} ÷ ${rate}, rounded down.`}
          </p>
          <p className="small">
            {isSaid ? 'The weight of a bale is yours.' : `Weight of a bale: ${sourceWords(bale.source)}.`} How much
            straw to lay is common practice: no source gives a figure.
          </p>
        </>
      }
    >
      <p>
        {isSaid ? `At ${mass} a bale.` : `At ${mass} a bale; as bales go, ${ends}. Ask the seller what one weighs.`}
      </p>
      <Caution>
        Lift a bale with somebody else, and shake it out with the wind behind you: with asthma or weak lungs leave it to
        others.
      </Caution>
    </Answer>
  );
}
