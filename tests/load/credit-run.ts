import { loadMillionths } from '@/lib/domain/sharing/claim';
import { settle } from '@/lib/domain/sharing/settle';
import { shareOut } from '@/lib/domain/sharing/share-out';
import { type Chance, chanceOf } from '../../seeds/chance';

/** What a delivery brings, and what each holding asks of it. */
export type Season = {
  readonly title: string;
  readonly heapLoads: (chance: Chance) => number;
  /** Null where a holding asks for nothing. */
  readonly asks: (chance: Chance) => { readonly asked: number; readonly need: number } | null;
  /** No credit is beyond this, whatever is asked [loads]. */
  readonly boundLoads: number;
};

/** Of all holdings, of either sign [loads]. */
export type Spread = { readonly median: number; readonly ninetyNinth: number; readonly worst: number };

export const holdings = 150;
export const deliveries = 100;

/**
 * Deliveries one after the other, through the share-out and the settlement of the service; everybody collects their share.
 * Throws where the credits do not sum to zero, a share-out and its settlement differ, or the proven bound does not hold.
 */
export function creditRun(season: Season, seed: number): Spread[] {
  const chance = chanceOf(seed);
  const credits = new Map(Array.from({ length: holdings }, (_, at) => [`holding-${at}`, 0]));
  return Array.from({ length: deliveries }, (_, delivery) => {
    deliver(season, chance, credits, `${seed.toString(16)}${delivery.toString(16).padStart(4, '0')}`);
    const sizes = [...credits.values()].map(Math.abs).sort((a, b) => a - b);
    const sum = [...credits.values()].reduce((total, credit) => total + credit, 0);
    if (sum !== 0) throw new Error(`after delivery ${delivery + 1} the credits sum to ${sum}`);
    const spread = { median: rankOf(sizes, 0.5), ninetyNinth: rankOf(sizes, 0.99), worst: rankOf(sizes, 1) };
    // Leftover millionths may move a bound by as much in each delivery.
    if (spread.worst > season.boundLoads * (1 + (2 * (delivery + 1)) / loadMillionths))
      throw new Error(`${season.title}: ${spread.worst} loads after delivery ${delivery + 1}`);
    return spread;
  });
}

function deliver(season: Season, chance: Chance, credits: Map<string, number>, lotSeed: string): void {
  const claims = [...credits].flatMap(([id, creditMillionths]) => {
    const asks = season.asks(chance);
    return asks ? [{ id, creditMillionths, ...asks }] : [];
  });
  const loads = season.heapLoads(chance);
  const { shares } = shareOut({ loads, claims, lotSeed });
  const collected = claims.map((claim, at) => ({ ...claim, collected: shares[at]?.share ?? 0 }));
  const { changes, lapsedMillionths } = settle({ loads, claims: collected, lotSeed });
  if (lapsedMillionths !== 0) throw new Error(`${lapsedMillionths} millionths lapsed where all was collected`);
  for (const [at, { id, changeMillionths }] of changes.entries()) {
    const credit = (credits.get(id) ?? 0) + changeMillionths;
    if (credit !== shares[at]?.creditAfterMillionths)
      throw new Error(`${id}: its settlement differs from its share-out`);
    credits.set(id, credit);
  }
}

/** The value that such a part of a sorted list does not exceed. */
function rankOf(sorted: readonly number[], part: number): number {
  return (sorted[Math.ceil(part * sorted.length) - 1] ?? 0) / loadMillionths;
}
