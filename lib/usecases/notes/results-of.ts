import 'server-only';
import type { Crop } from '@/lib/domain/catalogue/crops';
import { type Question, questions } from '@/lib/domain/comparison/bed-result';
import { compareBeds, type Compared } from '@/lib/domain/comparison/compare-beds';
import { seasonsTold } from '@/lib/domain/comparison/seasons-told';
import { leastHolders, neighboursIn } from '@/lib/domain/comparison/shown-cells';
import { varietiesAlone } from '@/lib/domain/comparison/varieties-alone';
import { type At, bedResults, type LeftOut, type PlacedResult, type ResultHoldings } from './bed-results';

export type Asked = {
  readonly cropKey: string;
  /** Null: the latest that there is. */
  readonly season: number | null;
  readonly question: Question | null;
  readonly variety: string | null;
};

/** A variety under the words in which most wrote it. */
type Named = { readonly key: string; readonly name: string };

export type Results = {
  readonly crop: { readonly key: string; readonly name: string };
  readonly season: number | null;
  /** Those that something may be told of, the viewer's own among them; latest first. */
  readonly seasons: readonly number[];
  readonly question: Question;
  readonly variety: Named | null;
  readonly varieties: readonly Named[];
  readonly compared: Compared;
  /** How varieties that are told are written. */
  readonly varietyNames: Readonly<Record<string, string>>;
  readonly own: readonly OwnResult[];
  /** Beds of three neighbours or more; of fewer it is not said how many. */
  readonly leftOut: { readonly standing: number | null; readonly counted: number | null };
};

export type OwnResult = Pick<
  PlacedResult,
  'plantingId' | 'bedName' | 'plotNumber' | 'variety' | 'season' | 'gPerM2' | 'isShared'
> & { readonly group: string | null };

/** Read once, however many results are asked for. */
type FromWhich = { readonly crops: ReadonlyMap<string, Crop>; readonly holdings: ResultHoldings };

/** What beds of a crop gave, as far as it may be told to the viewer; null where the society has no such crop. */
export async function resultsOf(at: At, { crops, holdings }: FromWhich, asked: Asked): Promise<Results | null> {
  const crop = crops.get(asked.cropKey);
  if (!crop) return null;
  const { results, leftOut } = await bedResults(at, holdings, crops, crop.key);
  const told = seasonsTold(results.filter(({ isShared }) => isShared));
  const ownSeasons = results.flatMap(({ isOwn, season }) => (isOwn ? [season] : []));
  const seasons = [...new Set([...told, ...ownSeasons])].sort((a, b) => b - a);
  const season = seasons.find((one) => one === asked.season) ?? told[0] ?? seasons[0] ?? null;
  const here = results.filter((one) => one.season === season);
  const bedsFor = (question: Question) =>
    question === 'season' ? results.filter((one) => told.includes(one.season) || one.isOwn) : here;
  const question = asked.question ?? questions.find((one) => isContrasted(bedsFor(one), one)) ?? 'season';
  const names = namesOf(results);
  const alone = varietiesAlone(
    here.filter(({ isShared }) => isShared),
    question,
  );
  const variety = alone.find((key) => key === asked.variety?.trim().toLocaleLowerCase('en-GB')) ?? null;
  const compared = compareBeds(bedsFor(question), question, variety);
  const named = (key: string) => ({ key, name: names.get(key) ?? key });
  return {
    crop: { key: crop.key, name: crop.name },
    ...{ season, seasons, question, compared },
    variety: variety === null ? null : named(variety),
    varieties: alone.map(named),
    varietyNames: Object.fromEntries(
      question === 'variety' ? compared.groups.map(({ key }) => [key, named(key).name]) : [],
    ),
    own: results
      .filter((one) => one.isOwn && (question === 'season' || one.season === season))
      .map((one) => ownOf(one, question)),
    leftOut: {
      standing: countOf(leftOut, season, 'standing'),
      counted: countOf(leftOut, season, 'counted'),
    },
  };
}

// Something stands beside something: the question to begin with.
function isContrasted(beds: readonly PlacedResult[], question: Question): boolean {
  return compareBeds(beds, question, null).groups.length > 1;
}

function ownOf(
  { plantingId, bedName, plotNumber, variety, season, gPerM2, isShared, groupOf }: PlacedResult,
  question: Question,
): OwnResult {
  return { plantingId, bedName, plotNumber, variety, season, gPerM2, isShared, group: groupOf[question] };
}

function countOf(leftOut: readonly LeftOut[], season: number | null, why: LeftOut['why']): number | null {
  const beds = leftOut.filter((one) => one.isShared && one.season === season && one.why === why);
  return neighboursIn(beds) >= leastHolders ? beds.length : null;
}

// As the first by the alphabet wrote it: which of them that is, tells nothing of who.
function namesOf(results: readonly PlacedResult[]): ReadonlyMap<string, string> {
  const written = results
    .filter(({ isShared }) => isShared)
    .flatMap(({ variety, groupOf }) => (variety && groupOf.variety ? [[groupOf.variety, variety.trim()] as const] : []))
    .sort(([, one], [, other]) => (one < other ? 1 : -1));
  return new Map(written);
}
