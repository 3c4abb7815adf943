import { type CalendarDate, daysBetween } from '../calendar/calendar-date';
import { areaCm2, type Footprint, overlap } from '../ground/footprint';
import { type DatedPlanting, isToCome, lastGroundDay, waysOf } from './dated-planting';
import { type GroundSpan, groundSpan } from './ground-span';
import type { Frosts } from './windows-of';

/** What stands in the way of a planting that is still to come: a code and its numbers. */
export type DateConflict =
  /** By its windows the crop before is cleared too late, or, where it is certain, cannot even be cleared in time. */
  | {
      readonly code: 'stands-too-long';
      readonly plantingId: string;
      readonly beforeId: string;
      readonly clearFrom: CalendarDate;
      readonly clearBy: CalendarDate;
      readonly wantedFrom: CalendarDate;
      readonly wantedBy: CalendarDate;
      readonly daysLate: number;
      readonly isCertain: boolean;
      readonly areaCm2: number;
    }
  /** The crop before stands until somebody clears it. */
  | {
      readonly code: 'stands-on';
      readonly plantingId: string;
      readonly beforeId: string;
      readonly wantedFrom: CalendarDate;
      readonly wantedBy: CalendarDate;
      readonly areaCm2: number;
    }
  /** The last day for it is past. */
  | {
      readonly code: 'too-late';
      readonly plantingId: string;
      readonly closedOn: CalendarDate;
      readonly daysAgo: number;
    }
  /** The frosts leave it too little time, whichever way it is grown. */
  | { readonly code: 'season-too-short'; readonly plantingId: string; readonly shortDays: number };

/** What is worked out from: frosts, the day, and how small an overlap is a mere edge, as the rotation has it. */
export type DateRules = {
  readonly frosts: Frosts;
  readonly today: CalendarDate;
  readonly edgeWidthCm: number;
  readonly edgeSharePercent: number;
};

/**
 * What stands in the way of the plantings that are still to come on one frame of ground.
 *
 * Method: each of them is held against every other planting that takes its ground before it does. Ground that they share by a mere edge is let
 * be. A crop before that is not cleared by the last day on which the next can go in is in the way; where even its earliest clearing comes
 * too late, that is certain.
 *
 * @param plantings  of one frame, recorded and planned, in any order; bare ground and crops that the catalogue does not know are passed over
 * @returns          by planting in the order given; for each by the crop before it
 * @throws RangeError as `windowsOf`
 * @source           the catalogue's windows
 * @example          kale of 2026, which stands to 30 April 2027, where onion sets go in by 15 April → 15 days late, but it can be cleared earlier
 */
export function conflictsOn(plantings: readonly DatedPlanting[], rules: DateRules): DateConflict[] {
  const { frosts, today } = rules;
  const spans = plantings.flatMap((planting) => {
    const span = groundSpan(planting, frosts, today);
    return span ? [{ planting, span }] : [];
  });
  return spans
    .filter(({ planting }) => isToCome(planting))
    .flatMap((next) => [
      ...lateOrShort(next.planting, rules),
      ...spans.filter((one) => isBefore(one, next)).flatMap((before) => inTheWay(before, next, rules)),
    ]);
}

type Spanned = { readonly planting: DatedPlanting; readonly span: GroundSpan };

// Of two that may go in from the same day on, one is before the other, and never both.
function isBefore(one: Spanned, next: Spanned): boolean {
  const [a, b] = [one, next].map(({ planting, span }) => `${span.from} ${planting.season} ${planting.id}`);
  return (a ?? '') < (b ?? '');
}

function inTheWay(before: Spanned, next: Spanned, rules: DateRules): DateConflict[] {
  const shared = overlap(before.planting.footprint, next.planting.footprint);
  if (!shared || isEdge(shared, next.planting.footprint, rules)) return [];
  const { from: wantedFrom, to: wantedBy } = next.span;
  const ids = { plantingId: next.planting.id, beforeId: before.planting.id, wantedFrom, wantedBy };
  const { clearFrom, clearBy } = before.span;
  if (!clearFrom || !clearBy) return [{ code: 'stands-on', ...ids, areaCm2: areaCm2(shared) }];
  if (clearBy <= wantedBy) return [];
  const daysLate = daysBetween(wantedBy, clearBy);
  return [
    {
      code: 'stands-too-long',
      ...ids,
      clearFrom,
      clearBy,
      daysLate,
      isCertain: clearFrom > wantedBy,
      areaCm2: areaCm2(shared),
    },
  ];
}

/** Whether the ground that two plantings share is a mere edge of one of them. */
export function isEdge(shared: Footprint, of: Footprint, rules: DateRules): boolean {
  const { edgeWidthCm, edgeSharePercent } = rules;
  if (areaCm2(shared) * 100 < edgeSharePercent * areaCm2(of)) return true;
  return shared.widthCm < Math.min(edgeWidthCm, of.widthCm) || shared.lengthCm < Math.min(edgeWidthCm, of.lengthCm);
}

function lateOrShort(planting: DatedPlanting, { frosts, today }: DateRules): DateConflict[] {
  const ways = waysOf(planting, frosts, today);
  const [closedOn] = ways.map(lastGroundDay).sort().reverse();
  const plantingId = planting.id;
  if (closedOn && closedOn < today)
    return [{ code: 'too-late', plantingId, closedOn, daysAgo: daysBetween(closedOn, today) }];
  const shortDays = Math.min(...ways.map((way) => way.shortDays));
  return shortDays > 0 && Number.isFinite(shortDays) ? [{ code: 'season-too-short', plantingId, shortDays }] : [];
}
