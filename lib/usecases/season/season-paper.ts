import 'server-only';
import { byNumber } from '@/lib/data/holding';
import { creditsAcross, deliveriesOfDays, deliveryDays, holdingsAcross } from '@/lib/data/season';
import { settingsOn } from '@/lib/data/setting';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { canReadSeasonPaper } from '@/lib/domain/policy/season-paper';
import { canReadCommitteePapers } from '@/lib/domain/policy/standing';
import { creditAccount, type CreditLine } from '@/lib/domain/season/credit-account';
import { accountOfSeason } from '@/lib/domain/season/season-account';
import { nothingCounted } from '@/lib/domain/season/season-counts';
import { seasonDays } from '@/lib/domain/season/season-days';
import { seasonServed } from '../ground/holding-need';
import type { ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { seasonLines } from './season-lines';

/** Loads of one kind are added up together: barrows with barrows, bales with bales. */
const units = ['barrow', 'bale'] as const;
export type SeasonPart = Awaited<ReturnType<typeof seasonPaper>>['parts'][number];

/** What a season came to, for those whom the society lets read it: with a handful of queries, whatever its size. */
export async function seasonPaper(context: ReadContext, asked: number | null) {
  const { db, scope, today } = context;
  const settings = await settingsOn(db, scope, today);
  if (!canReadSeasonPaper(scope, settings.seasonPaperFor)) throw new NotFound();
  const seasons = seasonsOf(await deliveryDays(db, scope), seasonServed(today));
  const season = asked ?? seasons[0] ?? seasonServed(today);
  const days = seasonDays(season);
  const all = await deliveriesOfDays(db, scope, days);
  const deliveries = all.filter(({ state }) => state !== 'planned' && state !== 'called_off');
  const lines = await seasonLines(context, deliveries);
  const materialKeys = [...new Set(deliveries.map(({ materialKey }) => materialKey))];
  const credits = creditAccount(await creditsAcross(db, scope, days, materialKeys));
  const holdingIds = [...lines, ...[...credits.values()].flat()].flatMap(({ holdingId }) => holdingId ?? []);
  const holdings = await holdingsAcross(db, scope, days, [...new Set(holdingIds)]);
  const withNames = settings.seasonPaperNames === 'names';
  const parts = units
    .map((unit) => {
      const own = deliveries.filter(({ loadUnit }) => loadUnit === unit);
      const ids = new Set(own.map(({ id }) => id));
      const account = accountOfSeason(
        own.map(({ id, orderedLoads, heapLoads, priceMinor }) => ({ id, orderedLoads, heapLoads, priceMinor })),
        lines.filter(({ deliveryId }) => ids.has(deliveryId)),
      );
      const materials = materialKeys
        .filter((key) => own.some(({ materialKey }) => materialKey === key))
        .map((key) => ({ key, name: materialOf(key)?.name ?? key, lines: credits.get(key) ?? [] }));
      const facts = new Map(own.map((delivery) => [delivery.id, delivery]));
      return {
        unit,
        materials: materials.map(({ key, name, lines: credit }) => ({ key, name, ...lapsedOf(credit) })),
        total: account.total,
        deliveries: account.deliveries.map((one) => {
          const { name = '', materialKey = '', arrivesOn = null, state = null } = facts.get(one.id) ?? {};
          return { ...one, name, material: materialOf(materialKey)?.name ?? materialKey, arrivesOn, state };
        }),
        holdings: withCredits(account.holdings, materials).flatMap(({ id, ...row }) => {
          const holding = holdings.find((one) => one.id === id);
          const { plots = [], names = [] } = holding ?? {};
          return [{ ...row, id, plots, names: withNames ? names : null }];
        }),
      };
    })
    .filter(({ deliveries: own }) => own.length > 0)
    .map((part) => ({
      ...part,
      holdings: part.holdings.sort((a, b) => byNumber(a.plots[0] ?? '~', b.plots[0] ?? '~')),
    }));
  return {
    ...{ season, seasons, days, parts, today, withNames, slug: scope.slug, society: scope.societyName },
    calledOff: all.filter(({ state }) => state === 'called_off').map(({ name }) => name),
    byCommitteeOnly: settings.seasonPaperFor !== 'members',
    isCommittee: canReadCommitteePapers(scope),
  };
}

type Material = { readonly key: string; readonly lines: readonly CreditLine[] };

/** Every holding with a line or with credit, and its credit in each material. */
function withCredits(accounts: ReturnType<typeof accountOfSeason>['holdings'], materials: readonly Material[]) {
  const creditOf = new Map(
    materials.map(({ key, lines }) => [key, new Map(lines.map((line) => [line.holdingId ?? '', line]))]),
  );
  const credited = materials.flatMap(({ lines }) =>
    lines.flatMap(({ holdingId, startMillionths, endMillionths }) =>
      holdingId && (startMillionths !== 0 || endMillionths !== 0) ? [holdingId] : [],
    ),
  );
  const own = new Map(accounts.map((account) => [account.id, account]));
  return [...new Set([...own.keys(), ...credited])].map((id) => ({
    ...(own.get(id) ?? { ...nothingCounted, metInFull: 0, short: 0, gaveUp: 0 }),
    id,
    credits: materials.map(({ key }) => {
      const line = creditOf.get(key)?.get(id);
      return { startMillionths: line?.startMillionths ?? 0, endMillionths: line?.endMillionths ?? 0 };
    }),
  }));
}

function lapsedOf(lines: readonly CreditLine[]) {
  const line = lines.find(({ holdingId }) => holdingId === null);
  return { lapsed: { startMillionths: line?.startMillionths ?? 0, endMillionths: line?.endMillionths ?? 0 } };
}

/** Every season from the first delivery to now, the newest first. */
function seasonsOf(days: Awaited<ReturnType<typeof deliveryDays>>, now: number): number[] {
  if (!days) return [];
  const [first, last] = [seasonServed(days.first), Math.max(now, seasonServed(days.last))];
  return Array.from({ length: last - first + 1 }, (_, back) => last - back);
}
