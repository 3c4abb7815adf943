import 'server-only';
import { z } from 'zod';
import { holdingOfPlot, holdingsOn } from '@/lib/data/holding';
import { membersOn } from '@/lib/data/member';
import { plotById, plotsOn } from '@/lib/data/plot';
import { sitesOf } from '@/lib/data/plot-store';
import { tenanciesOfPlot } from '@/lib/data/tenancy';
import { canReadCommitteePapers, canRunSociety } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { NotFound } from '../refusal';
import { planOf } from '../ground/plan-of';

/** The sites and their plots, and to whom each is let today. */
export const listPlots = query({
  name: 'list-plots',
  allow: canReadCommitteePapers,
  input: z.object({}),
  read: async ({ db, scope, today }) => {
    const [sites, plots, holdings] = await Promise.all([
      sitesOf(db, scope),
      plotsOn(db, scope, today),
      holdingsOn(db, scope, today),
    ]);
    const holderOf = new Map(
      holdings.flatMap((holding) =>
        holding.plots.map(({ id }) => [id, holding.members.map(({ name }) => name).join(' and ')] as const),
      ),
    );
    return {
      sites: sites.map(({ id, name }) => ({ id, name })),
      today,
      runs: canRunSociety(scope),
      plots: plots.map((plot) => ({ ...plot, holders: holderOf.get(plot.id) ?? null })),
    };
  },
});

/** One plot for the secretary: its drawing, its tenancies, and who could hold it. */
export const readPlotForOffice = query({
  name: 'read-plot-for-office',
  allow: canRunSociety,
  input: z.object({ plotId: z.uuid() }),
  read: async ({ db, scope, today }, { plotId }) => {
    const plot = await plotById(db, scope, plotId);
    if (!plot) throw new NotFound();
    const own = new Set([plot.id]);
    const [tenancies, holding, members, others] = await Promise.all([
      tenanciesOfPlot(db, scope, plotId),
      holdingOfPlot(db, scope, plotId, today),
      membersOn(db, scope, today),
      plotsOn(db, scope, today, { siteId: plot.siteId }),
    ]);
    const plan = await planOf(db, scope, {
      plots: [plot],
      season: Number(today.slice(0, 4)),
      sightOf: () => 'crop',
      mine: new Set(),
      let: holding ? own : new Set(),
      marks: new Map(),
    });
    return {
      plot,
      plan,
      tenancies,
      holding,
      today,
      units: scope.units,
      members: members.filter(({ isHere }) => isHere).map(({ id, name }) => ({ id, name })),
      others: others.filter(({ id }) => id !== plotId).map(({ id, number }) => ({ id, number })),
    };
  },
});
