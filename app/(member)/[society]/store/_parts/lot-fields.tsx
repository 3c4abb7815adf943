import { NoteField, SelectField, TextField } from '@/app/_ui/field';
import { conditionWords } from '@/app/_ui/store-words';
import { keepings } from '@/lib/domain/catalogue/keepings';
import { type LotCondition, lotConditions } from '@/lib/domain/catalogue/store-model';
import type { Units } from '@/lib/domain/quantity/length';

export type TypedLot = {
  readonly keepingKey: string;
  readonly variety: string;
  readonly measure: 'pieces' | 'grams';
  readonly amount: string;
  readonly pieceWeight: string;
  readonly putInOn: string;
  readonly condition: LotCondition;
  readonly goingOverDays: string;
  readonly curingFrom: string;
  readonly source: string;
  readonly notes: string;
};

type Props = {
  readonly lot: TypedLot;
  readonly units: Units;
  /** The kinds that come first: those that a harvest may be kept as. */
  readonly first?: readonly string[];
};

/** What is written of a lot, the same for a new one and for one that is corrected. */
export function LotFields({ lot, units, first = [] }: Props) {
  const kinds = keepings.map(({ key, name }) => ({
    value: key,
    label: name,
    ...(first.length ? { group: first.includes(key) ? 'what was harvested' : 'other kinds' } : {}),
  }));
  return (
    <>
      <div className="row">
        <SelectField
          name="keepingKey"
          label="What it is"
          value={lot.keepingKey}
          empty="choose"
          choices={kinds.toSorted((a, b) => Number(first.includes(b.value)) - Number(first.includes(a.value)))}
        />
        <TextField name="variety" label="Variety" value={lot.variety} hint="may be left empty" />
      </div>
      <div className="row">
        <TextField name="amount" label="How much" value={lot.amount} inputMode="decimal" className="short-field" />
        <SelectField
          name="measure"
          label="Counted or weighed"
          value={lot.measure}
          choices={[
            { value: 'pieces', label: 'pieces, counted' },
            { value: 'grams', label: `by weight, in ${units === 'metric' ? 'kg' : 'lb'}` },
          ]}
        />
        <TextField
          name="pieceWeight"
          label="One weighs"
          value={lot.pieceWeight}
          suffix={units === 'metric' ? 'g' : 'oz'}
          className="short-field"
          hint="if you know"
        />
      </div>
      <TextField name="putInOn" type="date" label="Put in on" value={lot.putInOn} />
      <SelectField
        name="condition"
        label="In what state"
        value={lot.condition}
        choices={(Object.keys(lotConditions) as LotCondition[]).map((value) => ({
          value,
          label: conditionWords[value],
        }))}
        hint="Sort first: what is damaged or unripe is a lot of its own, and used first."
      />
      <TextField
        name="goingOverDays"
        label="Gone over every"
        value={lot.goingOverDays}
        inputMode="numeric"
        suffix="days"
        className="short-field"
        hint="Empty: as its kind, onions fortnightly and potatoes monthly."
      />
      <TextField
        name="curingFrom"
        type="date"
        label="Laid out to cure on"
        value={lot.curingFrom}
        hint="Empty where it is not cured here. Curing has its own clock."
      />
      <TextField name="source" label="Where it came from" value={lot.source} hint="in your own words, if you like" />
      <NoteField name="notes" label="Notes" value={lot.notes} rows={2} />
    </>
  );
}
