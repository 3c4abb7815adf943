import 'server-only';
import { dropPointsOf } from '@/lib/data/drop-point';
import { type PlotOnDay, plotsOn } from '@/lib/data/plot';
import { pathsOf } from '@/lib/data/site-path';
import type { PlanPlot } from '../ground/plan-of';
import type { ReadContext } from '../operation';

/** A site as it lies today: its plots, without what stands on them, its paths and its drop points. */
export async function drawnSite({ db, scope, today }: ReadContext, siteId: string, mine: ReadonlySet<string>) {
  const [plots, paths, dropPoints] = await Promise.all([
    plotsOn(db, scope, today, { siteId }),
    pathsOf(db, scope, siteId),
    dropPointsOf(db, scope, siteId),
  ]);
  return { plots, plan: plots.map((plot) => bare(plot, mine)), paths, dropPoints };
}

function bare({ id, number, frame, polygon, quarterRods }: PlotOnDay, mine: ReadonlySet<string>): PlanPlot {
  return { id, number, frame, polygon, quarterRods, beds: [], toLet: false, mine: mine.has(id) };
}
