import type { CalendarDate } from '../calendar/calendar-date';
import type { LotCondition } from '../catalogue/store-model';

/** Why something was taken out: for words, and for what the next lot is kept from. */
export const badWhys = ['mould', 'rot', 'sprouted', 'shrivelled', 'frosted', 'gnawed', 'other'] as const;
export type BadWhy = (typeof badWhys)[number];

/** What a lot may be kept in. */
export const placeKinds = ['shed', 'clamp', 'string', 'frame', 'room', 'cellar', 'other'] as const;
export type PlaceKind = (typeof placeKinds)[number];

/** One going over: what was used since the last, what was taken out bad, and what is sound and stays. */
export type GoingOver = {
  readonly on: CalendarDate;
  /** Whole grams or pieces, as the lot is measured. */
  readonly used: number;
  readonly bad: number;
  readonly badWhy: BadWhy | null;
  readonly sound: number;
};

/** A stored quantity of one crop. */
export type StoreLot = {
  readonly id: string;
  readonly keepingKey: string;
  /** Where it is kept: shed, clamp, string, frame; lots of one place stand beside each other. */
  readonly placeId: string;
  /** How cold or warm it is kept there [tenths of °C]; null where nobody knows. */
  readonly placeTenthC: number | null;
  readonly measure: 'grams' | 'pieces';
  /** What one piece of it weighs [g]; null: its kind's middling weight. */
  readonly pieceG: number | null;
  /** How much was put in, whole grams or pieces. */
  readonly putIn: number;
  readonly putInOn: CalendarDate;
  readonly condition: LotCondition;
  /** How often it is gone over [days]; null: as its kind. */
  readonly goingOverDays: number | null;
  /** In order of their days. */
  readonly goingsOver: readonly GoingOver[];
};
