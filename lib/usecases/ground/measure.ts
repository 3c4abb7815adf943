import 'server-only';
import { type BedRecord, bedsStanding } from '@/lib/data/bed';
import type { Db } from '@/lib/data/db';
import type { PlotOnDay } from '@/lib/data/plot';
import type { Scope } from '@/lib/data/scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { bedsClash } from '@/lib/domain/ground/beds';
import type { Footprint } from '@/lib/domain/ground/footprint';
import { footprintOutside } from '@/lib/domain/ground/polygon';
import { parseLength, type TenthMm, type Units } from '@/lib/domain/quantity/length';
import { type Refusal, Refused, refuse } from '../refusal';

/** Narrower is no bed but a row; common practice. */
const leastBedCm = 10;

type Field = { readonly field: string; readonly what: string; readonly text: string };

/** Read several typed lengths, and refuse them together, each beside its field. */
export function readLengths<Keys extends string>(
  fields: Readonly<Record<Keys, Field>>,
  units: Units,
): Record<Keys, TenthMm> {
  const refusals: Refusal[] = [];
  const read = Object.entries<Field>(fields).map(([key, { field, what, text }]) => {
    const length = parseLength(text, units);
    if (!length.ok) refusals.push({ code: 'length-wrong', field, numbers: { what } });
    return [key, length.ok ? length.tenthMm : 0];
  });
  if (refusals.length) throw new Refused(refusals);
  return Object.fromEntries(read);
}

/** Refuse a footprint that lies over a bed or outside its plot, naming the edge. */
export function checkPlace(footprint: Footprint, plot: PlotOnDay, others: readonly BedRecord[]): void {
  if (footprint.widthCm < leastBedCm) refuse('bed-too-small', { field: 'width', numbers: { least: leastBedCm } });
  if (footprint.lengthCm < leastBedCm) refuse('bed-too-small', { field: 'length', numbers: { least: leastBedCm } });
  const outside = plot.polygon && footprintOutside(footprint, plot.polygon);
  if (outside) refuse('bed-outside-plot', { field: fieldOf[outside.edge], numbers: { ...outside } });
  const clash = bedsClash(footprint, others);
  if (clash) refuse('bed-overlaps', { field: fieldOf[clash.edge], numbers: { ...clash } });
}

const fieldOf = { left: 'x', right: 'width', top: 'y', bottom: 'length' } as const;

/** The beds that share a plot's ground from a day on: those of its frame, whichever plot they lie on. */
export async function bedsOnGround(db: Db, scope: Scope, frameId: string, from: CalendarDate): Promise<BedRecord[]> {
  return (await bedsStanding(db, scope, from, latest)).filter((bed) => bed.frameId === frameId);
}

const latest = '2199-12-31' as CalendarDate;
