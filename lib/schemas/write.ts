import { z } from 'zod';

/** The id that every write carries, made once when its form was served or on the device. */
export const writeId = z.uuid('The form has lost its number. Open the page afresh and try again.');

const pick = 'Choose one from the list.';

/** A reference to a row, from an address or a hidden field. */
export const rowId = z.uuid(pick);

/** A reference that may be left empty; empty comes out as null. */
export const optionalRowId = z.union([z.literal('').transform(() => null), rowId], { error: pick }).default(null);

/** References from boxes that share a name: one comes as itself, several as a list. */
export function rowIds(words: string, most: number) {
  return z
    .union([z.string(), z.array(z.string()).max(most)], { error: words })
    .transform((ids) => [ids].flat())
    .refine((ids) => ids.every((id) => rowId.safeParse(id).success), words);
}

/** What a form holds, and nothing beside it. */
export function form<Shape extends z.ZodRawShape>(shape: Shape) {
  return z.strictObject(shape, 'The form holds something it was not served with. Open the page afresh and try again.');
}
