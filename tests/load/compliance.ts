import { footprint } from '@/lib/domain/ground/footprint';
import { complianceOfSeason } from '@/lib/domain/rotation/compliance';
import type { RecordedPlanting } from '@/lib/domain/rotation/recorded-planting';
import { growing, type Measured, sideBySide } from './side-by-side';

/** Judging a season of ever larger sites, beside a plain sort. */
export function measureCompliance() {
  const title = 'Compliance of a season: plots of 8 beds with 12 seasons on record';
  return growing(title, 'a plain sort of as many plantings', 'plots', [25, 50, 100, 200].map(complianceOf));
}

function complianceOf(plots: number): Measured {
  const groups = ['allium-kin', 'brassica-kin', 'legume-kin', 'potato-kin'];
  const beds = Array.from({ length: plots * 8 }, (_, at) => ({
    id: `b${at}`,
    frameId: `f${Math.floor(at / 8)}`,
    footprint: footprint(0, (at % 8) * 200, 600, 150),
  }));
  const plantings = new Map<string, RecordedPlanting[]>();
  for (const [at, bed] of beds.entries())
    for (let season = 2015; season < 2027; season++) {
      const row: RecordedPlanting = {
        id: `${bed.id} ${season}`,
        footprint: bed.footprint,
        cropKey: 'x',
        hostGroups: [groups[(at + season) % 4] ?? ''],
        cropGroup: 'alliums',
        firstSeason: season,
        lastSeason: season,
      };
      plantings.set(bed.frameId, [...(plantings.get(bed.frameId) ?? []), row]);
    }
  const settings = {
    breakYears: Object.fromEntries(groups.map((group) => [group, 3])),
    edgeWidthCm: 30,
    edgeSharePercent: 5,
  };
  const rows = [...plantings.values()].flat();
  return sideBySide(
    plots,
    () => complianceOfSeason({ season: 2026, beds, undividedAreaCm2: 0, plantings, settings }),
    () => rows.toSorted((a, b) => (a.id < b.id ? -1 : 1)),
  );
}
