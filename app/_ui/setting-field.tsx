import type { Setting } from '@/lib/domain/catalogue/setting-row';
import type { Units } from '@/lib/domain/quantity/length';
import type { Told } from '@/lib/domain/recipe/told';
import { asTyped } from '@/lib/domain/recipe/typed-value';
import { SelectField, TextField } from './field';
import { setByWords, sourceWords, valueInWords } from './setting-words';
import { Reason } from './sheet';

type Props = {
  readonly name: string;
  readonly row: Setting;
  readonly units: Units;
  /** What was set here; null where nothing was, so that the field stands empty. */
  readonly own: string | number | null;
  /** What holds while the field is empty. */
  readonly behind: Told<string | number>;
  /** Whose own it is that is set here. */
  readonly whose: 'yours' | 'society';
  /** What the catalogue's value is called, where it is no advice but a guess. */
  readonly assumed?: boolean;
};

/** A value that may be set, or left empty to follow what is behind it; whose it is and where it comes from is one tap away. */
export function SettingField({ name, row, units, own, behind, whose, assumed }: Props) {
  const value = valueInWords(row, behind.value, units);
  const by = assumed && behind.setBy === 'catalogue' ? 'assumed' : setByWords[behind.setBy];
  const followed = value.startsWith('not ') ? value : `${value}, ${by}`;
  const field = { name, label: row.name, hint: own === null ? followed : `in place of ${followed}` };
  return (
    <div className={own === null ? undefined : 'own-setting'}>
      {row.kind === 'choice' ? (
        <SelectField
          {...field}
          value={own === null ? '' : String(own)}
          empty="as it stands above"
          choices={row.choices
            .filter(({ key }) => key !== 'not-said')
            .map(({ key, name: said }) => ({ value: key, label: said }))}
        />
      ) : (
        <TextField {...field} value={own === null ? '' : asTyped(row, own, units)} inputMode="text" />
      )}
      <Reason ask={own === null ? 'Why so?' : `${whose === 'yours' ? 'Yours' : 'The society’s'}. Put it back?`}>
        <p className="small">
          {row.says} Source of {assumed ? '' : 'the catalogue’s '}
          {valueInWords(row, row.value, units)}: {sourceWords(row.source)}.
        </p>
        {own === null ? null : (
          <p className="small">
            {row.kind === 'choice' ? 'Choose “as it stands above”' : 'Empty the field'}, and keep it: then it is{' '}
            {followed}.
          </p>
        )}
      </Reason>
    </div>
  );
}
