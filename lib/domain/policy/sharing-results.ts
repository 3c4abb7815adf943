import { canSeePrivateRecords, type HoldingStanding } from './holding';
import type { Standing } from './standing';

/** Whether the viewer says if a holding's results may be compared: one of its holders, and nobody for them. */
export function canShareResults(viewer: Standing, holding: HoldingStanding | null): boolean {
  return canSeePrivateRecords(viewer, holding);
}
