import 'server-only';
import { z } from 'zod';
import { bedsStanding } from '@/lib/data/bed';
import { type PlotOnDay, plotsOn } from '@/lib/data/plot';
import { settingsOn } from '@/lib/data/setting';
import { troublesIn } from '@/lib/data/trouble';
import { areaCm2, overlap } from '@/lib/domain/ground/footprint';
import { distanceCm } from '@/lib/domain/ground/nearness';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { query, type ReadContext } from '../operation';

/** Plots so near that soil goes from one to the other on boots [cm]; common practice. */
const nearCm = 1000;

/** The troubles found on the society's ground, for the secretary: where, what, how sure; never the holders' notes. */
export const readTroubles = query({
  name: 'read-troubles',
  allow: canRunSociety,
  input: z.object({}),
  read: async ({ db, scope, today }) => {
    const settings = await settingsOn(db, scope, today);
    const [troubles, beds, plots] = await Promise.all([
      troublesIn(db, scope, settings),
      bedsStanding(db, scope, today, today),
      plotsOn(db, scope, today),
    ]);
    const numbers = new Map(plots.map(({ id, number }) => [id, number]));
    return {
      units: scope.units,
      troubles: troubles.map((trouble) => {
        const here = beds.filter(
          (bed) => bed.frameId === trouble.frameId && overlap(bed.footprint, trouble.footprint) !== null,
        );
        const plotIds = plots.filter(({ frameId }) => frameId === trouble.frameId).map(({ id }) => id);
        const named = [...new Set(here.length ? here.map(({ plotId }) => plotId) : plotIds)];
        const { id, troubleKey, certainty, foundOn, breakYears, foundSeason } = trouble;
        return {
          id,
          troubleKey,
          certainty,
          foundOn,
          breakYears,
          foundSeason,
          areaCm2: areaCm2(trouble.footprint),
          plots: named.map((plotId) => numbers.get(plotId) ?? ''),
          beds: here.map(({ id: bedId, name }) => ({ id: bedId, name })),
        };
      }),
    };
  },
});

/** Whether a trouble was found near a holding's plots, on ground that is not theirs. Which and where stays unsaid. */
export async function troubleNearby({ db, scope, today }: ReadContext, mine: readonly PlotOnDay[]): Promise<boolean> {
  const settings = await settingsOn(db, scope, today);
  if (settings.troublesNearby === 'nothing' || mine.length === 0) return false;
  const own = new Set(mine.map(({ frameId }) => frameId));
  const frames = new Set((await troublesIn(db, scope, settings)).map(({ frameId }) => frameId));
  const others = (await plotsOn(db, scope, today)).filter(({ frameId }) => frames.has(frameId) && !own.has(frameId));
  return others.some((plot) =>
    mine.some((one) => one.siteId === plot.siteId && (distanceCm(one, plot) ?? Number.POSITIVE_INFINITY) <= nearCm),
  );
}
