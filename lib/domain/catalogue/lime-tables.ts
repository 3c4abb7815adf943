import type { SoilKey } from './soils';
import type { SourceKey } from './sources';

export type LimeTexture = 'sand' | 'sandy-loam' | 'loam' | 'silt-loam' | 'clay-loam';

/** Ground limestone that raises the pH by one, from one pH to the next [g/m²]; 1 t/ha is 100 g/m². */
export type LimeStep = {
  readonly fromPhTenths: number;
  readonly toPhTenths: number;
  readonly gPerM2: Readonly<Record<LimeTexture, number>>;
};

/**
 * The default. Sources differ three- or fourfold for like soils, so one table is used and named, and the others stand
 * beside it.
 */
// biome-ignore format: one step a line
export const limeSteps: { readonly source: SourceKey; readonly rows: readonly LimeStep[] } = {
  source: 'za-lime',
  rows: [
    { fromPhTenths: 45, toPhTenths: 55, gPerM2: { sand: 50, 'sandy-loam': 100, loam: 150, 'silt-loam': 250, 'clay-loam': 300 } },
    { fromPhTenths: 55, toPhTenths: 65, gPerM2: { sand: 75, 'sandy-loam': 150, loam: 200, 'silt-loam': 300, 'clay-loam': 400 } },
  ],
};

/**
 * A farm adviser's rough guide for arable ground to pH 6.7, of any texture: 6 t/ha for each pH, printed from 5.4 to
 * 6.4.
 */
export const limeSlope = {
  gPerM2PerPh: 600,
  fromPhTenths: 54,
  toPhTenths: 64,
  targetPhTenths: 67,
  source: 'uk-lime-guide',
} as const satisfies { readonly source: SourceKey; readonly [key: string]: unknown };

export type LimeSoilClass = 'very-light' | 'light' | 'medium' | 'heavy';

/** Doses in CaO by pH in potassium chloride, up to and with each pH; above the last none is needed [g/m² of CaO]. */
export type LimeClass = {
  readonly soil: LimeSoilClass;
  readonly doses: readonly {
    readonly need: 'necessary' | 'needed' | 'advisable' | 'limited';
    readonly toPhTenths: number;
    readonly oxideGPerM2: number;
  }[];
  readonly mostAtOnceGPerM2: number;
};

// biome-ignore format: one class of soil a line
export const limeClasses: { readonly source: SourceKey; readonly rows: readonly LimeClass[] } = {
  source: 'iung-lime',
  rows: [
    { soil: 'very-light', mostAtOnceGPerM2: 150, doses: [{ need: 'necessary', toPhTenths: 40, oxideGPerM2: 300 }, { need: 'needed', toPhTenths: 45, oxideGPerM2: 200 }, { need: 'advisable', toPhTenths: 50, oxideGPerM2: 100 }] },
    { soil: 'light', mostAtOnceGPerM2: 200, doses: [{ need: 'necessary', toPhTenths: 45, oxideGPerM2: 350 }, { need: 'needed', toPhTenths: 50, oxideGPerM2: 250 }, { need: 'advisable', toPhTenths: 55, oxideGPerM2: 200 }] },
    { soil: 'medium', mostAtOnceGPerM2: 300, doses: [{ need: 'necessary', toPhTenths: 50, oxideGPerM2: 450 }, { need: 'needed', toPhTenths: 55, oxideGPerM2: 300 }, { need: 'advisable', toPhTenths: 60, oxideGPerM2: 250 }, { need: 'limited', toPhTenths: 65, oxideGPerM2: 100 }] },
    { soil: 'heavy', mostAtOnceGPerM2: 400, doses: [{ need: 'necessary', toPhTenths: 55, oxideGPerM2: 600 }, { need: 'needed', toPhTenths: 60, oxideGPerM2: 400 }, { need: 'advisable', toPhTenths: 65, oxideGPerM2: 300 }, { need: 'limited', toPhTenths: 70, oxideGPerM2: 150 }] },
  ],
};

/** Which class a texture falls into: common practice. */
export const classOfTexture: Readonly<Record<LimeTexture, LimeSoilClass>> = {
  sand: 'very-light',
  'sandy-loam': 'light',
  loam: 'medium',
  'silt-loam': 'medium',
  'clay-loam': 'heavy',
};

/**
 * The column of the default table for a soil: common practice, the lighter where two would do. Peat has a target of its
 * own and no column.
 */
export const textureOfSoil: Readonly<Record<SoilKey, LimeTexture | null>> = {
  sandy: 'sand',
  silty: 'silt-loam',
  loamy: 'loam',
  clayey: 'clay-loam',
  peaty: null,
};

/** Calcium carbonate for calcium oxide, by molar mass 100.09 and 56.08 g [thousandths]. */
export const carbonatePerOxideThousandths = 1785;

/** How far pH in potassium chloride lies below pH in water [tenths]: from memory. */
export const chlorideBelowWater = { leastTenths: 5, mostTenths: 10, source: 'from-memory' } as const;

/** Lime by the buffer pH of a laboratory: 12.5 t/ha for each pH short of the target [g/m²]. */
export const limeByBuffer = { targetPhTenths: 67, gPerM2PerPh: 1250, source: 'teagasc-lime' } as const;

/** Above the first figure a dressing is split over two years; none is above the second [g/m²]. */
export const limeDressings = {
  splitAboveGPerM2: 500,
  splitSource: 'uk-lime-guide',
  mostGPerM2: 750,
  mostSource: 'irish-lime-most',
} as const satisfies {
  readonly splitSource: SourceKey;
  readonly mostSource: SourceKey;
  readonly [key: string]: unknown;
};

export type LimePurpose = 'vegetables' | 'clubroot' | 'peat' | 'potatoes';

/** The pH that ground is brought to; null: none is given for potatoes, nor in the year before, for scab. */
export const limeTargets: Readonly<
  Record<
    LimePurpose,
    { readonly leastPhTenths: number; readonly mostPhTenths: number; readonly source: SourceKey } | null
  >
> = {
  vegetables: { leastPhTenths: 65, mostPhTenths: 65, source: 'rb209-vegetables' },
  // At least 7.0 is published; up to 7.2 is what growers lime to.
  clubroot: { leastPhTenths: 70, mostPhTenths: 72, source: 'rb209-vegetables' },
  peat: { leastPhTenths: 58, mostPhTenths: 58, source: 'rb209-vegetables' },
  potatoes: null,
};

/** Waits between lime and manure, and before a test. */
export const limeWaits = {
  /** After lime, before manure: written for slurry and urea; for manure on plots it is our extension. */
  limeThenManure: { leastMonths: 3, mostMonths: 6, source: 'teagasc-slurry' },
  /** After slurry, before lime. */
  manureThenLime: { days: 7, source: 'teagasc-slurry' },
  /** After lime, fertiliser or manure, before the pH is tested: and only a test says how much lime. */
  beforeTest: { months: 3, source: 'rhs-lime' },
} as const satisfies Readonly<Record<string, { readonly source: SourceKey; readonly [key: string]: unknown }>>;
