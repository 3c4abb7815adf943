import type { CalendarDate } from '../calendar/calendar-date';
import type { DiggingMethod } from '../catalogue/digging-methods';
import { type SoilKey, soilOf } from '../catalogue/soils';
import { areaCm2, type Footprint } from '../ground/footprint';
import type { Jar } from '../quantity/meal-jar';
import type { Digging } from '../trench/digging';
import type { Manure, Meal } from '../trench/dressing';
import { type BedSize, type TrenchLayout, type TrenchOrder, trenchPlan } from '../trench/trench-plan';
import type { LayoutBy } from './settled-layout';

/** By which method a sheet was worked out; raised when the maths would draw an old order otherwise. */
export const sheetMethod = 'sheet-1';

/** What a sheet's manure is, beside how much of it goes where. */
export type SheetManure = Omit<Manure, 'barrowLitres'> & {
  readonly materialKey: string;
  readonly ageMonths: number | null;
};

/**
 * How a piece of ground is dug and dressed, as it was settled when its sheet was made. It is kept whole with the sheet, so
 * that a habit or a rule changed later moves no trench of ground that is half dug.
 */
export type SheetOrder = {
  readonly version: typeof sheetMethod;
  readonly method: DiggingMethod;
  readonly across: TrenchOrder['across'];
  readonly trenchWidthCm: number;
  readonly spitDepthCm: number;
  readonly layout: TrenchLayout;
  readonly layoutBy: LayoutBy;
  readonly soil: SoilKey;
  readonly barrowLitres: number;
  readonly manure: SheetManure | null;
  readonly meal: (Meal & { readonly jarBasis: Jar['basis'] }) | null;
  readonly strawGPerM2: number;
  /** Up to which pH the recipe wants it limed; null where it wants none. */
  readonly limeToPhTenths: number | null;
  readonly limeApartMonths: number;
  readonly firmness: 'firm' | 'loose';
  readonly leftHigh: boolean;
  readonly springFinishCm: number | null;
  readonly from: CalendarDate;
  readonly until: CalendarDate;
};

/** More trenches than anybody follows on one sheet, and more ground than a bed [cm²]: a hectare. */
export const mostTrenches = 300;
const mostSheetCm2 = 100_000_000;

/** A piece of ground as a bed of its own. */
export function sizeOf({ widthCm, lengthCm }: Footprint): BedSize {
  return { widthCm, lengthCm };
}

/** Whether a piece of ground is more than one sheet holds. */
export function isTooLarge(ground: Footprint, across: TrenchOrder['across'], trenchWidthCm: number): boolean {
  const runCm = across === 'width' ? ground.lengthCm : ground.widthCm;
  // In two halves there are twice as many.
  return areaCm2(ground) > mostSheetCm2 || (2 * runCm) / trenchWidthCm > mostTrenches;
}

/**
 * The digging that a sheet's order asks of its ground: plan, dressing, soil and spring finish.
 *
 * @param order   as it was settled
 * @param ground  the sheet's footprint; the plan's own footprints begin at its nearest corner
 * @returns       what drawings, layers and soil are worked out from; the same for the same order, whenever it is asked
 * @throws RangeError on ground that the trenches do not fit, or a soil that is none
 * @source        the order
 * @example       120 × 360 cm in trenches of 60 → a plan of six
 */
export function diggingOf(order: SheetOrder, ground: Footprint): Digging {
  const { across, trenchWidthCm, spitDepthCm, method, layout, barrowLitres, meal, strawGPerM2 } = order;
  const soil = soilOf(order.soil);
  if (!soil) throw new RangeError(`no such soil: ${order.soil}`);
  return {
    plan: trenchPlan({ bed: sizeOf(ground), across, trenchWidthCm, spitDepthCm, method, layout }),
    dressing: { manure: order.manure && { ...order.manure, barrowLitres }, meals: meal ? [meal] : [], strawGPerM2 },
    soil,
    springFinishCm: order.springFinishCm,
  };
}
