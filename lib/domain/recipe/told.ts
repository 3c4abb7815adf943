import { allows, type Setting } from '../catalogue/setting-row';
import type { SourceKey } from '../catalogue/sources';

/** Who set a value: the member, their society, or nobody, so that the catalogue's stands. */
export type SetBy = 'yours' | 'society' | 'catalogue';

/** A value in force, who set it, and where the catalogue's value comes from, which is its source where nobody set another. */
export type Told<Value> = { readonly value: Value; readonly setBy: SetBy; readonly source: SourceKey };

/** What somebody set for themselves, by key, as it was kept: null where it was put back. */
export type Kept = Readonly<Record<string, unknown>>;

/** What the member at hand has set, and what their society has. */
export type KeptBy = { readonly member: Kept; readonly society: Kept };

/**
 * The value in force of one row: the member's over the society's over the catalogue's.
 *
 * @param member, society  as kept; what the row does not allow, or allows no longer, is passed over
 * @returns  a value that the row allows
 * @source   the row's own
 * @example  a row of 60 within 30 to 100, 999 of the member's, 70 of the society's → 70, the society's
 */
export function toldOf(row: Setting, member: unknown, society: unknown): Told<string | number> {
  const { source } = row;
  if (allows(row, member)) return { value: member as string | number, setBy: 'yours', source };
  if (allows(row, society)) return { value: society as string | number, setBy: 'society', source };
  return { value: row.value, setBy: 'catalogue', source };
}
