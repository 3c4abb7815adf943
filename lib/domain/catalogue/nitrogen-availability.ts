import type { SourceKey } from './sources';

/** August to October, November to January, February to April, May to July. */
export type SeasonApplied = 'autumn' | 'winter' | 'spring' | 'summer';
export type ManuredSoil = 'sandy-shallow' | 'medium-heavy';
/** Old: stored for three months or longer. Fresh: straight from the building. */
export type ManureAge = 'old' | 'fresh';

type BySeason = Readonly<Record<SeasonApplied, Readonly<Record<ManuredSoil, number | null>>>>;

const anySoil = (percent: number | null) => ({ 'sandy-shallow': percent, 'medium-heavy': percent });
const autumn = { 'sandy-shallow': 5, 'medium-heavy': 10 };
const winter = anySoil(10);

/**
 * Of the total nitrogen of cattle, pig, sheep, goat, horse and duck manure, what the next crop can use [percent].
 * Incorporated: within 24 hours. In summer the table speaks of grass, on the surface, alone. It takes 450 mm of rain
 * after autumn and 250 mm after winter application to the end of March.
 */
// biome-ignore format: one row of the table a line
export const availability: { readonly source: SourceKey; readonly rows: Readonly<Record<'surface' | ManureAge, BySeason>> } = {
  source: 'rb209-available',
  rows: {
    surface: { autumn, winter, spring: anySoil(10), summer: anySoil(10) },
    old: { autumn, winter, spring: anySoil(10), summer: anySoil(null) },
    fresh: { autumn, winter, spring: anySoil(15), summer: anySoil(null) },
  },
};
