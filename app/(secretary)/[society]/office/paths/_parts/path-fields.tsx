import { NoteField, SelectField, TextField } from '@/app/_ui/field';
import type { Point } from '@/lib/domain/ground/segment';
import type { SitePath } from '@/lib/domain/placing/drawn-paths';
import { formatDistance } from '@/lib/domain/placing/parse-distance';
import { formatPoints } from '@/lib/domain/placing/read-points';
import type { Units } from '@/lib/domain/quantity/length';

type PathProps = { path?: SitePath & { readonly name: string | null }; units: Units };

/** A path as it is typed: its name, its points, and what of it a lorry can drive. */
export function PathFields({ path, units }: PathProps) {
  const { unit, far, example } = wordsOf(units);
  const lorry = path?.lorry ?? 'none';
  const part = typeof lorry === 'string' ? null : lorry;
  const along = (cm: number | undefined) => (cm === undefined ? '' : formatDistance(cm, units));
  return (
    <>
      <TextField name="name" label="Name" value={path?.name ?? ''} hint="if it has one, such as: Cart track" />
      <NoteField
        name="points"
        label="Its points, one a line"
        rows={5}
        value={path ? formatPoints(path.points, units) : ''}
        hint={`${far} east of the site’s corner, a comma, and ${far.toLowerCase()} south of it, such as ${example}. From one end to the other, with each bend between.`}
      />
      <SelectField
        name="lorry"
        label="Can a lorry drive it?"
        value={part ? 'part' : (lorry as string)}
        choices={[
          { value: 'none', label: 'no' },
          { value: 'whole', label: 'yes, all of it' },
          { value: 'part', label: 'part of it, as below' },
        ]}
        className="short-field"
      />
      <div className="row">
        <TextField
          name="lorryFrom"
          label="Part from"
          value={along(part?.fromCm)}
          suffix={unit}
          inputMode="decimal"
          className="short-field"
        />
        <TextField
          name="lorryTo"
          label="Part to"
          value={along(part?.toCm)}
          suffix={unit}
          inputMode="decimal"
          className="short-field"
        />
      </div>
      <p className="small soft">Both along the path from its first point. Empty: the path’s own end.</p>
    </>
  );
}

/** A drop point as it is typed: its name and its place. */
export function DropPointFields({ dropPoint, units }: { dropPoint?: { name: string; at: Point }; units: Units }) {
  const { unit } = wordsOf(units);
  const shown = (cm: number | undefined) => (cm === undefined ? '' : formatDistance(cm, units));
  return (
    <>
      <TextField name="name" label="Name" value={dropPoint?.name ?? ''} hint="such as: Inside the gate" />
      <div className="row">
        <TextField
          name="east"
          label="East"
          value={shown(dropPoint?.at.xCm)}
          suffix={unit}
          inputMode="decimal"
          className="short-field"
        />
        <TextField
          name="south"
          label="South"
          value={shown(dropPoint?.at.yCm)}
          suffix={unit}
          inputMode="decimal"
          className="short-field"
        />
      </div>
    </>
  );
}

function wordsOf(units: Units) {
  return units === 'metric'
    ? { unit: 'm', far: 'Metres', example: '2, 27.5' }
    : { unit: 'ft', far: 'Feet', example: '6, 90' };
}
