import 'server-only';
import { type WorkRecord, worksIn } from '@/lib/data/ground-work';
import { settingsOn } from '@/lib/data/setting';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { diggingMethodOf } from '@/lib/domain/catalogue/digging-methods';
import { soilOf } from '@/lib/domain/catalogue/soils';
import { type Footprint, overlap } from '@/lib/domain/ground/footprint';
import { dressingOn } from '@/lib/domain/nutrients/dressing-on';
import { loggedOnce } from '@/lib/domain/nutrients/logged-once';
import type { Supply } from '@/lib/domain/nutrients/supply';
import { sheetNitrogen } from '@/lib/domain/sheet/sheet-nitrogen';
import type { SheetOrder } from '@/lib/domain/sheet/sheet-order';
import { limeDays } from '../ground/lime-of';
import type { ReadContext } from '../operation';

type Asked = {
  readonly frameId: string;
  readonly footprint: Footprint;
  readonly season: number;
  readonly order: SheetOrder;
  /** Null while it is not made. */
  readonly sheetId: string | null;
  /** The day that its dressing is reckoned from. */
  readonly on: CalendarDate;
};

/**
 * What the ground of a sheet had, and what that means for its dressing: nitrogen against the guidance, what it supplies, and
 * lime that is too near.
 */
export async function sheetOutlook(
  { db, scope, today }: Pick<ReadContext, 'db' | 'scope' | 'today'>,
  { frameId, footprint, season, order, sheetId, on }: Asked,
) {
  const [works, settings] = await Promise.all([worksIn(db, scope, [frameId]), settingsOn(db, scope, today)]);
  const others = works.filter((work) => work.sheetId === null || work.sheetId !== sheetId);
  const column = soilOf(order.soil)?.manureSoil ?? 'medium-heavy';
  const had = beside(others, { footprint, season, order })
    .filter((work) => (work.kind === 'manured' || work.kind === 'fed') && overlap(work.footprint, footprint))
    .map((work) => dressingOn(work, column));
  const brought = had.map(({ work, supply, on: day }) => ({
    footprint: work.footprint,
    on: day,
    nitrogenMgPerM2: supply?.nitrogen?.mgPerM2 ?? null,
  }));
  const limed = limeDays(footprint, others, today).manure;
  return {
    nitrogen: sheetNitrogen(order, footprint, on, brought, settings.manuringIntervalYears),
    supplies: suppliesOf(order, season, on, column),
    // Lime on the ground holds manure up; a sheet without manure minds none.
    limedUntil: order.manure && limed && limed.earliestOn > on ? limed : null,
  };
}

// Loads collected for this ground are what its sheet digs in: they are not counted beside it.
function beside(
  works: readonly WorkRecord[],
  { footprint, season, order }: Pick<Asked, 'footprint' | 'season' | 'order'>,
): WorkRecord[] {
  if (!order.manure) return loggedOnce(works);
  const sheet = { ...nothingDone, footprint, season };
  return loggedOnce([...works, sheet]).filter(({ id }) => id !== sheet.id);
}

const nothingDone: Omit<WorkRecord, 'footprint' | 'season'> = {
  id: 'this sheet',
  kind: 'manured',
  frameId: '',
  doneOn: null,
  materialKey: null,
  loads: null,
  massG: null,
  ageMonths: null,
  incorporated: true,
  method: null,
  depthCm: null,
  deliveryId: null,
  sheetId: null,
};

// By the square metre, as `supplyOf` gives it: so on ground of one.
function suppliesOf(
  { manure, meal, method }: SheetOrder,
  season: number,
  doneOn: CalendarDate,
  column: Parameters<typeof dressingOn>[1],
): { readonly key: string; readonly supply: Supply }[] {
  const incorporated = diggingMethodOf(method).loosenedSpits > 0;
  const put = [
    ...(manure ? [{ ...manure, key: manure.materialKey, massG: manure.bottomGPerM2 + manure.topGPerM2 }] : []),
    ...(meal ? [{ key: meal.key, massG: meal.gPerM2, ageMonths: null }] : []),
  ];
  const square = { xCm: 0, yCm: 0, widthCm: 100, lengthCm: 100 };
  return put.flatMap(({ key, massG, ageMonths }) => {
    const work = { id: key, footprint: square, season, doneOn, materialKey: key, massG, ageMonths, incorporated };
    const { supply } = dressingOn(work, column);
    return supply ? [{ key, supply }] : [];
  });
}
