import type { DiggingMethod } from './digging-methods';
import type { SourceKey } from './sources';

/**
 * What an activity costs, in multiples of sitting still (METs). Editions differ and lists circulate with wrong numbers,
 * so a row is known by code, text and edition together. The 2024 edition says that its figures hold for ages 19 to 59;
 * its lawn-and-garden rows were not read, and those of 2011 are held to the same ages.
 */
export type Exertion = {
  readonly code: string;
  readonly text: string;
  readonly edition: 2011;
  readonly met: number;
  readonly leastAge: 19;
  readonly mostAge: 59;
  readonly source: SourceKey;
  readonly agesSource: SourceKey;
};

const digging2011 = {
  edition: 2011,
  leastAge: 19,
  mostAge: 59,
  source: 'compendium-2011',
  agesSource: 'compendium-2024',
} as const;

export type PaceKey = 'gentle' | 'steady' | 'brisk';

/** A pace of digging: what it costs a body, and how long it takes over ground that is dug two spits deep. */
export type Pace = {
  readonly key: PaceKey;
  readonly name: string;
  readonly exertion: Exertion;
  /** Double digging, ground not dug so before [minutes per m²]. */
  readonly doubleMinutesPerM2: number;
  readonly source: SourceKey;
};

// Two to six hours for 9 m², the first time: the slow end, the fast end, and half-way between them, which nobody gives.
// biome-ignore format: one pace in few lines
export const paces: readonly Pace[] = [
  { key: 'gentle', name: 'Gentle', doubleMinutesPerM2: (6 * 60) / 9, source: 'iirr',
    exertion: { ...digging2011, code: '08045', text: 'digging, spading, composting, light to moderate', met: 3.5 } },
  { key: 'steady', name: 'Steady', doubleMinutesPerM2: (4 * 60) / 9, source: 'common-practice',
    exertion: { ...digging2011, code: '08050', text: 'digging, spading, composting', met: 5 } },
  { key: 'brisk', name: 'Brisk', doubleMinutesPerM2: (2 * 60) / 9, source: 'iirr',
    exertion: { ...digging2011, code: '08052', text: 'digging, spading, composting, vigorous', met: 7.8 } },
];

/**
 * How long each method takes, as a share of double digging at the same pace. The one published rate of single digging, 8 to
 * 15 rods a day, is that of a practised man in the trade about 1913, and is given to nobody. So one spit turned is taken as
 * half of two, one loosened but not turned as half of that, and spreading on top as the barrowing and raking of a few
 * centimetres. A member's own minutes go before all of these.
 */
// biome-ignore format: one method a line
export const workShares: Readonly<Record<DiggingMethod, { readonly percentOfDouble: number; readonly source: SourceKey }>> = {
  'double-digging': { percentOfDouble: 100, source: 'iirr' },
  'single-digging': { percentOfDouble: 50, source: 'common-practice' },
  forking: { percentOfDouble: 25, source: 'common-practice' },
  mulch: { percentOfDouble: 15, source: 'common-practice' },
};

/** Mean energy that a body keeps up without tiring [kcal/min]. NIOSH gives 5 for men and 3 for women over eight hours; the default lies between. */
// biome-ignore format: one limit a line
export const energyLimits = {
  usual: { kcalPerMin: 4, source: 'ergonomics-lectures' },
  most: { kcalPerMin: 5, source: 'niosh-1981' },
  least: { kcalPerMin: 3, source: 'niosh-1981' },
} as const satisfies Record<string, { readonly kcalPerMin: number; readonly source: SourceKey }>;

/** Sitting down between spells of work [kcal/min]. */
export const restKcalPerMin = { value: 1.5, source: 'murrell' } as const;

/** Who has not said what they weigh is taken for the body of the published tables [kg]. */
export const standardBodyKg = { value: 70, source: 'acgih-1992' } as const;

/** Shovelling without a pause, at most [minutes]. */
export const longestSpellMinutes = { value: 15, source: 'ccohs' } as const;

/** Where no energy figure holds: half an hour the first time, an hour afterwards, and of either no more than half at work. */
export const byTheClock = {
  firstSessionMinutes: { value: 30, source: 'how-to-dig' },
  sessionMinutes: { value: 60, source: 'how-to-dig' },
  workPercent: { value: 50, source: 'common-practice' },
} as const satisfies Record<string, { readonly value: number; readonly source: SourceKey }>;

/**
 * A pace by its key.
 *
 * @throws RangeError on a key that is none
 */
export function paceOf(key: string): Pace {
  const row = paces.find((pace) => pace.key === key);
  if (!row) throw new RangeError(`no such pace: ${key}`);
  return row;
}
