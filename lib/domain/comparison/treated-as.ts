import type { Season } from '../calendar/season-of';
import type { Footprint } from '../ground/footprint';
import type { WorkKind } from '../ground/work-kinds';
import { groundShare } from './ground-share';

/** Work on ground, as it was logged or as a ground sheet logged it. */
export type LoggedWork = {
  readonly kind: WorkKind;
  readonly footprint: Footprint;
  /** The season that the ground was worked for. */
  readonly season: Season;
  readonly method: string | null;
};

/**
 * Whether ground was double dug for a season, as far as the record goes.
 *
 * @param works  of the same frame; those for other seasons change nothing
 * @returns      'not-double' where all of it was dug another way; null where nothing says so, or a part was
 * @source       what is not recorded is not known: common practice
 * @example      a sheet of single digging over the whole bed → 'not-double'; nothing on record → null
 */
export function diggingOf(
  ground: Footprint,
  season: Season,
  works: readonly LoggedWork[],
): 'double' | 'not-double' | null {
  const dug = works.filter((work) => work.kind === 'dug' && work.season === season);
  const over = (isDouble: boolean) =>
    groundShare(ground, footprints(dug.filter(({ method }) => (method === 'double-digging') === isDouble)));
  const double = over(true);
  if (double === 'all') return 'double';
  return double === 'none' && over(false) === 'all' ? 'not-double' : null;
}

/**
 * Whether ground was manured for a season, as far as the record goes.
 *
 * @param works  of the same frame; those for other seasons change nothing
 * @returns      'none' only where other work for that season is on record on all of it, and no manure among it; null where nothing says so
 * @source       what is not recorded is not known: common practice
 * @example      dug and manured → 'manured'; dug alone → 'none'; nothing on record → null
 */
export function manuringOf(ground: Footprint, season: Season, works: readonly LoggedWork[]): 'manured' | 'none' | null {
  const done = works.filter((work) => work.season === season);
  const manured = groundShare(ground, footprints(done.filter(({ kind }) => kind === 'manured')));
  if (manured === 'all') return 'manured';
  const other = groundShare(ground, footprints(done.filter(({ kind }) => kind !== 'manured')));
  return manured === 'none' && other === 'all' ? 'none' : null;
}

function footprints(works: readonly LoggedWork[]): Footprint[] {
  return works.map(({ footprint }) => footprint);
}
