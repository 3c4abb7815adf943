import { randomUUID } from 'node:crypto';
import { SelectField, TextField } from '@/app/_ui/field';
import { AskForm, Form } from '@/app/_ui/form';
import { sourceWords } from '@/app/_ui/setting-words';
import { Caution, Sheet } from '@/app/_ui/sheet';
import { meals } from '@/lib/domain/catalogue/meals';
import { formatArea } from '@/lib/domain/quantity/area';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { formatJars } from '@/lib/domain/quantity/meal-jar';
import type { JarAnswer } from '@/lib/usecases/measures/ask-jar';
import { keepMeasuredAction } from '../actions';
import { Answer } from './answer';
import { number } from './numbers';
import type { Tool } from './tool';

const labels = { jarMl: 'The jar', jarWeighedG: 'A jarful', area: 'Ground', rate: 'Meal' };

/** What a jarful of meal weighs, by one weighing, and how many jars a piece of ground takes. */
export function JarMeasure({ society, read: { units, jarMl }, answer, typed, errors }: Tool<'jar'>) {
  return (
    <>
      <div className="stack">
        <Sheet title="Meal by the jar">
          <AskForm values={typed} errors={errors} submit="How many jars?" labels={labels}>
            <input type="hidden" name="what" value="jar" />
            <input type="hidden" name="ask" value="yes" />
            <SelectField
              name="meal"
              label="Meal"
              choices={meals.map(({ key, name }) => ({ value: key, label: name }))}
            />
            <div className="row">
              <TextField
                name="jarMl"
                label="The jar holds"
                value={String(jarMl)}
                suffix="mL"
                className="short-field"
                hint="a one-pound jam jar: 370"
              />
              <TextField
                name="jarWeighedG"
                label="One jarful weighs"
                suffix={units === 'metric' ? 'g' : 'oz'}
                className="short-field"
                hint="without the jar; empty: as published"
              />
            </div>
            <div className="row">
              <TextField name="area" label="For this ground" className="short-field" hint="such as 12 m2 or 1 rod" />
              <TextField
                name="rate"
                label="at"
                className="short-field"
                hint={units === 'metric' ? 'such as 100 g/m2' : 'such as 3 oz/sq yd'}
              />
            </div>
          </AskForm>
        </Sheet>
      </div>
      {answer?.ok ? <Found found={answer.value} society={society} units={units} /> : null}
    </>
  );
}

function Found({ found, society, units }: { found: JarAnswer; society: string; units: Units }) {
  const { meal, jarMl, jar, dressing } = found;
  const grams = (massG: number) =>
    units === 'metric' ? `${number(massG)} g` : `${formatMassIn(massG, units)} (${number(massG)} g)`;
  const jarG = jar.basis === 'not-known' ? null : jar.jarG;
  const title =
    jarG === null
      ? 'Weigh a jarful first'
      : dressing
        ? `${formatJars(dressing.massG, jarG)} for ${formatArea(dressing.areaCm2, units)}`
        : `A jarful weighs about ${grams(jarG)}`;
  return (
    <Answer title={title} why={<Why found={found} units={units} />}>
      <p>
        {jar.basis === 'weighed' ? `A jarful weighs ${grams(jar.jarG)}, as you weighed it.` : null}
        {jar.basis === 'estimated'
          ? `A jarful weighs about ${grams(jar.jarG)}, from ${grams(jar.leastG)} to ${grams(jar.mostG)}${jar.proxy ? `, by the figure of ${jar.proxy}` : ''}. Weigh one: meals differ.`
          : null}
        {jar.basis === 'not-known'
          ? `No published figure says what a litre of ${meal.name.toLowerCase()} weighs.`
          : null}
      </p>
      {dressing ? (
        <p>
          {formatArea(dressing.areaCm2, units)} at {formatRate(dressing.rateGPerM2, units)} takes{' '}
          {formatMassIn(dressing.massG, units)}.
        </p>
      ) : null}
      {jar.basis === 'weighed' ? (
        <Form
          action={keepMeasuredAction.bind(null, society)}
          writeId={randomUUID()}
          submit="Keep it as my jar"
          labels={labels}
        >
          <input type="hidden" name="jarMl" value={jarMl} />
          <input type="hidden" name="jarWeighedG" value={jar.jarG} />
        </Form>
      ) : null}
      <Caution>
        Strew meal low down on a still day, with your back to the wind, gloves on, and keep the dust out of eyes and
        mouth. The label on the bag goes before this.
      </Caution>
    </Answer>
  );
}

function Why({ found: { meal, jarMl, jar, dressing }, units }: { found: JarAnswer; units: Units }) {
  const { density, usualRate } = meal;
  return (
    <>
      {jar.basis === 'estimated' && density ? (
        <p>
          {number(jarMl)} mL × {density.leastGPerL} to {density.mostGPerL} g/L = {number(jar.leastG)} to{' '}
          {number(jar.mostG)} g. Source: {sourceWords(density.source)}.
        </p>
      ) : null}
      {dressing && jar.basis !== 'not-known' ? (
        <p>
          {formatMassIn(dressing.massG, units)} ÷ {number(jar.jarG)} g a jar, to the nearest quarter.
        </p>
      ) : null}
      <p className="small">
        Usual for {meal.name.toLowerCase()}: {formatRate(usualRate.leastGPerM2, units)} to{' '}
        {formatRate(usualRate.mostGPerM2, units)} ({sourceWords(usualRate.source)}).
      </p>
    </>
  );
}
