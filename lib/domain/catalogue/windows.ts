import type { SourceKey } from './sources';

/** What is done in a window: seed under cover, in a seedbed or where the crop is to stand; plants, sets or tubers put in; the ground cleared. */
export type Step = 'under-cover' | 'seedbed' | 'in-place' | 'plant-out' | 'clear';

/** What a window moves with. What hangs on the length of days keeps its place in the calendar. */
export type HangsOn = 'last-frost' | 'first-frost' | 'calendar';

/** One of the ways in which a crop is grown. */
export type WayKey = 'usual' | 'autumn' | 'spring' | 'summer' | 'winter' | 'sets' | 'seed' | 'overwintered';

/** When something is done to a crop of a season, at the reference frosts. */
export type WindowRow = {
  readonly cropKeys: readonly string[];
  readonly way: WayKey;
  readonly step: Step;
  /** The year it begins in, counted from the season: −1 for the autumn before. Where `to` comes before `from`, it ends in the next year. */
  readonly year: -1 | 0 | 1;
  readonly from: string;
  readonly to: string;
  readonly hangsOn: HangsOn;
  readonly source: SourceKey;
};

/**
 * The frosts for which the months of the windows are told, and from which a society that has entered none of its own sets out.
 * Common practice: no official table of frosts by site is known. Measured elsewhere: Central England, by a private reading of its long
 * record, last about 7 April and first about 13 November; one private Oxfordshire station, 2005 to 2009, 22 April and 26 October.
 */
export const referenceFrosts = { lastFrost: '05-01', firstFrost: '10-20' } as const;

/**
 * The windows of every crop that is grown on beds. The months are those in which English growers have it in the ground, to the day only so
 * that a window has ends: common practice, but for what the Ministry's guide and the Royal Horticultural Society say.
 */
