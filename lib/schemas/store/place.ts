import { z } from 'zod';
import { placeKinds } from '@/lib/domain/store/lot';
import { line } from '../text';
import { form, rowId, writeId } from '../write';

const facts = {
  name: line('a name for the place', 60),
  kind: z.enum(placeKinds, 'Choose what kind of place it is.'),
  /** As typed; empty: nobody knows. */
  cold: z
    .string({ error: 'Give one temperature, such as 4.' })
    .trim()
    .max(12, 'That is too long for a temperature.')
    .default(''),
};

export const addPlaceInput = form({ writeId, holdingId: rowId, ...facts });
export const changePlaceInput = form({ writeId, placeId: rowId, ...facts });
export const retirePlaceInput = form({ writeId, placeId: rowId });
