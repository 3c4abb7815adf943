import { type CalendarDate, yearOf } from '@/lib/domain/calendar/calendar-date';
import { formatMonthDay } from '@/lib/domain/calendar/month-day';
import { type HangsOn, type Step, type WayKey, windowRowsOf } from '@/lib/domain/catalogue/windows';
import type { CropWay, DatedWindow, Frosts } from '@/lib/domain/dates/windows-of';

const steps: Readonly<Record<Step, string>> = {
  'under-cover': 'sow under cover',
  seedbed: 'sow in a seedbed',
  'in-place': 'sow where it is to stand',
  'plant-out': 'plant out',
  clear: 'clear',
};

/** What is done in a window. */
export function stepWords(step: Step): string {
  return steps[step];
}

const ways: Readonly<Record<WayKey, string | null>> = {
  usual: null,
  autumn: 'in autumn',
  spring: 'in spring',
  summer: 'in summer',
  winter: 'for winter',
  sets: 'from sets',
  seed: 'from seed',
  overwintered: 'to stand over the winter',
};

/** A way of growing, where a crop has several; null where it has one. */
export function wayWords(way: WayKey): string | null {
  return ways[way];
}

type StepOfWay = { readonly step: Step; readonly way: WayKey };

/** A step of a crop with its way: plant, from sets; plant out, from seed. */
export function stepOfWay(cropKey: string, at: StepOfWay): string {
  return [stepOfCrop(cropKey, at), ways[at.way]].filter(Boolean).join(', ');
}

/** A step of a crop: what comes as a set, a clove or a tuber is planted; what was raised from seed is planted out. */
export function stepOfCrop(cropKey: string, { step, way }: StepOfWay): string {
  const raised = windowRowsOf(cropKey).some((row) => row.way === way && ['under-cover', 'seedbed'].includes(row.step));
  return step === 'plant-out' && !raised ? 'plant' : steps[step];
}

/** From one day to another: 1 October to 30 November 2026. */
export function spanWords({ from, to }: { readonly from: CalendarDate; readonly to: CalendarDate }): string {
  const year = yearOf(from) === yearOf(to) ? '' : ` ${yearOf(from)}`;
  return `${dayAndMonth(from)}${year} to ${dayAndMonth(to)} ${yearOf(to)}`;
}

/** The same in short, for a narrow column: 1 Oct – 30 Nov 2026. */
function shortSpanWords({ from, to }: { readonly from: CalendarDate; readonly to: CalendarDate }): string {
  const short = (day: CalendarDate) => dayAndMonth(day).replace(/ ([A-Z][a-z]{2})[a-z]*$/, ' $1');
  const year = yearOf(from) === yearOf(to) ? '' : ` ${yearOf(from)}`;
  return `${short(from)}${year} – ${short(to)} ${yearOf(to)}`;
}

/** A day without its year: 30 November. */
export function dayAndMonth(day: CalendarDate): string {
  return day.endsWith('02-29') ? '29 February' : formatMonthDay(day.slice(5));
}

/** The windows of one step in words, way by way: when, and how where there are several ways. */
export function windowsWords(all: readonly CropWay[], wanted: readonly Step[]): { span: string; how: string }[] {
  return all.flatMap(({ way, windows }) =>
    windows
      .filter(({ step }) => wanted.includes(step))
      .map((window) => {
        const how = [window.step === 'seedbed' ? 'in a seedbed' : null, wayWords(way)];
        return { span: shortSpanWords(window), how: how.filter(Boolean).join(', ') };
      }),
  );
}

const hangs: Readonly<Record<HangsOn, string>> = {
  'last-frost': 'the last frost',
  'first-frost': 'the first frost',
  calendar: 'the length of the days, whatever the frost',
};

/** Why a window lies where it does: It hangs on the last frost, 10 days later here than where the months are printed for. */
export function reasonOfWindow({ hangsOn, movedDays }: DatedWindow): string {
  if (!movedDays) return `It hangs on ${hangs[hangsOn]}.`;
  const days = `${Math.abs(movedDays)} ${Math.abs(movedDays) === 1 ? 'day' : 'days'}`;
  return `It hangs on ${hangs[hangsOn]}, and lies ${days} ${movedDays > 0 ? 'later' : 'earlier'} here than in the catalogue.`;
}

/** The society's frosts in one line. */
export function frostsWords({ lastFrost, firstFrost }: Frosts, areOwn: boolean): string {
  const told = `Last frost usually ${formatMonthDay(lastFrost)}, first ${formatMonthDay(firstFrost)}`;
  return areOwn ? `${told}, as the society has set them.` : `${told}: assumed, until the society sets its own.`;
}
