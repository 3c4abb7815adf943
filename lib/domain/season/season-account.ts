import { wholeFrom } from '../quantity/checked';
import { nothingCounted, type SeasonCounts, summed } from './season-counts';

/** A delivery of the season, as it was ordered and measured. */
export type SeasonDelivery = {
  readonly id: string;
  readonly orderedLoads: number;
  /** Null while it is not measured. */
  readonly heapLoads: number | null;
  readonly priceMinor: number;
};

/** What one holding had of one delivery: its claim, and what it was charged for it. */
export type SeasonLine = SeasonCounts & { readonly deliveryId: string; readonly holdingId: string };

/** How claims fared: a claim that gave up what was left of its share is neither met nor short. */
export type Fared = { readonly metInFull: number; readonly short: number; readonly gaveUp: number };

/** A claim's standing; null before the share-out, and where there was no claim. */
export type Faring = keyof Fared | null;

export type DeliveryAccount = SeasonDelivery &
  SeasonCounts &
  Fared & {
    /** Measured and not collected; null while it is not measured. */
    readonly leftLoads: number | null;
  };
export type HoldingAccount = SeasonCounts & Fared & { readonly id: string };

export type SeasonAccount = {
  readonly deliveries: readonly DeliveryAccount[];
  readonly holdings: readonly HoldingAccount[];
  readonly total: SeasonCounts &
    Fared & {
      readonly orderedLoads: number;
      readonly heapLoads: number;
      readonly leftLoads: number;
      readonly priceMinor: number;
    };
};

/**
 * The account of a season: what each delivery came to, what each holding had, and all of it together.
 *
 * Method: one line for each holding and delivery, added up once by delivery and once by holding, so that both agree.
 *
 * @param deliveries  unique ids; loads and pence, whole numbers ≥ 0 [loads of one kind, minor units]
 * @param lines       one for each delivery and holding at most, of deliveries that are named [loads, minor units]
 * @returns           deliveries in the order given, holdings in the order of their first lines; of every count the sum over
 *                    deliveries, the sum over holdings and the total are the same
 * @throws RangeError on a delivery or line that stands twice, on a line of another delivery, on counts that are not whole,
 *                    on more paid than charged, and on more collected than was measured
 * @source            an account book, added up both ways: common practice
 * @example           two holdings take 3 and 2 of a heap of 6 → collected 5 by delivery and by holding, 1 left
 */
export function accountOfSeason(
  deliveries: readonly SeasonDelivery[],
  lines: readonly (SeasonLine & { readonly fared: Faring })[],
): SeasonAccount {
  check(deliveries, lines);
  const byDelivery = grouped(lines, ({ deliveryId }) => deliveryId);
  const accounts = deliveries.map((delivery): DeliveryAccount => {
    const counts = countsOf(byDelivery.get(delivery.id) ?? []);
    return { ...delivery, ...counts, leftLoads: leftOf(delivery, counts.collected) };
  });
  const holdings = [...grouped(lines, ({ holdingId }) => holdingId)].map(([id, own]) => ({ id, ...countsOf(own) }));
  const sum = (of: (account: DeliveryAccount) => number | null) =>
    accounts.reduce((all, one) => all + (of(one) ?? 0), 0);
  const total = {
    ...countsOf(lines),
    orderedLoads: sum(({ orderedLoads }) => orderedLoads),
    heapLoads: sum(({ heapLoads }) => heapLoads),
    leftLoads: sum(({ leftLoads }) => leftLoads),
    priceMinor: sum(({ priceMinor }) => priceMinor),
  };
  return { deliveries: accounts, holdings, total };
}

function countsOf(lines: readonly (SeasonCounts & { readonly fared: Faring })[]): SeasonCounts & Fared {
  const times = (wanted: Faring) => lines.filter(({ fared }) => fared === wanted).length;
  return {
    ...lines.reduce(summed, nothingCounted),
    metInFull: times('metInFull'),
    short: times('short'),
    gaveUp: times('gaveUp'),
  };
}

function leftOf({ id, heapLoads }: SeasonDelivery, collected: number): number | null {
  if (heapLoads === null && collected === 0) return null;
  const left = (heapLoads ?? 0) - collected;
  if (left < 0) throw new RangeError(`more was collected of ${id} than was measured`);
  return left;
}

function check(deliveries: readonly SeasonDelivery[], lines: readonly SeasonLine[]): void {
  const ids = new Set(deliveries.map(({ id }) => id));
  if (ids.size < deliveries.length) throw new RangeError('a delivery stands twice');
  for (const { orderedLoads, heapLoads, priceMinor } of deliveries)
    for (const count of [orderedLoads, heapLoads ?? 0, priceMinor]) wholeFrom(0, count);
  const stray = lines.find(({ deliveryId }) => !ids.has(deliveryId));
  if (stray) throw new RangeError(`a line is of no delivery of the season: ${stray.deliveryId}`);
  if (new Set(lines.map(({ deliveryId, holdingId }) => `${deliveryId} ${holdingId}`)).size < lines.length)
    throw new RangeError('a holding stands twice with one delivery');
}

function grouped<Line>(lines: readonly Line[], by: (line: Line) => string): Map<string, Line[]> {
  const groups = new Map<string, Line[]>();
  for (const line of lines) {
    const group = groups.get(by(line));
    if (group) group.push(line);
    else groups.set(by(line), [line]);
  }
  return groups;
}
