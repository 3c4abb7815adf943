import 'server-only';
import type { Crop } from '@/lib/domain/catalogue/crops';
import type { Question } from '@/lib/domain/comparison/bed-result';
import type { Verdict } from '@/lib/domain/comparison/comparison';
import { resultsInput } from '@/lib/schemas/notes/notes';
import { type At, resultHoldings } from './bed-results';
import { resultsOf } from './results-of';

/** What a page of results says just now, in short. */
export type ResultsState = {
  readonly cropName: string;
  readonly season: number | null;
  readonly question: Question;
  /** Plots that are compared. */
  readonly plots: number;
  /** Of each two groups; none where there are not two. */
  readonly verdicts: readonly Verdict[];
};

/** What an address of results says just now, as far as it may be told to the viewer; null where there is no such crop. */
export async function resultsState(
  at: At,
  crops: ReadonlyMap<string, Crop>,
  address: string,
): Promise<ResultsState | null> {
  const parsed = resultsInput.safeParse(Object.fromEntries(new URLSearchParams(address)));
  if (!parsed.success || !parsed.data.crop) return null;
  const { crop, season, by, variety } = parsed.data;
  const asked = { cropKey: crop, season: season ?? null, question: by ?? null, variety: variety ?? null };
  const holdings = await resultHoldings(at);
  const results = await resultsOf(at, { crops, holdings }, asked);
  if (!results) return null;
  const { groups, contrasts } = results.compared;
  return {
    cropName: results.crop.name,
    season: results.season,
    question: results.question,
    plots: groups.reduce((sum, { values }) => sum + values.length, 0),
    verdicts: contrasts.map(({ verdict }) => verdict),
  };
}
