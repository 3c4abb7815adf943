import type { CourseCost, Level } from '@/lib/domain/course/cost';

/** What a holding asked of the planner, as it is kept. */
export type Wishes = {
  /** Crops or groups by key, with the area wanted in each season [cm²]; their order is the order of the course. */
  readonly options: readonly { readonly key: string; readonly areaCm2: number }[];
  readonly keepOrder: boolean;
  readonly evenTurns: boolean;
  readonly bedIds: readonly string[];
  readonly cells: readonly {
    readonly bedId: string;
    readonly season: number;
    readonly kind: 'must' | 'rather';
    readonly key: string;
  }[];
};

/** A wish that clashes, as it is kept: by bed and season, not by place. */
export type KeptWish =
  | { readonly kind: 'wanted'; readonly key: string; readonly areaCm2: number }
  /** The year counts from 0 for the first season. */
  | { readonly kind: 'must'; readonly bedId: string; readonly year: number; readonly key: string };

/** What the planner found, as it is kept. */
export type Found = {
  readonly board: Board;
  readonly cost: CourseCost;
  readonly gap: { readonly level: Level; readonly atLeast: number | null } | null;
  readonly conflict: readonly KeptWish[] | null;
  readonly conflictKnown: boolean;
  /** Null where nothing was solved: everything was moved one bed on. */
  readonly seconds: number | null;
};

/** By bed id, what stands there in each season from the first on. */
export type Board = Readonly<Record<string, readonly string[]>>;

/** How far the solver is, for the screen. */
export type Progress = { readonly at: Level | 'conflict'; readonly best: number | null; readonly bound: number | null };
