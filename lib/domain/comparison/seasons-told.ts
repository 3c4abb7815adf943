import type { BedResult } from './bed-result';
import { leastHolders, neighboursIn } from './shown-cells';

/**
 * The seasons of which anything may be told, latest first. No figure is ever told of several seasons together, so that a season of too few can
 * simply be left out: there is no total to find it from.
 *
 * @param beds  of one crop, shared
 * @example     2026 of five neighbours, 2025 of two → [2026]
 */
export function seasonsTold(beds: readonly BedResult[]): number[] {
  const seasons = [...new Set(beds.map(({ season }) => season))].sort((a, b) => b - a);
  return seasons.filter((season) => neighboursIn(beds.filter((bed) => bed.season === season)) >= leastHolders);
}
