import type { UseSaid } from '@/lib/data/household-use';
import type { LotRecord } from '@/lib/data/store-lot';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { nextMonthDay } from '@/lib/domain/calendar/next-month-day';
import { keepingOf } from '@/lib/domain/catalogue/keepings';
import { enoughTill } from '@/lib/domain/store/enough-till';
import { firstToUse } from '@/lib/domain/store/first-to-use';
import { forecastDays } from '@/lib/domain/store/forecast-days';
import { lotNow } from '@/lib/domain/store/go-over';
import { type DayRange, lastsOf } from '@/lib/domain/store/lasts';
import { ofOneWinter } from '@/lib/domain/store/of-one-winter';
import { shownLot } from './shown-lot';

/** From the least to the most it falls in eight cases of ten; null: beyond the three years that are looked at. */
export type DateRange = {
  readonly least: CalendarDate | null;
  readonly median: CalendarDate | null;
  readonly most: CalendarDate | null;
};

/** How long one kind lasts one household; null where nothing was put in this winter. */
export type Forecast = NonNullable<ReturnType<typeof forecastOf>>;

type Given = {
  readonly holdingId: string;
  readonly keepingKey: string;
  /** All of the household's, of any kind. */
  readonly lots: readonly LotRecord[];
  readonly said: UseSaid | undefined;
  readonly today: CalendarDate;
};

export function forecastOf({ holdingId, keepingKey, lots, said, today }: Given) {
  const own = lots.filter((lot) => lot.holdingId === holdingId && lot.keepingKey === keepingKey);
  const winter = ofOneWinter(own, today);
  if (winter.length === 0) return null;
  const useFirst = firstToUse(winter, today);
  const usedUp = winter.filter((lot) => lotNow(lot).sound === 0);
  const held = useFirst.flatMap(({ lotId }) => winter.filter(({ id }) => id === lotId));
  const saidPiecesPerWeek = said?.tenthsPerWeek ? said.tenthsPerWeek / 10 : null;
  // Used up ones tell of the use; those that are left are used in this order.
  const lasts = lastsOf({ lots: [...held, ...usedUp], saidPiecesPerWeek, today });
  const newCropOn = said?.newCropFrom ? nextMonthDay(today, said.newCropFrom) : null;
  return {
    ...{ holdingId, keepingKey, newCropOn, winter, lasts },
    name: keepingOf(keepingKey)?.name ?? keepingKey,
    said: said ?? null,
    piecesPerWeek: lasts.use && lasts.use.meanPiecesPerDay * 7,
    isSeen: winter.some(({ goingsOver }) => goingsOver.length > 0),
    runsOut: lasts.runsOut && datesOf(today, lasts.runsOut),
    enough: newCropOn && enoughTill(lasts, today, newCropOn),
    likelyLeft: forecastDays.map((day, at) => ({
      on: addDays(today, day),
      permille: Math.round((lasts.likelyLeft[at] ?? 0) * 1000),
    })),
    lots: useFirst.flatMap(({ lotId, reasons, useBy }) =>
      held.filter(({ id }) => id === lotId).map((lot) => ({ ...shownLot(lot), reasons, useBy: datesOf(today, useBy) })),
    ),
  };
}

function datesOf(today: CalendarDate, { leastDays, medianDays, mostDays }: DayRange): DateRange {
  const on = (days: number | null) => (days === null ? null : addDays(today, days));
  return { least: on(leastDays), median: on(medianDays), most: on(mostDays) };
}
