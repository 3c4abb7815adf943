import type { MassBetween } from '@/lib/domain/delivery/suggested-order';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import type { readOrder } from '@/lib/usecases/ordering/read-order';

export type Order = Extract<Awaited<ReturnType<typeof readOrder.run>>, { offers: unknown }>;
export type Offer = Order['offers'][number];

/** A weight from least to most; one figure where they are the same. */
export function massBetween(leastG: number, mostG: number, units: Units): string {
  if (mostG === 0) return 'nothing';
  if (leastG === mostG) return formatMassIn(mostG, units);
  return `${formatMassIn(leastG, units)} to ${formatMassIn(mostG, units)}`;
}

/** Whole loads from least to most. */
export function countBetween(least: number, most: number): string {
  const count = (loads: number) => loads.toLocaleString('en-GB');
  return least === most ? count(most) : `${count(least)} to ${count(most)}`;
}

/** What is wanted, in whole barrow-loads, a load begun counting as one. */
export function loadsWanted({ leastG, mostG }: MassBetween, loadG: number): string {
  return countBetween(Math.ceil(leastG / loadG), Math.ceil(mostG / loadG));
}
