import { SelectField } from '@/app/_ui/field';
import { questions } from '@/lib/domain/comparison/bed-result';
import type { readResults } from '@/lib/usecases/notes/read-results';
import { questionWords } from '../../_parts/results-words';

type Read = Awaited<ReturnType<typeof readResults.run>>;

/** What is to be compared, under an address of its own. */
export function AskResults({ crops, results }: Pick<Read, 'crops' | 'results'>) {
  if (crops.length === 0) return null;
  const { seasons = [], season = null, question, varieties = [], variety = null } = results ?? {};
  return (
    <form className="row wide no-print" method="get">
      <SelectField
        name="crop"
        label="Crop"
        value={results?.crop.key ?? ''}
        choices={withOwn(crops, results).map(({ key, name }) => ({ value: key, label: name }))}
      />
      <SelectField
        name="by"
        label="By"
        value={question ?? ''}
        choices={questions.map((key) => ({ value: key, label: questionWords[key] }))}
      />
      {seasons.length ? (
        <SelectField
          name="season"
          label="Season"
          value={String(season)}
          choices={seasons.map((year) => ({ value: String(year), label: String(year) }))}
          className="short-field"
        />
      ) : null}
      {varieties.length ? (
        <SelectField
          name="variety"
          label="Variety"
          empty="all"
          value={variety?.key ?? ''}
          choices={varieties.map(({ key, name }) => ({ value: key, label: name }))}
        />
      ) : null}
      <button type="submit" className="button">
        Show
      </button>
    </form>
  );
}

// A crop that was asked for by its address stands in the list, though nothing may be told of it.
function withOwn(crops: Read['crops'], results: Read['results']): Read['crops'] {
  return !results || crops.some(({ key }) => key === results.crop.key) ? crops : [results.crop, ...crops];
}
