import type { SourceKey } from './sources';

/**
 * Total nitrogen of organic manures on any given hectare in any twelve months. Written for English farmland in
 * designated zones; on a plot it is guidance. Two years' worth of compost has a limit of its own, which is not used
 * here.
 */
export const hectareLimit: { readonly kgPerHa: number; readonly years: number; readonly source: SourceKey } = {
  kgPerHa: 250,
  years: 1,
  source: 'nvz-hectare',
};

/** Of last year's organic nitrogen, what German law counts for this year's crop [percent of the total applied]. */
export const lastYearsShare: { readonly percent: number; readonly source: SourceKey } = {
  percent: 10,
  source: 'duev-last-year',
};

/** The most nitrogen for a crop, bought fertiliser and what is available of manure together: a ceiling, not advice. */
export type NitrogenCeiling = {
  readonly cropKeys: readonly string[];
  readonly kgPerHa: number;
  readonly source: SourceKey;
};

// biome-ignore format: one group a line
export const nitrogenCeilings: readonly NitrogenCeiling[] = [
  { cropKeys: ['early-potato', 'maincrop-potato'], kgPerHa: 270, source: 'nvz-crops' },
  { cropKeys: ['pea', 'field-bean'], kgPerHa: 0, source: 'nvz-crops' },
  { cropKeys: ['asparagus', 'carrot', 'radish', 'swede'], kgPerHa: 180, source: 'nvz-crops' },
  { cropKeys: ['celery', 'courgette', 'french-bean', 'lettuce', 'onion', 'parsnip', 'runner-bean', 'sweetcorn', 'turnip'], kgPerHa: 280, source: 'nvz-crops' },
  { cropKeys: ['beetroot', 'brussels-sprout', 'summer-cabbage', 'winter-cabbage', 'spring-cabbage', 'calabrese', 'cauliflower', 'leek'], kgPerHa: 370, source: 'from-memory' },
];

/** A crop's ceiling; undefined where none was found. */
export function nitrogenCeilingOf(cropKey: string): NitrogenCeiling | undefined {
  return nitrogenCeilings.find(({ cropKeys }) => cropKeys.includes(cropKey));
}
