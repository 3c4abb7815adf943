import type { SourceKey } from './sources';

/** What must not stand beside what: the one harms, the other is harmed. */
export type StoreApart = {
  readonly code: 'ethylene' | 'taint' | 'alone';
  readonly fromKeys: readonly string[];
  readonly harmedKeys: readonly string[];
  readonly source: SourceKey;
};

const fruit = ['apple', 'pear'];
const squashes = ['squash', 'butternut', 'acorn-squash', 'hubbard-squash', 'pumpkin'];
const alliums = ['onion', 'onion-mild', 'shallot', 'garlic'];

/**
 * Apples and pears give off ethylene; they taint and are tainted. Onions, garlic and potatoes are printed as kept with nothing
 * else: bulbs of the onion kin are read as one, since another chart puts onions and garlic on one shelf.
 */
// biome-ignore format: one rule in few lines
export const storeApart: readonly StoreApart[] = [
  { code: 'ethylene', fromKeys: fruit, harmedKeys: ['carrot', 'cabbage'], source: 'umass-storage' },
  { code: 'ethylene', fromKeys: fruit, harmedKeys: ['onion', 'onion-mild'], source: 'ucd-onion' },
  { code: 'ethylene', fromKeys: fruit, harmedKeys: squashes, source: 'iowa-fruit-apart' },
  { code: 'taint', fromKeys: fruit, harmedKeys: ['cabbage', 'carrot', 'potato', 'onion', 'onion-mild'], source: 'dpird-mixed' },
];

/** Kinds that are kept with nothing else but their own, each set by itself. */
export const keptAlone = {
  sets: [alliums, ['potato']],
  source: 'dpird-mixed',
} as const satisfies { readonly sets: readonly (readonly string[])[]; readonly source: SourceKey };

/** A shelf of the root cellar: kinds that want the same air [tenths of °C; percent of relative humidity]. */
export type Shelf = {
  readonly key: string;
  readonly keepingKeys: readonly string[];
  readonly fromTenthC: number;
  readonly toTenthC: number | null;
  readonly fromRh: number;
  readonly toRh: number;
  readonly source: SourceKey;
};

// biome-ignore format: one shelf a line
export const shelves: readonly Shelf[] = [
  { key: 'cold-dry', keepingKeys: ['onion', 'onion-mild', 'garlic'], fromTenthC: 0, toTenthC: 17, fromRh: 60, toRh: 70, source: 'k-state-cellar' },
  { key: 'cold-fruit', keepingKeys: fruit, fromTenthC: 0, toTenthC: 44, fromRh: 80, toRh: 90, source: 'k-state-cellar' },
  { key: 'cold-moist', keepingKeys: ['beetroot', 'cabbage', 'carrot', 'leek', 'parsnip', 'swede', 'turnip'], fromTenthC: 0, toTenthC: 44, fromRh: 90, toRh: 95, source: 'k-state-cellar' },
  { key: 'cool-dry', keepingKeys: ['dry-bean'], fromTenthC: 0, toTenthC: 100, fromRh: 60, toRh: 70, source: 'k-state-cellar' },
  { key: 'cool-dark', keepingKeys: ['potato'], fromTenthC: 33, toTenthC: 44, fromRh: 80, toRh: 90, source: 'k-state-cellar' },
  { key: 'warm-dry', keepingKeys: squashes, fromTenthC: 100, toTenthC: 128, fromRh: 60, toRh: 75, source: 'k-state-cellar' },
  { key: 'warm-moist', keepingKeys: ['sweet-potato'], fromTenthC: 100, toTenthC: null, fromRh: 80, toRh: 90, source: 'k-state-cellar' },
];
