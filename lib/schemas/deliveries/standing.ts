import { z } from 'zod';
import { standingFor } from '@/lib/domain/delivery/standing';
import { optionalWhole } from '../text';
import { form, rowId, writeId } from '../write';

const when = z
  .enum(['autumn', 'always'], 'Choose deliveries in autumn, or every delivery.')
  .transform((chosen) => chosen === 'autumn');

const facts = { when, mostLoads: optionalWhole('your own limit in loads', 1, 999) };

export const startStandingInput = form({
  writeId,
  holdingId: rowId,
  serves: z.enum(standingFor, 'Choose manure or straw.'),
  ...facts,
});
export const changeStandingInput = form({ writeId, standingId: rowId, ...facts });
export const endStandingInput = form({ writeId, standingId: rowId });
