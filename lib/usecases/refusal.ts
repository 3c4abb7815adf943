import type { DatesRefusal } from './refusals/dates';
import type { BallotsRefusal } from './refusals/ballots';
import type { BoardRefusal } from './refusals/board';
import type { DeliveriesRefusal } from './refusals/deliveries';
import type { GroundRefusal } from './refusals/ground';
import type { HarvestRefusal } from './refusals/harvest';
import type { HeapRefusal } from './refusals/heap';
import type { MeasuresRefusal } from './refusals/measures';
import type { MembersRefusal } from './refusals/members';
import type { MoneyRefusal } from './refusals/money';
import type { PathsRefusal } from './refusals/paths';
import type { PlotsRefusal } from './refusals/plots';
import type { RecipesRefusal } from './refusals/recipes';
import type { RemindersRefusal } from './refusals/reminders';
import type { ResidueRefusal } from './refusals/residue';
import type { SeedRefusal } from './refusals/seed';
import type { SheetsRefusal } from './refusals/sheets';
import type { SuppliersRefusal } from './refusals/suppliers';
import type { StandingRefusal } from './refusals/standing';
import type { StoreRefusal } from './refusals/store';
import type { TrialsRefusal } from './refusals/trials';

/** Why a foreseeable thing was not done. The words are chosen in app/_server/words. */
export type RefusalCode =
  | 'write-id-used'
  | MembersRefusal
  | PlotsRefusal
  | PathsRefusal
  | GroundRefusal
  | DatesRefusal
  | HarvestRefusal
  | DeliveriesRefusal
  | HeapRefusal
  | StandingRefusal
  | RecipesRefusal
  | SheetsRefusal
  | ResidueRefusal
  | MeasuresRefusal
  | MoneyRefusal
  | SuppliersRefusal
  | SeedRefusal
  | RemindersRefusal
  | StoreRefusal
  | BallotsRefusal
  | BoardRefusal
  | TrialsRefusal;

export type Refusal =
  | {
      readonly code: RefusalCode;
      readonly field?: string;
      readonly numbers?: Readonly<Record<string, string | number>>;
      /** Where in a table it stands. */
      readonly cell?: { readonly line: number; readonly column: string };
    }
  /** Input that its schema refused; the schema brings the words. */
  | { readonly code: 'input'; readonly field?: string; readonly words: string };

export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** Carries refusals out of a transaction, which they roll back. Caught by the operation wrapper only. */
export class Refused extends Error {
  constructor(readonly refusals: readonly Refusal[]) {
    super(refusals.map(({ code }) => code).join(', '));
  }
}

/** Not there, or not for this viewer: the two are the same to them. */
export class NotFound extends Error {}

/** End the operation with one refusal. */
export function refuse(
  code: RefusalCode,
  at: { field?: string; numbers?: Record<string, string | number> } = {},
): never {
  throw new Refused([{ code, ...at }]);
}
