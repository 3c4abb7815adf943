import 'server-only';
import { bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import type { Db } from '@/lib/data/db';
import { plantingsIn } from '@/lib/data/planting';
import type { PlotOnDay } from '@/lib/data/plot';
import type { Scope } from '@/lib/data/scope';
import { makeDate } from '@/lib/domain/calendar/calendar-date';
import type { CropGroup } from '@/lib/domain/catalogue/crop-groups';
import { byFrame } from '@/lib/domain/ground/by-frame';
import { type Footprint, overlap } from '@/lib/domain/ground/footprint';
import type { Frame } from '@/lib/domain/ground/frame';
import type { Polygon } from '@/lib/domain/ground/polygon';
import type { Sight } from '@/lib/domain/policy/sight';
import { bareKey } from '@/lib/domain/rotation/recorded-planting';

type PlanPlanting = {
  readonly id: string;
  readonly footprint: Footprint;
  readonly cropName: string;
  readonly cropGroup: CropGroup | null;
};
export type PlanBed = {
  readonly id: string;
  readonly name: string;
  readonly footprint: Footprint;
  readonly plantings: readonly PlanPlanting[];
  readonly href: string | null;
  readonly mark: 'turn due' | 'short' | null;
};
export type PlanPlot = {
  readonly id: string;
  readonly number: string;
  readonly frame: Frame | null;
  readonly polygon: Polygon | null;
  readonly quarterRods: number | null;
  readonly beds: readonly PlanBed[];
  readonly toLet: boolean;
  readonly mine: boolean;
};

/**
 * The drawing's data: plots with their beds, and on each bed what stood there in a season, by ground and not by label.
 * Three queries whatever the number of plots.
 */
export async function planOf(
  db: Db,
  scope: Scope,
  given: {
    plots: readonly PlotOnDay[];
    season: number;
    sightOf: (plotId: string) => Sight;
    mine: ReadonlySet<string>;
    let: ReadonlySet<string>;
    marks: ReadonlyMap<string, PlanBed['mark']>;
  },
): Promise<PlanPlot[]> {
  const { plots, season, sightOf, mine, marks } = given;
  const [from, to] = [makeDate(season, 1, 1), makeDate(season, 12, 31)];
  const [beds, crops] = await Promise.all([
    bedsStanding(
      db,
      scope,
      from,
      to,
      plots.map(({ id }) => id),
    ),
    cropsOf(db, scope),
  ]);
  const frameIds = [...new Set(beds.map(({ frameId }) => frameId))];
  const standing = (await plantingsIn(db, scope, crops, { from: season, to: season }, frameIds)).filter(
    ({ cropKey }) => cropKey !== bareKey,
  );
  const standingIn = byFrame(standing);
  return plots.map((plot) => {
    const sight = sightOf(plot.id);
    return {
      id: plot.id,
      number: plot.number,
      frame: plot.frame,
      polygon: plot.polygon,
      quarterRods: plot.quarterRods,
      toLet: !given.let.has(plot.id),
      mine: mine.has(plot.id),
      beds: latestOnly(beds.filter(({ plotId }) => plotId === plot.id)).map((bed) => ({
        id: bed.id,
        name: bed.name,
        footprint: bed.footprint,
        href: sight === 'all' ? `/${scope.slug}/ground/beds/${bed.id}` : null,
        mark: sight === 'nothing' ? null : (marks.get(bed.id) ?? null),
        plantings:
          sight === 'nothing'
            ? []
            : (standingIn.get(bed.frameId) ?? []).flatMap((one) => {
                const shared = overlap(one.footprint, bed.footprint);
                const cropName = sight === 'group' ? '' : one.cropName;
                return shared ? [{ id: one.id, footprint: shared, cropName, cropGroup: one.cropGroup }] : [];
              }),
      })),
    };
  });
}

// Where a bed was measured anew within the season, its latest shape is drawn.
function latestOnly<Bed extends { footprint: Footprint; retiredOn: string | null }>(beds: readonly Bed[]): Bed[] {
  return beds.filter(
    (bed) =>
      bed.retiredOn === null ||
      !beds.some(
        (other) =>
          other !== bed && (other.retiredOn ?? '9') > (bed.retiredOn ?? '') && overlap(other.footprint, bed.footprint),
      ),
  );
}
