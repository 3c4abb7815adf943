import type { SourceKey } from './sources';

type KeepingFigures = {
  /** How often a lot is gone over [days]. */
  readonly goingOverDays: number;
  /** What one weighs, for lots that are weighed: losses come by the piece [g]. */
  readonly pieceG: number;
  /** How many go into a meal. */
  readonly mealPieces: number;
};

/** A kind of produce that keeps: finer than a crop where its sorts keep differently. Fruit of the society's trees too. */
export type Keeping = KeepingFigures & {
  readonly key: string;
  readonly name: string;
  /** Crops of the catalogue whose harvest it may be; none for what grows on trees. */
  readonly cropKeys: readonly string[];
  readonly sources: { readonly [Value in keyof KeepingFigures]: SourceKey };
};

const practice = {
  goingOverDays: 'common-practice',
  pieceG: 'common-practice',
  mealPieces: 'common-practice',
} as const satisfies Keeping['sources'];

/**
 * What keeps, and how often it is gone over: onions about fortnightly, potatoes at least monthly, the rest likewise by how fast
 * one bad one takes its neighbours. Weights of a piece are middling; a lot that is weighed may say its own.
 */
// biome-ignore format: one kind a line
export const keepings: readonly Keeping[] = [
  { key: 'onion', name: 'Onions', cropKeys: ['onion'], goingOverDays: 14, pieceG: 120, mealPieces: 2, sources: practice },
  { key: 'onion-mild', name: 'Onions, mild', cropKeys: ['onion'], goingOverDays: 14, pieceG: 200, mealPieces: 2, sources: practice },
  { key: 'shallot', name: 'Shallots', cropKeys: ['shallot'], goingOverDays: 14, pieceG: 25, mealPieces: 4, sources: practice },
  { key: 'garlic', name: 'Garlic', cropKeys: ['garlic'], goingOverDays: 30, pieceG: 50, mealPieces: 1, sources: practice },
  { key: 'potato', name: 'Potatoes', cropKeys: ['maincrop-potato', 'early-potato'], goingOverDays: 30, pieceG: 120, mealPieces: 6, sources: practice },
  { key: 'squash', name: 'Winter squash', cropKeys: ['winter-squash'], goingOverDays: 14, pieceG: 1500, mealPieces: 1, sources: practice },
  { key: 'butternut', name: 'Butternut squash', cropKeys: ['butternut'], goingOverDays: 14, pieceG: 1000, mealPieces: 1, sources: practice },
  { key: 'acorn-squash', name: 'Acorn squash', cropKeys: ['winter-squash', 'courgette'], goingOverDays: 14, pieceG: 700, mealPieces: 1, sources: practice },
  { key: 'hubbard-squash', name: 'Hubbard squash', cropKeys: ['winter-squash'], goingOverDays: 14, pieceG: 4000, mealPieces: 1, sources: practice },
  { key: 'pumpkin', name: 'Pumpkins', cropKeys: ['winter-squash', 'courgette'], goingOverDays: 14, pieceG: 4000, mealPieces: 1, sources: practice },
  { key: 'marrow', name: 'Marrows', cropKeys: ['courgette'], goingOverDays: 14, pieceG: 1500, mealPieces: 1, sources: practice },
  { key: 'carrot', name: 'Carrots', cropKeys: ['carrot'], goingOverDays: 30, pieceG: 80, mealPieces: 5, sources: practice },
  { key: 'parsnip', name: 'Parsnips', cropKeys: ['parsnip'], goingOverDays: 30, pieceG: 150, mealPieces: 3, sources: practice },
  { key: 'beetroot', name: 'Beetroot', cropKeys: ['beetroot'], goingOverDays: 30, pieceG: 150, mealPieces: 3, sources: practice },
  { key: 'swede', name: 'Swedes', cropKeys: ['swede'], goingOverDays: 30, pieceG: 700, mealPieces: 1, sources: practice },
  { key: 'turnip', name: 'Turnips', cropKeys: ['turnip'], goingOverDays: 30, pieceG: 150, mealPieces: 3, sources: practice },
  { key: 'celeriac', name: 'Celeriac', cropKeys: ['celeriac'], goingOverDays: 30, pieceG: 500, mealPieces: 1, sources: practice },
  { key: 'cabbage', name: 'Cabbages, late', cropKeys: ['winter-cabbage'], goingOverDays: 14, pieceG: 1500, mealPieces: 1, sources: practice },
  { key: 'leek', name: 'Leeks, lifted', cropKeys: ['leek'], goingOverDays: 14, pieceG: 200, mealPieces: 2, sources: practice },
  { key: 'jerusalem-artichoke', name: 'Jerusalem artichokes', cropKeys: ['jerusalem-artichoke'], goingOverDays: 30, pieceG: 60, mealPieces: 8, sources: practice },
  { key: 'sweet-potato', name: 'Sweet potatoes', cropKeys: ['sweet-potato'], goingOverDays: 14, pieceG: 250, mealPieces: 2, sources: practice },
  { key: 'dry-bean', name: 'Dry beans and peas', cropKeys: ['french-bean', 'runner-bean', 'broad-bean', 'pea'], goingOverDays: 60, pieceG: 1, mealPieces: 250, sources: practice },
  { key: 'fresh-chilli', name: 'Chillies, fresh', cropKeys: ['pepper'], goingOverDays: 7, pieceG: 15, mealPieces: 1, sources: practice },
  { key: 'dry-chilli', name: 'Chillies, dried', cropKeys: ['pepper'], goingOverDays: 30, pieceG: 3, mealPieces: 1, sources: practice },
  { key: 'apple', name: 'Apples', cropKeys: [], goingOverDays: 14, pieceG: 150, mealPieces: 3, sources: practice },
  { key: 'pear', name: 'Pears', cropKeys: [], goingOverDays: 7, pieceG: 170, mealPieces: 3, sources: practice },
];

const byKey = new Map(keepings.map((keeping) => [keeping.key, keeping]));

/** A kind of keeping by its key; undefined where there is none. */
export function keepingOf(key: string): Keeping | undefined {
  return byKey.get(key);
}

/** The kinds that a crop may be stored as, the usual one first; none for what is eaten fresh. */
export function keepingsOfCrop(cropKey: string): readonly Keeping[] {
  return keepings.filter(({ cropKeys }) => cropKeys.includes(cropKey));
}
