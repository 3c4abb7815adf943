import type { Choice } from '@/app/_ui/field';
import { GridSelect } from '@/app/_ui/grid-select';

type Props = { name: string; label: string; value: string; choices: readonly Choice[] };

/** One entry of the wishes: what must stand on a bed in a season, or would rather. */
export function WishCell({ choices, ...field }: Props) {
  return (
    <GridSelect {...field}>
      <option value="">free</option>
      <optgroup label="must be">
        <option value="must:open">left open</option>
        {choices.map(({ value: key, label: word }) => (
          <option key={key} value={`must:${key}`}>
            {word.replace(', any', '')}
          </option>
        ))}
      </optgroup>
      <optgroup label="rather">
        {choices.map(({ value: key, label: word }) => (
          <option key={key} value={`rather:${key}`}>
            rather {word.replace(', any', '').toLowerCase()}
          </option>
        ))}
      </optgroup>
    </GridSelect>
  );
}
