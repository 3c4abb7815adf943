import { SelectField } from '@/app/_ui/field';
import { dayWords } from '@/app/_ui/delivery-words';
import type { Allowed } from '@/lib/domain/placing/place-heap';

const places: Readonly<Record<Allowed, string>> = {
  lorry: 'where a lorry can drive',
  anywhere: 'anywhere on the paths',
  'drop-points': 'the drop points there are',
};

type Props = {
  siteId: string;
  deliveries: readonly { id: string; name: string; arrivesOn: string }[];
  chosen: string;
  allowed: Allowed;
};

/** Which loads, and where the heap may lie: a question that changes nothing. */
export function Asked({ siteId, deliveries, chosen, allowed }: Props) {
  return (
    <form method="get" className="row wide no-print">
      <input type="hidden" name="site" value={siteId} />
      <SelectField
        name="loads"
        label="Whose loads"
        value={chosen}
        choices={[
          ...deliveries.map(({ id, name, arrivesOn }) => ({ value: id, label: `${name}, ${dayWords(arrivesOn)}` })),
          { value: 'need', label: 'what the ground needs this season' },
        ]}
      />
      <SelectField
        name="allowed"
        label="Where it may lie"
        value={allowed}
        choices={Object.entries(places).map(([value, label]) => ({ value, label }))}
      />
      <button type="submit" className="button">
        Work it out
      </button>
    </form>
  );
}
