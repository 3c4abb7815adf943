/** What beds can be told apart by: how they were treated, what was grown, or when. */
export const questions = ['digging', 'manure', 'years-since', 'sowing', 'variety', 'season'] as const;
export type Question = (typeof questions)[number];

/** Who has a result, as far as telling it goes. */
export type Held = {
  readonly holdingId: string;
  /** The reader holds it. */
  readonly isOwn: boolean;
};

/** What one planting gave in one season, and what is on record of how it was treated. */
export type BedResult = Held & {
  readonly plotId: string;
  readonly season: number;
  /** ≥ 0 [g/m²]. */
  readonly gPerM2: number;
  /** Its holders let it be compared; one that they don't is seen by themselves alone. */
  readonly isShared: boolean;
  /** For each question the group that it belongs to; null where that is not known, or not the same on all of its ground. */
  readonly groupOf: Readonly<Record<Question, string | null>>;
};
