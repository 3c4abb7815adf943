import 'server-only';
import { bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import type { HoldingOnDay } from '@/lib/data/holding';
import { plantingsIn } from '@/lib/data/planting';
import { overlap } from '@/lib/domain/ground/footprint';
import type { ReadContext } from '../operation';

/** What the records of a member's ground want. */
export type GroundDue =
  | { readonly code: 'draw-beds'; readonly plotId: string; readonly plotNumber: string }
  | {
      readonly code: 'record';
      readonly plotId: string;
      readonly plotNumber: string;
      readonly season: number;
      readonly beds: readonly string[];
      readonly isNext: boolean;
    };

/** Plots without beds, and beds without a record of the season; from October the next one too. */
export async function dueOfGround(
  { db, scope, today }: ReadContext,
  holdings: readonly HoldingOnDay[],
): Promise<GroundDue[]> {
  const plots = holdings.flatMap((holding) => holding.plots);
  const year = Number(today.slice(0, 4));
  // From 1 October the next season is offered.
  const seasons = today.slice(5) >= '10-01' ? [year, year + 1] : [year];
  const beds = await bedsStanding(
    db,
    scope,
    today,
    today,
    plots.map(({ id }) => id),
  );
  const frames = [...new Set(beds.map(({ frameId }) => frameId))];
  const plantings = await plantingsIn(db, scope, await cropsOf(db, scope), { from: year, to: year + 1 }, frames);
  return plots.flatMap((plot): GroundDue[] => {
    const own = beds.filter(({ plotId }) => plotId === plot.id);
    if (own.length === 0) return [{ code: 'draw-beds', plotId: plot.id, plotNumber: plot.number }];
    return seasons.flatMap((season): GroundDue[] => {
      const missing = own.filter(
        (bed) =>
          !plantings.some(
            (one) =>
              one.frameId === bed.frameId &&
              one.firstSeason <= season &&
              one.lastSeason >= season &&
              overlap(one.footprint, bed.footprint),
          ),
      );
      return missing.length
        ? [
            {
              code: 'record',
              plotId: plot.id,
              plotNumber: plot.number,
              season,
              beds: missing.map(({ name }) => name),
              isNext: season > year,
            },
          ]
        : [];
    });
  });
}
