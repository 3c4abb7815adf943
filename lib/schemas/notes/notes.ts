import { z } from 'zod';
import { questions } from '@/lib/domain/comparison/bed-result';
import { season } from '../ground/planting';
import { form, rowId, writeId } from '../write';

/** Whether one lets the results of a holding be compared. */
export const saySharingInput = form({
  writeId,
  holdingId: rowId,
  shares: z.enum(['yes', 'no'], 'Say whether they may be compared.').transform((said) => said === 'yes'),
});

/** What is to be compared, from an address: what can't be read of it is as good as not asked. */
export const resultsInput = z.object({
  crop: z.string().max(100).nullish().catch(null),
  season: season.nullish().catch(null),
  by: z.enum(questions).nullish().catch(null),
  variety: z.string().max(100).nullish().catch(null),
});
