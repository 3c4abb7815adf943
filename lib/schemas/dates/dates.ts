import { z } from 'zod';
import { isCropGroup } from '@/lib/domain/catalogue/crop-groups';
import { day } from '../day';
import { form, rowId, writeId } from '../write';

/** What was done to a planting, on a day. */
export const recordDayInput = form({
  writeId,
  plantingId: rowId,
  what: z.enum(['sown', 'planted', 'cleared'], { error: 'Say whether it was sown, planted or cleared.' }),
  onDay: day('the day on which it was done'),
});

/** Whose dates are asked for. */
export const datesInput = z.object({ holdingId: z.uuid().nullish().catch(null) });

/** Which crops' windows are asked for; an unknown group asks for none in particular. */
export const cropDatesInput = z.object({
  group: z
    .string()
    .optional()
    .transform((text) => (text !== undefined && isCropGroup(text) ? text : null)),
});

/**
 * A soil's warmth as it is typed: in °C, or in °F with an F behind it.
 *
 * @returns °C from −20 to 60; null where nothing is typed; undefined where it is no such warmth
 */
export function soilTyped(text: string | undefined): number | null | undefined {
  const typed = (text ?? '').trim().replace('−', '-').replace(',', '.');
  if (typed === '') return null;
  const [, figure, unit = 'c'] = /^(-?\d{1,3}(?:\.\d{1,2})?)\s*°?\s*([cf])?$/i.exec(typed) ?? [];
  if (figure === undefined) return undefined;
  const celsius = unit.toLowerCase() === 'f' ? ((Number(figure) - 32) * 5) / 9 : Number(figure);
  return celsius >= -20 && celsius <= 60 ? celsius : undefined;
}
