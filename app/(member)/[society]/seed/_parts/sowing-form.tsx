import { randomUUID } from 'node:crypto';
import { SelectField, TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { sowing } from '@/lib/domain/catalogue/germination-standards';
import type { Units } from '@/lib/domain/quantity/length';
import { apartShown, apartUnit } from '@/lib/domain/seed/apart-typed';
import type { PlantingLine } from '@/lib/usecases/seed/seed-needs';
import { sowAction } from '../actions';

type Props = {
  readonly society: string;
  readonly units: Units;
  readonly line: Pick<PlantingLine, 'cropKey' | 'cropName' | 'own' | 'need'>;
};

/** How one sows a crop oneself: for all plantings of it, now and later. */
export function SowingForm({ society, units, line: { cropKey, cropName, own, need } }: Props) {
  const shown = (value: number | null | undefined) => (value == null ? {} : { value: String(value) });
  const number = (name: string, label: string, suffix: string, value: number | null | undefined, usual?: number) => (
    <TextField
      name={name}
      label={label}
      suffix={suffix}
      inputMode="numeric"
      className="short-field"
      {...shown(value)}
      {...(usual === undefined ? {} : { placeholder: String(usual) })}
    />
  );
  const apart = (name: string, label: string, ownCm: number | undefined, usualCm: number | undefined) => (
    <TextField
      name={name}
      label={label}
      suffix={apartUnit(units)}
      inputMode="decimal"
      className="short-field"
      {...(ownCm === undefined ? {} : { value: apartShown(ownCm, units) })}
      {...(usualCm === undefined ? {} : { placeholder: apartShown(usualCm, units) })}
    />
  );
  const germination = need?.from === 'seed' ? need.germinationPercent : undefined;
  return (
    <Form action={sowAction.bind(null, society, cropKey)} writeId={randomUUID()} submit="Work it out my way">
      <p className="small soft">For all your {cropName.toLowerCase()}. Empty: as printed.</p>
      <div className="row">
        {apart('rows', 'Between rows', own?.apart?.rowsCm, need?.apart.rowsCm)}
        {apart('inRow', 'In the row', own?.apart?.inRowCm, need?.apart.inRowCm)}
      </div>
      <div className="row">
        {number('germinationPercent', 'Come up, of 100', '%', own?.germinationPercent, germination)}
        {number('marginPercent', 'Margin', '%', own?.marginPercent, sowing.marginPercent.value)}
        <SelectField
          name="from"
          label="Grown from"
          value={own?.from ?? ''}
          empty="as usual"
          choices={[
            { value: 'seed', label: 'seed' },
            { value: 'sets', label: 'sets, cloves or tubers' },
          ]}
        />
      </div>
    </Form>
  );
}
