import 'server-only';
import { creditsAcross, deliveriesOfDays, holdingsWithGround } from '@/lib/data/season';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { creditAccount } from '@/lib/domain/season/credit-account';
import { accountOfSeason } from '@/lib/domain/season/season-account';
import { seasonDays } from '@/lib/domain/season/season-days';
import type { ReadContext } from '../operation';
import { seasonLines } from '../season/season-lines';

/** Loads of one kind are added up together: barrows with barrows, bales with bales. */
const units = ['barrow', 'bale'] as const;

/** What was delivered for a season and how it spread over holdings, which are not named; what members wrote of a delivery stays out. */
export async function seasonLoads(context: ReadContext, season: number) {
  const { db, scope } = context;
  const days = seasonDays(season);
  const all = await deliveriesOfDays(db, scope, days);
  const came = all.filter(({ state }) => state !== 'planned' && state !== 'called_off');
  const [lines, withGround] = [await seasonLines(context, came), await holdingsWithGround(db, scope, days)];
  const materialKeys = [...new Set(came.map(({ materialKey }) => materialKey))];
  const credits = [...creditAccount(await creditsAcross(db, scope, days, materialKeys)).values()].flat();
  const parts = units.flatMap((unit) => {
    const own = came.filter(({ loadUnit }) => loadUnit === unit);
    const ids = new Set(own.map(({ id }) => id));
    const account = accountOfSeason(
      own.map(({ id, orderedLoads, heapLoads, priceMinor }) => ({ id, orderedLoads, heapLoads, priceMinor })),
      lines.filter(({ deliveryId }) => ids.has(deliveryId)),
    );
    if (own.length === 0) return [];
    const facts = new Map(own.map((delivery) => [delivery.id, delivery]));
    const had = new Map(account.holdings.map(({ id, collected }) => [id, collected]));
    return [
      {
        unit,
        total: account.total,
        deliveries: account.deliveries.map(({ id, ...counts }) => {
          const { name = '', materialKey = '', arrivesOn = null } = facts.get(id) ?? {};
          const { orderedLoads, heapLoads, asked, need, share, collected } = counts;
          const loads = { orderedLoads, heapLoads, asked, need, share, collected };
          return { ...loads, id, name, material: materialOf(materialKey)?.name ?? materialKey, arrivesOn };
        }),
        holdings: account.holdings.map(({ id, asked, need, collected }) => ({ id, asked, need, collected })),
        /** Of every holding with ground in those days, and of whoever had loads without. */
        hadLoads: [...new Set([...withGround, ...had.keys()])].map((id) => had.get(id) ?? 0),
      },
    ];
  });
  return {
    days,
    parts,
    calledOff: all.filter(({ state }) => state === 'called_off').length,
    largestCreditMillionths: credits
      .filter(({ holdingId }) => holdingId !== null)
      .reduce((most, { endMillionths }) => Math.max(most, endMillionths), 0),
  };
}
