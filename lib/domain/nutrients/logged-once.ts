import type { Season } from '../calendar/season-of';
import { areaCm2, type Footprint, subtract } from '../ground/footprint';
import type { WorkKind } from '../ground/work-kinds';
import { runningShares } from '../quantity/running-shares';

type Logged = {
  readonly id: string;
  readonly kind: WorkKind;
  readonly season: Season;
  readonly footprint: Footprint;
  readonly massG: number | null;
  /** Taken from loads that were collected for this ground, and not from the work itself. */
  readonly deliveryId: string | null;
};

/**
 * Works without the manure that would count twice: loads collected for ground on which that season's manuring was then
 * logged as it was done.
 *
 * Method: what was taken from a delivery gives way, on the ground they share, to any other manuring of the same season; its
 * weight goes on the rest of its ground in proportion.
 *
 * @param works  of one frame
 * @returns      the same works; one from a delivery comes in as many pieces as are left of it, weights in whole grams
 * @source       what was really done stands before what was presumed
 * @example      60 kg collected for a bed, 30 kg then dug into half of it → 30 kg on each half
 */
export function loggedOnce<Work extends Logged>(works: readonly Work[]): Work[] {
  return works.flatMap((work) => {
    if (work.deliveryId === null) return [work];
    const done = works
      .filter(({ kind, deliveryId, season }) => kind === 'manured' && deliveryId === null && season === work.season)
      .map(({ footprint }) => footprint);
    const left = subtract(work.footprint, done);
    const whole = areaCm2(work.footprint);
    const masses = runningShares(left.map(areaCm2), (area) => ((work.massG ?? 0) * area) / whole);
    return left.map((footprint, at) => ({
      ...work,
      id: at === 0 ? work.id : `${work.id} ${at + 1}`,
      footprint,
      massG: work.massG === null ? null : (masses[at] ?? 0),
    }));
  });
}
