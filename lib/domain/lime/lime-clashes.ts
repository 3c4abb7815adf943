import type { CalendarDate } from '../calendar/calendar-date';
import type { Season } from '../calendar/season-of';
import { areaCm2, type Footprint, overlap } from '../ground/footprint';
import { type LimeAndManure, limeAndManure } from './lime-and-manure';

/** Lime or manure put on some ground; the day is null where nobody wrote it down. */
export type Spread = {
  readonly id: string;
  readonly season: Season;
  readonly doneOn: CalendarDate | null;
  readonly footprint: Footprint;
};

export type LimeClash = {
  readonly limeId: string;
  readonly manureId: string;
  /** The ground that both touched [cm²]. */
  readonly areaCm2: number;
} & (
  | ({ readonly code: 'too-soon' } & Pick<LimeAndManure, 'order' | 'days' | 'daysWanted' | 'earliestOn' | 'source'>)
  /** Both for one season, and a day is not on record. */
  | { readonly code: 'not-known' }
);

/**
 * Where lime and manure came too close in time on the same ground, or where nobody can say.
 *
 * Method: every pair whose footprints overlap is held against the waits of `limeAndManure`; without both days a pair is
 * named only where it is of one season.
 *
 * @param limed, manured  of one frame, in any order
 * @returns               pairs in the order of the lime, then of the manure; those that kept apart are left out
 * @source                as `limeAndManure`
 * @example               manured 1 November, limed 20 January on half of it → too soon, earliest 1 February
 */
export function limeClashes(limed: readonly Spread[], manured: readonly Spread[]): LimeClash[] {
  return limed.flatMap((lime) => manured.flatMap((manure) => clashOf(lime, manure)));
}

function clashOf(lime: Spread, manure: Spread): LimeClash[] {
  const shared = overlap(lime.footprint, manure.footprint);
  if (!shared) return [];
  const pair = { limeId: lime.id, manureId: manure.id, areaCm2: areaCm2(shared) };
  if (!lime.doneOn || !manure.doneOn) return lime.season === manure.season ? [{ ...pair, code: 'not-known' }] : [];
  const { verdict, order, days, daysWanted, earliestOn, source } = limeAndManure({
    limedOn: lime.doneOn,
    manuredOn: manure.doneOn,
  });
  return verdict === 'ok' ? [] : [{ ...pair, code: 'too-soon', order, days, daysWanted, earliestOn, source }];
}
