import 'server-only';
import { z } from 'zod';
import { ballotsOf } from '@/lib/data/ballot';
import { byNumber } from '@/lib/data/holding';
import { holdingsAcross } from '@/lib/data/season';
import { settingsOn } from '@/lib/data/setting';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import { leastHolders } from '@/lib/domain/comparison/shown-cells';
import { canReadLandlordReview, canReadReview } from '@/lib/domain/policy/review';
import { canReadSeasonPaper } from '@/lib/domain/policy/season-paper';
import { loadBands } from '@/lib/domain/review/load-bands';
import { dayIn } from '@/lib/platform/clock';
import { closeDue } from '../ballots/close-ballot';
import { query, type ReadContext } from '../operation';
import { seasonGround, trendSeasons } from './season-ground';
import { seasonHarvest } from './season-harvest';
import { seasonLoads } from './season-loads';

const asked = z.object({ season: z.coerce.number().int().min(1901).max(2199).nullish().catch(null) });

/** The season on one page, for every member: the rotation, what was delivered and who had how much, troubles, yields. */
export const readReview = query({
  name: 'read-review',
  allow: canReadReview,
  input: asked,
  read: async (context, input) => {
    const { db, scope, today } = context;
    const settings = await settingsOn(db, scope, today);
    const readsHoldings = canReadSeasonPaper(scope, settings.seasonPaperFor);
    const { parts, ...facts } = await seasonFacts(context, settings, input.season ?? null);
    const named = readsHoldings
      ? await namedHoldings(context, facts.days, parts, settings.seasonPaperNames === 'names')
      : () => null;
    return {
      ...facts,
      readsHoldings,
      decisions: await decisionsOf(context, facts.season),
      isCommittee: canReadLandlordReview(scope),
      parts: parts.map(({ holdings, hadLoads, ...part }) => ({
        ...part,
        bands: loadBands(hadLoads, 1),
        holdings: named(holdings),
      })),
    };
  },
});

/** The same for the landlord: sums and spreads alone. No member, holding, plot or place is read, and no word that anybody wrote. */
export const readLandlordReview = query({
  name: 'read-landlord-review',
  allow: canReadLandlordReview,
  input: asked,
  read: async (context, input) => {
    const { db, scope, today } = context;
    const settings = await settingsOn(db, scope, today);
    const { parts, ...facts } = await seasonFacts(context, settings, input.season ?? null);
    return {
      ...facts,
      parts: parts.map(({ holdings: _, hadLoads, deliveries, ...part }) => ({
        ...part,
        deliveries: deliveries.map(({ name: _name, ...delivery }) => delivery),
        bands: loadBands(hadLoads, leastHolders),
      })),
    };
  },
});

async function seasonFacts(context: ReadContext, settings: SettingValues, wanted: number | null) {
  const { scope, now, today } = context;
  const thisYear = Number(today.slice(0, 4));
  // A season is whole once its window has passed.
  const last = today.slice(5) > settings.seasonTo ? thisYear : thisYear - 1;
  const season = wanted !== null && wanted <= thisYear ? wanted : last;
  return {
    ...{ season, thisYear, now, society: scope.societyName, slug: scope.slug },
    ...{ units: scope.units, timeZone: scope.timeZone },
    seasons: Array.from({ length: trendSeasons }, (_, back) => thisYear - back),
    isWhole: season <= last,
    ground: await seasonGround(context, settings, season),
    harvest: await seasonHarvest(context, season),
    ...(await seasonLoads(context, season)),
  };
}

/** What was decided by a count of hands that closed in the season's year, the first first. */
async function decisionsOf(context: ReadContext, season: number) {
  const { db, scope } = context;
  await closeDue(context);
  return (await ballotsOf(db, scope))
    .flatMap(({ id, number, title, closesAt, result }) => {
      if (number === null || result === null) return [];
      const on = dayIn(scope.timeZone, closesAt);
      return Number(on.slice(0, 4)) === season ? [{ id, number, title, on, outcome: result.outcome }] : [];
    })
    .toReversed();
}

type Part = Awaited<ReturnType<typeof seasonLoads>>['parts'][number];

/** What each holding had, by its plots as people count them; with the names of its holders where the society lets them stand there. */
async function namedHoldings(
  { db, scope }: ReadContext,
  days: { readonly from: CalendarDate; readonly until: CalendarDate },
  parts: readonly Part[],
  withNames: boolean,
) {
  const ids = [...new Set(parts.flatMap(({ holdings }) => holdings.map(({ id }) => id)))];
  const known = new Map((await holdingsAcross(db, scope, days, ids)).map((one) => [one.id, one]));
  return (holdings: Part['holdings']) =>
    holdings
      .map((one) => {
        const { plots = [], names = [] } = known.get(one.id) ?? {};
        return { ...one, plots, names: withNames ? names : [] };
      })
      .sort((one, other) => byNumber(one.plots[0] ?? '~', other.plots[0] ?? '~'));
}