// biome-ignore format: one window a line
export const windows: readonly WindowRow[] = [
  { cropKeys: ['summer-cabbage'], way: 'usual', step: 'under-cover', year: 0, from: '02-15', to: '03-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['summer-cabbage'], way: 'usual', step: 'plant-out', year: 0, from: '04-10', to: '05-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['summer-cabbage'], way: 'usual', step: 'clear', year: 0, from: '07-01', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['winter-cabbage'], way: 'usual', step: 'seedbed', year: 0, from: '04-15', to: '05-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['winter-cabbage'], way: 'usual', step: 'plant-out', year: 0, from: '06-01', to: '07-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['winter-cabbage'], way: 'usual', step: 'clear', year: 0, from: '11-01', to: '03-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['spring-cabbage'], way: 'usual', step: 'seedbed', year: -1, from: '07-15', to: '08-15', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['spring-cabbage'], way: 'usual', step: 'plant-out', year: -1, from: '09-01', to: '10-15', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['spring-cabbage'], way: 'usual', step: 'clear', year: 0, from: '04-01', to: '05-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['brussels-sprout'], way: 'usual', step: 'seedbed', year: 0, from: '03-15', to: '04-30', hangsOn: 'last-frost', source: 'allotment-guide-sowing' },
  { cropKeys: ['brussels-sprout'], way: 'usual', step: 'plant-out', year: 0, from: '05-10', to: '06-30', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['brussels-sprout'], way: 'usual', step: 'clear', year: 0, from: '10-01', to: '03-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['cauliflower'], way: 'usual', step: 'under-cover', year: 0, from: '02-01', to: '03-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['cauliflower'], way: 'usual', step: 'plant-out', year: 0, from: '04-10', to: '06-30', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['cauliflower'], way: 'usual', step: 'clear', year: 0, from: '07-01', to: '11-30', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['cauliflower'], way: 'winter', step: 'seedbed', year: 0, from: '05-15', to: '06-10', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['cauliflower'], way: 'winter', step: 'plant-out', year: 0, from: '07-01', to: '07-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['cauliflower'], way: 'winter', step: 'clear', year: 1, from: '03-01', to: '05-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['calabrese'], way: 'usual', step: 'under-cover', year: 0, from: '03-01', to: '05-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['calabrese'], way: 'usual', step: 'plant-out', year: 0, from: '04-15', to: '07-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['calabrese'], way: 'usual', step: 'clear', year: 0, from: '07-01', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['purple-sprouting'], way: 'usual', step: 'seedbed', year: 0, from: '04-15', to: '05-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['purple-sprouting'], way: 'usual', step: 'plant-out', year: 0, from: '06-01', to: '07-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['purple-sprouting'], way: 'usual', step: 'clear', year: 1, from: '02-15', to: '04-30', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['kale'], way: 'usual', step: 'seedbed', year: 0, from: '04-15', to: '05-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['kale'], way: 'usual', step: 'plant-out', year: 0, from: '06-01', to: '07-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['kale'], way: 'usual', step: 'clear', year: 0, from: '11-01', to: '04-30', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['kohlrabi'], way: 'usual', step: 'in-place', year: 0, from: '04-01', to: '08-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['kohlrabi'], way: 'usual', step: 'clear', year: 0, from: '06-15', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['swede'], way: 'usual', step: 'in-place', year: 0, from: '05-10', to: '06-30', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['swede'], way: 'usual', step: 'clear', year: 0, from: '10-01', to: '02-28', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['turnip'], way: 'usual', step: 'in-place', year: 0, from: '03-15', to: '08-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['turnip'], way: 'usual', step: 'clear', year: 0, from: '06-01', to: '11-30', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['chinese-cabbage', 'pak-choi'], way: 'usual', step: 'in-place', year: 0, from: '07-01', to: '08-15', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['chinese-cabbage', 'pak-choi'], way: 'usual', step: 'clear', year: 0, from: '09-01', to: '11-30', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['radish'], way: 'usual', step: 'in-place', year: 0, from: '03-01', to: '08-31', hangsOn: 'last-frost', source: 'allotment-guide-sowing' },
  { cropKeys: ['radish'], way: 'usual', step: 'clear', year: 0, from: '04-15', to: '09-30', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['rocket'], way: 'usual', step: 'in-place', year: 0, from: '03-15', to: '08-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['rocket'], way: 'usual', step: 'clear', year: 0, from: '05-01', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['mustard-greens', 'mizuna'], way: 'usual', step: 'in-place', year: 0, from: '03-15', to: '08-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['mustard-greens', 'mizuna'], way: 'usual', step: 'clear', year: 0, from: '05-01', to: '11-30', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['horseradish'], way: 'usual', step: 'plant-out', year: 0, from: '02-15', to: '03-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['mustard'], way: 'usual', step: 'in-place', year: 0, from: '03-15', to: '09-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['mustard'], way: 'usual', step: 'clear', year: 0, from: '05-15', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['pea', 'mangetout'], way: 'usual', step: 'in-place', year: 0, from: '03-10', to: '05-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['pea', 'mangetout'], way: 'usual', step: 'clear', year: 0, from: '06-15', to: '08-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['broad-bean'], way: 'autumn', step: 'in-place', year: -1, from: '11-01', to: '11-30', hangsOn: 'calendar', source: 'allotment-guide-sowing' },
  { cropKeys: ['broad-bean'], way: 'autumn', step: 'clear', year: 0, from: '06-15', to: '08-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['broad-bean'], way: 'spring', step: 'in-place', year: 0, from: '02-10', to: '04-15', hangsOn: 'last-frost', source: 'allotment-guide-sowing' },
  { cropKeys: ['broad-bean'], way: 'spring', step: 'clear', year: 0, from: '07-01', to: '08-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['french-bean'], way: 'usual', step: 'under-cover', year: 0, from: '04-10', to: '05-10', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['french-bean'], way: 'usual', step: 'in-place', year: 0, from: '04-15', to: '06-30', hangsOn: 'last-frost', source: 'allotment-guide-sowing' },
  { cropKeys: ['french-bean'], way: 'usual', step: 'plant-out', year: 0, from: '05-10', to: '06-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['french-bean'], way: 'usual', step: 'clear', year: 0, from: '08-15', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['runner-bean'], way: 'usual', step: 'under-cover', year: 0, from: '04-15', to: '05-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['runner-bean'], way: 'usual', step: 'in-place', year: 0, from: '05-15', to: '06-30', hangsOn: 'last-frost', source: 'allotment-guide-sowing' },
  { cropKeys: ['runner-bean'], way: 'usual', step: 'plant-out', year: 0, from: '05-20', to: '06-20', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['runner-bean'], way: 'usual', step: 'clear', year: 0, from: '09-15', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['field-bean', 'winter-vetch', 'clover'], way: 'usual', step: 'in-place', year: 0, from: '08-15', to: '10-15', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['field-bean', 'winter-vetch', 'clover'], way: 'usual', step: 'clear', year: 1, from: '03-01', to: '04-30', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['onion'], way: 'sets', step: 'plant-out', year: 0, from: '03-15', to: '04-15', hangsOn: 'last-frost', source: 'rhs-onion-sets' },
  { cropKeys: ['onion'], way: 'sets', step: 'clear', year: 0, from: '08-01', to: '08-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['onion'], way: 'seed', step: 'under-cover', year: 0, from: '01-01', to: '01-31', hangsOn: 'calendar', source: 'allotment-guide-sowing' },
  { cropKeys: ['onion'], way: 'seed', step: 'plant-out', year: 0, from: '03-15', to: '04-30', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['onion'], way: 'seed', step: 'clear', year: 0, from: '08-01', to: '08-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['onion'], way: 'overwintered', step: 'plant-out', year: -1, from: '09-10', to: '10-15', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['onion'], way: 'overwintered', step: 'clear', year: 0, from: '06-15', to: '07-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['shallot'], way: 'usual', step: 'plant-out', year: 0, from: '01-15', to: '03-15', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['shallot'], way: 'usual', step: 'clear', year: 0, from: '07-01', to: '07-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['garlic'], way: 'autumn', step: 'plant-out', year: -1, from: '10-01', to: '11-30', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['garlic'], way: 'autumn', step: 'clear', year: 0, from: '07-01', to: '07-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['garlic'], way: 'spring', step: 'plant-out', year: 0, from: '02-01', to: '03-15', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['garlic'], way: 'spring', step: 'clear', year: 0, from: '07-15', to: '08-15', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['leek'], way: 'usual', step: 'seedbed', year: 0, from: '03-15', to: '04-15', hangsOn: 'last-frost', source: 'allotment-guide-sowing' },
  { cropKeys: ['leek'], way: 'usual', step: 'plant-out', year: 0, from: '06-01', to: '07-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['leek'], way: 'usual', step: 'clear', year: 0, from: '09-15', to: '04-30', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['spring-onion', 'welsh-onion'], way: 'usual', step: 'in-place', year: 0, from: '03-10', to: '07-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['spring-onion', 'welsh-onion'], way: 'usual', step: 'clear', year: 0, from: '06-01', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['chives'], way: 'usual', step: 'plant-out', year: 0, from: '03-15', to: '05-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['carrot'], way: 'usual', step: 'in-place', year: 0, from: '03-15', to: '07-10', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['carrot'], way: 'usual', step: 'clear', year: 0, from: '06-15', to: '11-30', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['parsnip'], way: 'usual', step: 'in-place', year: 0, from: '02-15', to: '03-15', hangsOn: 'last-frost', source: 'allotment-guide-sowing' },
  { cropKeys: ['parsnip'], way: 'usual', step: 'clear', year: 0, from: '11-01', to: '03-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['celery'], way: 'usual', step: 'under-cover', year: 0, from: '03-01', to: '04-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['celery'], way: 'usual', step: 'plant-out', year: 0, from: '05-15', to: '06-30', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['celery'], way: 'usual', step: 'clear', year: 0, from: '08-15', to: '11-30', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['celeriac'], way: 'usual', step: 'under-cover', year: 0, from: '02-15', to: '03-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['celeriac'], way: 'usual', step: 'plant-out', year: 0, from: '05-10', to: '06-20', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['celeriac'], way: 'usual', step: 'clear', year: 0, from: '10-15', to: '03-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['florence-fennel'], way: 'usual', step: 'in-place', year: 0, from: '05-15', to: '07-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['florence-fennel'], way: 'usual', step: 'clear', year: 0, from: '08-01', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['parsley'], way: 'spring', step: 'in-place', year: 0, from: '03-01', to: '04-30', hangsOn: 'last-frost', source: 'allotment-guide-sowing' },
  { cropKeys: ['parsley'], way: 'spring', step: 'clear', year: 0, from: '06-15', to: '04-30', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['parsley'], way: 'summer', step: 'in-place', year: 0, from: '07-01', to: '07-31', hangsOn: 'first-frost', source: 'allotment-guide-sowing' },
  { cropKeys: ['parsley'], way: 'summer', step: 'clear', year: 0, from: '10-01', to: '05-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['coriander', 'dill'], way: 'usual', step: 'in-place', year: 0, from: '04-10', to: '07-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['coriander', 'dill'], way: 'usual', step: 'clear', year: 0, from: '06-01', to: '09-30', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['early-potato'], way: 'usual', step: 'plant-out', year: 0, from: '03-20', to: '04-20', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['early-potato'], way: 'usual', step: 'clear', year: 0, from: '06-15', to: '07-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['maincrop-potato'], way: 'usual', step: 'plant-out', year: 0, from: '04-10', to: '05-10', hangsOn: 'last-frost', source: 'allotment-guide-sowing' },
  { cropKeys: ['maincrop-potato'], way: 'usual', step: 'clear', year: 0, from: '09-01', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['tomato'], way: 'usual', step: 'under-cover', year: 0, from: '03-01', to: '04-10', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['tomato'], way: 'usual', step: 'plant-out', year: 0, from: '06-01', to: '06-20', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['tomato'], way: 'usual', step: 'clear', year: 0, from: '08-01', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['pepper', 'aubergine'], way: 'usual', step: 'under-cover', year: 0, from: '02-15', to: '03-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['pepper', 'aubergine'], way: 'usual', step: 'plant-out', year: 0, from: '06-01', to: '06-30', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['pepper', 'aubergine'], way: 'usual', step: 'clear', year: 0, from: '08-01', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['tomatillo'], way: 'usual', step: 'under-cover', year: 0, from: '03-15', to: '04-30', hangsOn: 'last-frost', source: 'from-memory' },
  { cropKeys: ['tomatillo'], way: 'usual', step: 'plant-out', year: 0, from: '06-01', to: '06-20', hangsOn: 'last-frost', source: 'from-memory' },
  { cropKeys: ['tomatillo'], way: 'usual', step: 'clear', year: 0, from: '08-15', to: '10-31', hangsOn: 'first-frost', source: 'from-memory' },
  { cropKeys: ['courgette'], way: 'usual', step: 'under-cover', year: 0, from: '04-10', to: '05-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['courgette'], way: 'usual', step: 'in-place', year: 0, from: '05-20', to: '06-20', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['courgette'], way: 'usual', step: 'plant-out', year: 0, from: '05-20', to: '06-20', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['courgette'], way: 'usual', step: 'clear', year: 0, from: '07-01', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['winter-squash', 'butternut'], way: 'usual', step: 'under-cover', year: 0, from: '04-15', to: '05-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['winter-squash', 'butternut'], way: 'usual', step: 'plant-out', year: 0, from: '05-20', to: '06-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['winter-squash', 'butternut'], way: 'usual', step: 'clear', year: 0, from: '09-15', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['cucumber'], way: 'usual', step: 'under-cover', year: 0, from: '04-15', to: '05-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['cucumber'], way: 'usual', step: 'plant-out', year: 0, from: '05-25', to: '06-20', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['cucumber'], way: 'usual', step: 'clear', year: 0, from: '07-15', to: '09-30', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['melon'], way: 'usual', step: 'under-cover', year: 0, from: '04-15', to: '05-10', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['melon'], way: 'usual', step: 'plant-out', year: 0, from: '06-01', to: '06-20', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['melon'], way: 'usual', step: 'clear', year: 0, from: '08-15', to: '09-30', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['beetroot'], way: 'usual', step: 'in-place', year: 0, from: '04-10', to: '07-10', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['beetroot'], way: 'usual', step: 'clear', year: 0, from: '06-20', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['chard'], way: 'usual', step: 'in-place', year: 0, from: '04-10', to: '07-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['chard'], way: 'usual', step: 'clear', year: 0, from: '07-01', to: '05-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['spinach'], way: 'usual', step: 'in-place', year: 0, from: '02-15', to: '05-31', hangsOn: 'last-frost', source: 'allotment-guide-sowing' },
  { cropKeys: ['spinach'], way: 'usual', step: 'clear', year: 0, from: '05-01', to: '07-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['lettuce'], way: 'usual', step: 'under-cover', year: 0, from: '02-15', to: '03-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['lettuce'], way: 'usual', step: 'in-place', year: 0, from: '03-15', to: '07-31', hangsOn: 'last-frost', source: 'allotment-guide-sowing' },
  { cropKeys: ['lettuce'], way: 'usual', step: 'plant-out', year: 0, from: '04-01', to: '05-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['lettuce'], way: 'usual', step: 'clear', year: 0, from: '05-20', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['endive', 'chicory'], way: 'usual', step: 'in-place', year: 0, from: '05-15', to: '07-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['endive', 'chicory'], way: 'usual', step: 'clear', year: 0, from: '08-15', to: '12-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['salsify', 'scorzonera'], way: 'usual', step: 'in-place', year: 0, from: '04-01', to: '05-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['salsify', 'scorzonera'], way: 'usual', step: 'clear', year: 0, from: '10-15', to: '03-31', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['jerusalem-artichoke'], way: 'usual', step: 'plant-out', year: 0, from: '02-10', to: '04-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['jerusalem-artichoke'], way: 'usual', step: 'clear', year: 0, from: '11-01', to: '02-28', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['globe-artichoke'], way: 'usual', step: 'plant-out', year: 0, from: '04-01', to: '05-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['lambs-lettuce', 'winter-purslane'], way: 'usual', step: 'in-place', year: 0, from: '08-01', to: '09-15', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['lambs-lettuce', 'winter-purslane'], way: 'usual', step: 'clear', year: 0, from: '10-15', to: '04-30', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['new-zealand-spinach'], way: 'usual', step: 'under-cover', year: 0, from: '04-10', to: '05-10', hangsOn: 'last-frost', source: 'from-memory' },
  { cropKeys: ['new-zealand-spinach'], way: 'usual', step: 'plant-out', year: 0, from: '05-20', to: '06-15', hangsOn: 'last-frost', source: 'from-memory' },
  { cropKeys: ['new-zealand-spinach'], way: 'usual', step: 'clear', year: 0, from: '07-01', to: '10-31', hangsOn: 'first-frost', source: 'from-memory' },
  { cropKeys: ['sweetcorn'], way: 'usual', step: 'under-cover', year: 0, from: '04-20', to: '05-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['sweetcorn'], way: 'usual', step: 'in-place', year: 0, from: '05-10', to: '05-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['sweetcorn'], way: 'usual', step: 'plant-out', year: 0, from: '05-20', to: '06-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['sweetcorn'], way: 'usual', step: 'clear', year: 0, from: '08-15', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['grazing-rye'], way: 'usual', step: 'in-place', year: 0, from: '09-01', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['grazing-rye'], way: 'usual', step: 'clear', year: 1, from: '03-01', to: '04-30', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['phacelia'], way: 'usual', step: 'in-place', year: 0, from: '03-20', to: '08-31', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['phacelia'], way: 'usual', step: 'clear', year: 0, from: '05-20', to: '10-31', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['buckwheat'], way: 'usual', step: 'in-place', year: 0, from: '05-10', to: '08-15', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['buckwheat'], way: 'usual', step: 'clear', year: 0, from: '07-01', to: '09-30', hangsOn: 'first-frost', source: 'common-practice' },
  { cropKeys: ['rhubarb'], way: 'usual', step: 'plant-out', year: -1, from: '11-01', to: '03-15', hangsOn: 'calendar', source: 'common-practice' },
  { cropKeys: ['asparagus'], way: 'usual', step: 'plant-out', year: 0, from: '03-20', to: '04-30', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['sweet-potato'], way: 'usual', step: 'under-cover', year: 0, from: '03-01', to: '04-30', hangsOn: 'last-frost', source: 'from-memory' },
  { cropKeys: ['sweet-potato'], way: 'usual', step: 'plant-out', year: 0, from: '06-01', to: '06-20', hangsOn: 'last-frost', source: 'from-memory' },
  { cropKeys: ['sweet-potato'], way: 'usual', step: 'clear', year: 0, from: '09-15', to: '10-31', hangsOn: 'first-frost', source: 'from-memory' },
  { cropKeys: ['oca'], way: 'usual', step: 'under-cover', year: 0, from: '04-01', to: '05-10', hangsOn: 'last-frost', source: 'from-memory' },
  { cropKeys: ['oca'], way: 'usual', step: 'plant-out', year: 0, from: '05-20', to: '06-15', hangsOn: 'last-frost', source: 'from-memory' },
  { cropKeys: ['oca'], way: 'usual', step: 'clear', year: 0, from: '11-15', to: '12-31', hangsOn: 'first-frost', source: 'from-memory' },
  { cropKeys: ['strawberry'], way: 'spring', step: 'plant-out', year: 0, from: '03-15', to: '04-30', hangsOn: 'last-frost', source: 'common-practice' },
  { cropKeys: ['strawberry'], way: 'summer', step: 'plant-out', year: 0, from: '07-15', to: '09-15', hangsOn: 'first-frost', source: 'common-practice' },
];

/** The windows of a crop, way by way as listed; none where nobody tells of it. */
export function windowRowsOf(cropKey: string): readonly WindowRow[] {
  return windows.filter(({ cropKeys }) => cropKeys.includes(cropKey));
}
