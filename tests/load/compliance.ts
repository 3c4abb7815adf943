import { byFrame } from '@/lib/domain/ground/by-frame';
import { footprint } from '@/lib/domain/ground/footprint';
import { addUp } from '@/lib/domain/rotation/compliance';
import { tallyFrame } from '@/lib/domain/rotation/frame-tally';
import { indexSeasons } from '@/lib/domain/rotation/season-index';
import { growing, type Measured, sideBySide } from './side-by-side';

/** Judging a season of ever larger sites, beside a plain sort. */
export function measureCompliance() {
  const title = 'Compliance of a season: plots of 8 beds with 12 seasons on record';
  const sizes = [25, 50, 100, 200];
  return growing(
    title,
    'a plain sort of as many plantings',
    'plots',
    sizes.map((plots) => complianceOf(plots, plots, 12)),
  );
}

/** Judging a season of 50 plots while their history grows, beside a plain sort: the cost of a planting. */
export function measureHistory() {
  const title = 'Compliance of a season: 50 plots of 8 beds as their history grows';
  const sizes = [6, 12, 24, 48];
  return growing(
    title,
    'a plain sort of as many plantings',
    'seasons',
    sizes.map((seasons) => complianceOf(seasons, 50, seasons)),
  );
}

function complianceOf(size: number, plots: number, seasons: number): Measured {
  const groups = ['allium-kin', 'brassica-kin', 'legume-kin', 'potato-kin'];
  const beds = Array.from({ length: plots * 8 }, (_, at) => ({
    id: `b${at}`,
    name: String(at),
    plotId: `p${Math.floor(at / 8)}`,
    frameId: `f${Math.floor(at / 8)}`,
    footprint: footprint(0, (at % 8) * 200, 600, 150),
  }));
  const rows = beds.flatMap((bed, at) =>
    Array.from({ length: seasons }, (_, back) => 2026 - back).map((season) => ({
      id: `${bed.id} ${season}`,
      frameId: bed.frameId,
      footprint: bed.footprint,
      cropKey: 'x',
      hostGroups: [groups[(at + season) % 4] ?? ''],
      cropGroup: 'alliums' as const,
      firstSeason: season,
      lastSeason: season,
    })),
  );
  const settings = {
    breakYears: Object.fromEntries(groups.map((group) => [group, 3])),
    edgeWidthCm: 30,
    edgeSharePercent: 5,
  };
  const plantings = indexSeasons(rows, { from: 2026 - seasons, to: 2026 });
  const frames = byFrame(beds);
  const common = { season: 2026, undivided: [], troubles: [], plantings, settings };
  return sideBySide(
    size,
    () => addUp([...frames].map(([frameId, there]) => tallyFrame({ ...common, frameId, beds: there }))),
    () => rows.toSorted((a, b) => (a.id < b.id ? -1 : 1)),
  );
}
