import { randomUUID } from 'node:crypto';
import type { ReactNode } from 'react';
import { SelectField, TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Caution, Reason } from '@/app/_ui/sheet';
import { type CautionedWork, cautionsFor } from '@/lib/domain/catalogue/cautions';
import type { WorkKind } from '@/lib/domain/ground/work-kinds';
import { logWorkAction } from '../../../actions';
import { diggingChoices, manureChoices, mealChoices } from './work-names';

type By = 'loads' | 'weight' | 'rate';
const byWords: Readonly<Record<By, string>> = {
  loads: 'barrow-loads',
  weight: 'by weight, in all',
  rate: 'on each square metre or yard',
};

type Log = {
  readonly kind: WorkKind;
  readonly ask: string;
  readonly fields: ReactNode;
  readonly care: CautionedWork[];
};

const logs: readonly Log[] = [
  {
    kind: 'manured',
    ask: 'Log manure or compost',
    care: ['manure'],
    fields: (
      <>
        <SelectField name="materialKey" label="Which" empty="not said" choices={manureChoices} />
        <Amount by={['loads', 'weight', 'rate']} hint="such as 4 loads, 60 kg, or 5 kg/m²" />
        <TextField
          name="ageMonths"
          label="How old it was"
          suffix="months"
          inputMode="numeric"
          hint="In the heap. Empty: nobody knows, and harvests wait as for fresh."
          className="short-field"
        />
        <Placed />
        <Digging label="Dug at the same time" empty="no, or not said" />
      </>
    ),
  },
  {
    kind: 'fed',
    ask: 'Log a meal',
    care: ['meal'],
    fields: (
      <>
        <SelectField name="materialKey" label="Which" empty="not said" choices={mealChoices} />
        <Amount by={['rate', 'weight']} hint="such as 70 g/m², 4 oz, or 500 g in all" />
        <Placed />
      </>
    ),
  },
  {
    kind: 'limed',
    ask: 'Log lime',
    care: ['lime'],
    fields: (
      <>
        <p className="small">Not with manure: lime drives its ammonia off. Leave months between them.</p>
        <Amount by={['rate', 'weight']} hint="such as 200 g/m², 6 oz, or 2 kg in all" />
        <Placed />
      </>
    ),
  },
  {
    kind: 'strawed',
    ask: 'Log straw',
    care: ['straw'],
    fields: (
      <>
        <Amount by={['weight', 'loads', 'rate']} hint="such as 6 kg, or 500 g/m²" />
        <Placed />
      </>
    ),
  },
  { kind: 'dug', ask: 'Log digging', care: ['digging'], fields: <Digging label="How" empty="not said" /> },
];

/** A form for each kind of work, folded. */
export function LogWork({ society, bedId, season }: { society: string; bedId: string; season: number }) {
  return logs.map(({ kind, ask, fields, care }) => (
    <Reason key={kind} ask={ask}>
      <Form action={logWorkAction.bind(null, society, bedId)} writeId={randomUUID()} submit="Log it">
        <input type="hidden" name="kind" value={kind} />
        {fields}
        <TextField
          name="season"
          label="For the season"
          value={String(season)}
          inputMode="numeric"
          className="short-field"
        />
        <TextField name="doneOn" type="date" label="Done on" hint="With the day, waits are counted right." />
        <div className="row">
          <TextField name="partFrom" label="From the top end" hint="empty: the whole bed" className="short-field" />
          <TextField name="partLength" label="Over a length of" hint="empty: to the end" className="short-field" />
        </div>
      </Form>
      <Caution>{careWords(care)}</Caution>
    </Reason>
  ));
}

// The most pressing, and that others know better.
function careWords(care: readonly CautionedWork[]): string {
  const found = cautionsFor(care).map(({ words }) => words);
  return [...found.slice(0, 3), found.at(-1)].join(' ');
}

function Amount({ by, hint }: { by: readonly By[]; hint: string }) {
  return (
    <div className="row">
      <TextField name="amount" label="How much" hint={hint} className="short-field" />
      <SelectField
        name="amountBy"
        label="Given as"
        value={by[0]}
        choices={by.map((value) => ({ value, label: byWords[value] }))}
      />
    </div>
  );
}

function Placed() {
  return (
    <SelectField
      name="placed"
      label="Where"
      value="dug-in"
      choices={[
        { value: 'dug-in', label: 'dug in' },
        { value: 'on-top', label: 'left on top' },
      ]}
      className="short-field"
    />
  );
}

function Digging({ label, empty }: { label: string; empty: string }) {
  return (
    <div className="row">
      <SelectField name="method" label={label} empty={empty} choices={diggingChoices} />
      <TextField name="depth" label="How deep" hint="such as 50 cm or 20 in" className="short-field" />
    </div>
  );
}
