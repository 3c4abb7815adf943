import 'server-only';
import { z } from 'zod';
import { nextBedAt } from '@/lib/domain/ground/beds';
import { canEnter } from '@/lib/domain/policy/standing';
import { formatLength } from '@/lib/domain/quantity/length';
import { query } from '../operation';
import { NotFound } from '../refusal';
import { openPlot } from './open-bed';
import { planOf } from './plan-of';

/** One plot as it is drawn, and where the next bed would go. */
export const readPlot = query({
  name: 'read-plot',
  allow: canEnter,
  input: z.object({ plotId: z.uuid() }),
  read: async ({ db, scope, today }, { plotId }) => {
    const { plot } = await openPlot({ db, scope, today }, plotId);
    const season = Number(today.slice(0, 4));
    const own = new Set([plot.id]);
    const [drawn] = await planOf(db, scope, {
      plots: [plot],
      season,
      sightOf: () => 'all',
      mine: own,
      let: own,
      marks: new Map(),
    });
    if (!drawn) throw new NotFound();
    const next = nextBedAt(drawn.beds.map(({ footprint }) => footprint));
    return {
      plot: drawn,
      season,
      units: scope.units,
      next: { x: formatLength(next.xCm, scope.units), y: formatLength(next.yCm, scope.units) },
    };
  },
});
