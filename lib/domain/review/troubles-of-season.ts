import { areaCm2, type Footprint, subtract } from '../ground/footprint';

/** A trouble found on the ground of a frame. */
export type FoundTrouble = {
  readonly troubleKey: string;
  readonly frameId: string;
  readonly footprint: Footprint;
  readonly foundSeason: number;
  /** Clear years wanted without a host; null where no break clears it. */
  readonly breakYears: number | null;
};

export type TroubleOfSeason = {
  readonly troubleKey: string;
  /** Records of it in this season. */
  readonly found: number;
  /** Ground that waits for it to be gone, in this season; what two records name counts once [cm²]. */
  readonly waitingCm2: number;
  /** Null where no break clears it. */
  readonly breakYears: number | null;
};

/**
 * The troubles of a season by kind: found in it, and how much ground still waits out the break of one that was found before.
 *
 * @param troubles  as recorded; those found in later seasons are left out
 * @param season    a year
 * @returns         kinds that were found or still wait, the most ground first
 * @source          ground waits from the season in which it was found through the clear years that the society wants
 * @example         white rot on 4 m² in 2024, 8 clear years: in 2026 found 0, waiting 40,000 cm²; in 2033 gone from the list
 */
export function troublesOfSeason(troubles: readonly FoundTrouble[], season: number): TroubleOfSeason[] {
  const known = troubles.filter(
    ({ foundSeason, breakYears }) =>
      foundSeason <= season && (breakYears === null || season <= foundSeason + breakYears),
  );
  return [...new Set(known.map(({ troubleKey }) => troubleKey))]
    .map((troubleKey) => {
      const own = known.filter((one) => one.troubleKey === troubleKey);
      return {
        troubleKey,
        found: own.filter(({ foundSeason }) => foundSeason === season).length,
        waitingCm2: coveredCm2(own),
        breakYears: own[0]?.breakYears ?? null,
      };
    })
    .sort((one, other) => other.waitingCm2 - one.waitingCm2 || (one.troubleKey < other.troubleKey ? -1 : 1));
}

// Each record counts for what no earlier one on its frame has covered.
function coveredCm2(troubles: readonly FoundTrouble[]): number {
  return troubles.reduce((sum, { frameId, footprint }, at) => {
    const before = troubles.slice(0, at).flatMap((one) => (one.frameId === frameId ? [one.footprint] : []));
    return sum + subtract(footprint, before).reduce((rest, part) => rest + areaCm2(part), 0);
  }, 0);
}
