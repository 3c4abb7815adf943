import type { SourceKey } from './sources';
import { squashMarketable } from './storage-losses';

export type LotCondition = 'sound' | 'uncured' | 'unripe' | 'damaged';

/** How the state in which a lot was put away moves the ends of its kind's life: what is divided by how much. */
// biome-ignore format: one condition a line
export const lotConditions = {
  sound: { leastDividedBy: 1, mostDividedBy: 1, source: 'common-practice' },
  uncured: { leastDividedBy: 2, mostDividedBy: 1, source: 'common-practice' },
  unripe: { leastDividedBy: 2, mostDividedBy: 1, source: 'common-practice' },
  damaged: { leastDividedBy: 4, mostDividedBy: 2, source: 'common-practice' },
} as const satisfies Record<LotCondition, { readonly leastDividedBy: number; readonly mostDividedBy: number; readonly source: SourceKey }>;

const [early, middle, late] = squashMarketable;
const lostLog = ({ soundPermille }: { readonly soundPermille: number }) => -Math.log(soundPermille / 1000);

/**
 * What a forecast of losses assumes, whatever the kind. The shape is that of the printed curve through its first and its last
 * point: 90 % at 9 weeks and 50 % at 20 make 2.36, and 70 % at 15 then follows. The middle point is what a printed life is taken
 * to mean, since of squash both are printed: 2 to 6 months have 15 weeks in the middle.
 */
// biome-ignore format: one value a line
export const lossModel = {
  shape: { value: Math.round((Math.log(lostLog(late) / lostLog(early)) / Math.log(late.weeks / early.weeks)) * 1000) / 1000, source: 'ucd-squash-marketable' },
  lifeSoundPermille: { value: middle.soundPermille, source: 'ucd-squash-marketable' },
  // Between the printed ends lie eight lots of ten.
  lifeRangePercent: { value: 80, unit: '%', source: 'common-practice' },
  // A life printed as one figure, or without an end, is taken to reach so far either way, or upwards.
  oneFigureFactor: { value: 1.5, source: 'common-practice' },
  // Where the place is not known to be as the account wants it: apples spoil two or three times as fast at 10 °C as at 0.
  elsewhereLeastDividedBy: { value: 2, source: 'iowa-apple' },
  // The coming weeks are never quite like those behind: one standard deviation of the logarithm of the hazard.
  aheadSpread: { value: 0.25, source: 'common-practice' },
  // What a household says it uses is off by so much: the standard deviation over the mean.
  saidUseSpread: { value: 0.3, source: 'common-practice' },
} as const satisfies Record<string, { readonly value: number; readonly unit?: string; readonly source: SourceKey }>;

/** When a forecast is taken for yes and when for no, and when a lot counts as near its end. */
// biome-ignore format: one value a line
export const storeAnswers = {
  enoughFromPercent: { value: 80, unit: '%', source: 'common-practice' },
  tooLittleToPercent: { value: 20, unit: '%', source: 'common-practice' },
  nearEndDays: { value: 28, unit: 'days', source: 'common-practice' },
  useNowDays: { value: 7, unit: 'days', source: 'common-practice' },
  yieldSpread: { value: 0.3, source: 'common-practice' },
} as const satisfies Record<string, { readonly value: number; readonly unit?: string; readonly source: SourceKey }>;
