import type { SourceKey } from './sources';

/** What warmth or cold does to a kind: from one degree to another, either end open [tenths of °C]. */
export type StoreLimit = {
  readonly code: 'chills' | 'freezes' | 'sweetens' | 'sprouts';
  readonly keepingKeys: readonly string[];
  /** It is so from here on; null: however cold. */
  readonly fromTenthC: number | null;
  /** It is so below this; null: however warm. */
  readonly belowTenthC: number | null;
  readonly source: SourceKey;
};

const squashes = ['squash', 'butternut', 'acorn-squash', 'hubbard-squash', 'pumpkin'];

// Where a frost point is not printed, what is full of water is kept from frost: common practice.
// biome-ignore format: one limit a line
export const storeLimits: readonly StoreLimit[] = [
  { code: 'chills', keepingKeys: squashes, fromTenthC: null, belowTenthC: 100, source: 'ucd-pumpkin' },
  { code: 'chills', keepingKeys: ['marrow'], fromTenthC: null, belowTenthC: 72, source: 'allotment-guide-store' },
  { code: 'chills', keepingKeys: ['sweet-potato'], fromTenthC: null, belowTenthC: 130, source: 'iowa-sweet-potato' },
  { code: 'sweetens', keepingKeys: ['potato'], fromTenthC: null, belowTenthC: 44, source: 'iowa-potato' },
  { code: 'freezes', keepingKeys: ['onion', 'onion-mild'], fromTenthC: null, belowTenthC: -8, source: 'ashrae-copy' },
  { code: 'freezes', keepingKeys: ['garlic'], fromTenthC: null, belowTenthC: -20, source: 'ashrae-copy' },
  // Another account of garlic, the more careful one.
  { code: 'freezes', keepingKeys: ['garlic'], fromTenthC: null, belowTenthC: -8, source: 'wflo-2018' },
  { code: 'freezes', keepingKeys: ['leek'], fromTenthC: null, belowTenthC: -7, source: 'ashrae-copy' },
  { code: 'freezes', keepingKeys: ['apple'], fromTenthC: null, belowTenthC: -15, source: 'ashrae-copy' },
  { code: 'freezes', keepingKeys: ['beetroot'], fromTenthC: null, belowTenthC: -9, source: 'ashrae-copy' },
  { code: 'freezes', keepingKeys: [...squashes, 'marrow', 'sweet-potato', 'potato', 'shallot', 'carrot', 'parsnip', 'swede', 'turnip', 'celeriac', 'cabbage', 'fresh-chilli', 'pear'], fromTenthC: null, belowTenthC: 0, source: 'common-practice' },
  { code: 'sprouts', keepingKeys: ['onion', 'onion-mild'], fromTenthC: 50, belowTenthC: 250, source: 'ucd-onion' },
  { code: 'sprouts', keepingKeys: ['garlic'], fromTenthC: 50, belowTenthC: 180, source: 'ucd-garlic' },
  { code: 'sprouts', keepingKeys: ['potato'], fromTenthC: 100, belowTenthC: null, source: 'iowa-potato' },
];
