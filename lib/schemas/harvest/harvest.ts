import { z } from 'zod';
import { harvestQualityKeys } from '@/lib/domain/catalogue/harvest-qualities';
import { day } from '../day';
import { season } from '../ground/planting';
import { optionalNote, ticked } from '../text';
import { form, optionalRowId, rowId, writeId } from '../write';

/** A harvest as it is typed; the use-case reads the amount, by what it was measured in and the member's own units. */
export const logHarvestInput = form({
  writeId,
  plantingId: rowId,
  /** The harvest that this one corrects. */
  replaces: optionalRowId,
  measure: z.enum(['grams', 'pieces'], 'Say whether it was weighed or counted.'),
  amount: z
    .string({ error: 'Give one amount, or 0 where it came to nothing.' })
    .trim()
    .min(1, 'Give how much it was, or 0 where it came to nothing.')
    .max(40, 'That is too long for an amount.'),
  onDay: day('the day of the harvest'),
  quality: z.enum(harvestQualityKeys, 'Choose how it was from the list.'),
  notes: optionalNote('the notes'),
  cleared: ticked(),
});

export const retireHarvestInput = form({ writeId, harvestId: rowId });

/** A planting to log from, and the harvest of it to correct, from an address. */
export const harvestFormInput = z.object({ planting: z.uuid(), replaces: z.uuid().nullish() });

export const harvestsInput = z.object({ season: season.nullish().catch(null) });
