import type { SourceKey } from './sources';

/** What is still good of a lot of winter squash after so many weeks: the one printed curve that a forecast can be shaped by. */
// biome-ignore format: one point a line
export const squashMarketable = [
  { name: 'after 9 weeks', weeks: 9, soundPermille: 900, source: 'ucd-squash-marketable' },
  { name: 'after 15 weeks', weeks: 15, soundPermille: 700, source: 'ucd-squash-marketable' },
  { name: 'after 20 weeks', weeks: 20, soundPermille: 500, source: 'ucd-squash-marketable' },
] as const satisfies readonly { readonly name: string; readonly weeks: number; readonly soundPermille: number; readonly source: SourceKey }[];

/** Other printed losses, shown beside a lot's own: they mix drying, sprouting and rot, so no forecast sets out from them. */
export type StorageLoss = {
  readonly keepingKey: string;
  readonly afterDays: number;
  readonly leastPermille: number;
  readonly mostPermille: number;
  readonly of: 'weight' | 'weight in each month';
  readonly source: SourceKey;
};

// biome-ignore format: one loss a line
export const storageLosses: readonly StorageLoss[] = [
  { keepingKey: 'potato', afterDays: 30, leastPermille: 30, mostPermille: 30, of: 'weight', source: 'idaho-potato' },
  { keepingKey: 'potato', afterDays: 152, leastPermille: 50, mostPermille: 50, of: 'weight', source: 'idaho-potato' },
  // Warm ambient store, 3.3 % in the mean.
  { keepingKey: 'onion', afterDays: 30, leastPermille: 20, mostPermille: 50, of: 'weight in each month', source: 'onion-losses' },
  // Red onions at about 25 °C.
  { keepingKey: 'onion', afterDays: 60, leastPermille: 233, mostPermille: 233, of: 'weight', source: 'sohany-2016' },
  // Drying 1.8 %, rot 2 %.
  { keepingKey: 'parsnip', afterDays: 274, leastPermille: 38, mostPermille: 38, of: 'weight', source: 'parsnip-losses' },
];

/** The printed losses of a kind. */
export function storageLossesOf(keepingKey: string): readonly StorageLoss[] {
  return storageLosses.filter((loss) => loss.keepingKey === keepingKey);
}
