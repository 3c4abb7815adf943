import { SelectField } from './field';

type Named = { readonly id: string; readonly name: string };
type Props = {
  readonly season: number;
  readonly site: Named;
  readonly sites: readonly Named[];
  readonly materialKey: string;
  readonly materials: readonly { readonly key: string; readonly name: string }[];
};

/** Which site's ground is asked about, and as which manure its need is reckoned. */
export function ReckonAs({ season, site, sites, materialKey, materials }: Props) {
  return (
    <form method="get" className="inline-form">
      <input type="hidden" name="season" value={season} />
      {sites.length > 1 ? (
        <SelectField
          name="site"
          label="Site"
          value={site.id}
          choices={sites.map(({ id, name }) => ({ value: id, label: name }))}
        />
      ) : null}
      <SelectField
        name="material"
        label="Reckoned as"
        value={materialKey}
        choices={materials.map(({ key, name }) => ({ value: key, label: name }))}
      />
      <button type="submit" className="button">
        Reckon
      </button>
    </form>
  );
}
