import 'server-only';
import { type BedRecord, bedById } from '@/lib/data/bed';
import type { Db } from '@/lib/data/db';
import { type HoldingOnDay, holdingOfPlot } from '@/lib/data/holding';
import { type PlotOnDay, plotById } from '@/lib/data/plot';
import type { Scope } from '@/lib/data/scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { canKeepGround } from '@/lib/domain/policy/holding';
import { NotFound } from '../refusal';

type At = { readonly db: Db; readonly scope: Scope; readonly today: CalendarDate };

export type OpenPlot = { readonly plot: PlotOnDay; readonly holding: HoldingOnDay | null };
export type OpenBed = OpenPlot & { readonly bed: BedRecord };

/** A plot that the viewer keeps, or keeps for its holders; not found for anybody else. */
export async function openPlot({ db, scope, today }: At, plotId: string): Promise<OpenPlot> {
  const plot = await plotById(db, scope, plotId);
  const holding = plot && (await holdingOfPlot(db, scope, plot.id, today));
  if (!plot || !canKeepGround(scope, holding)) throw new NotFound();
  return { plot, holding };
}

/** A bed that the viewer keeps, or keeps for its holders; not found for anybody else. */
export async function openBed(at: At, bedId: string): Promise<OpenBed> {
  const bed = await bedById(at.db, at.scope, bedId);
  if (!bed) throw new NotFound();
  return { ...(await openPlot(at, bed.plotId)), bed };
}
