import { percent } from '@/lib/domain/quantity/area';
import type { LoadBand } from '@/lib/domain/review/load-bands';
import type { ComplianceAreas } from '@/lib/domain/rotation/frame-tally';

/** All ground that could be grown on [cm²]. */
export function cultivable({ keptCm2, shortCm2, notKnownCm2, outsideCm2, bareCm2 }: ComplianceAreas): number {
  return keptCm2 + shortCm2 + notKnownCm2 + outsideCm2 + bareCm2;
}

/** How the rotation held in a season, in a sentence. */
export function heldWords(season: number, areas: ComplianceAreas): string {
  const whole = cultivable(areas);
  if (whole === 0) return `No ground is on record for ${season}.`;
  const of = (part: number) => percent(part, whole);
  return `In ${season} the rotation was kept on ${of(areas.keptCm2)} of the ground and fell short on ${of(areas.shortCm2)}; of ${of(areas.notKnownCm2)} the records don't reach back far enough to say.`;
}

/** A band of loads. */
export function bandWords({ fromLoads, toLoads }: LoadBand): string {
  if (toLoads === 0) return 'none';
  if (toLoads === null) return fromLoads === 0 ? 'any' : `${fromLoads} or more`;
  return fromLoads === toLoads ? String(fromLoads) : `${fromLoads === 0 ? 'none' : fromLoads} to ${toLoads}`;
}

/** How loads spread, in a sentence. */
export function spreadWords(bands: readonly LoadBand[]): string {
  const all = bands.reduce((sum, { holdings }) => sum + holdings, 0);
  const each = bands.filter(({ holdings }) => holdings > 0).map((band) => `${band.holdings} had ${bandWords(band)}`);
  return `Of ${all} ${all === 1 ? 'holding' : 'holdings'} ${each.join(', ')}.`;
}
