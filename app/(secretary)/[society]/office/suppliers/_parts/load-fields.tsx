import { densityRanges } from '@/app/_ui/density-words';
import { SelectField, TextField } from '@/app/_ui/field';
import { bales } from '@/lib/domain/catalogue/bales';
import { materials } from '@/lib/domain/catalogue/materials';
import type { readSupplier } from '@/lib/usecases/suppliers/read-suppliers';

export type Load = Awaited<ReturnType<typeof readSupplier.run>>['supplier']['loads'][number];

const choices = [
  { value: 'trailer', label: 'trailer loads' },
  { value: 'm3', label: 'cubic metres' },
  { value: 'tonnes', label: 'tonnes' },
  { value: 'bales', label: 'bales' },
];

/** What a supplier brings: material, unit, density, and what it costs or what is given for it. */
export function LoadFields({ load }: { load?: Load }) {
  const weights = bales.map(({ name, leastG, mostG }) => `${name.toLowerCase()} ${leastG / 1000}–${mostG / 1000}`);
  return (
    <>
      <div className="row">
        <SelectField
          name="materialKey"
          label="Material"
          value={load?.materialKey ?? 'horse-manure'}
          choices={materials.map(({ key, name }) => ({ value: key, label: name }))}
        />
        <SelectField name="unit" label="counted in" value={load?.of.unit ?? 'trailer'} choices={choices} />
      </div>
      <TextField
        name="trailerLitres"
        label="A trailer holds"
        value={load?.of.unit === 'trailer' ? String(load.of.trailerLitres) : ''}
        inputMode="numeric"
        suffix="L"
        hint="for trailer loads; a cubic metre is 1,000 L"
        className="short-field"
      />
      <TextField
        name="baleKg"
        label="A bale weighs"
        value={load?.of.unit === 'bales' ? String(load.of.baleMassG / 1000) : ''}
        inputMode="decimal"
        suffix="kg"
        hint={`for straw by the bale; published, in kilograms: ${weights.join('; ')}`}
        className="short-field"
      />
      <TextField
        name="densityGPerL"
        label="Usual density"
        value={load?.densityGPerL == null ? '' : String(load.densityGPerL)}
        inputMode="numeric"
        suffix="g/L"
        hint={`Empty: the usual one. Published, in grams a litre: ${densityRanges}.`}
        className="short-field"
      />
      <TextField
        name="price"
        label="One costs"
        value={load?.priceMinor == null ? '' : (load.priceMinor / 100).toFixed(2)}
        inputMode="decimal"
        suffix="£"
        hint="empty: nothing agreed; 0: free"
        className="short-field"
      />
      <TextField
        name="thanks"
        label="In thanks"
        value={load?.thanks ?? ''}
        hint="beside money or in its place, such as: two trays of eggs"
      />
    </>
  );
}
