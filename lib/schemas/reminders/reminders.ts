import { z } from 'zod';
import { ticked } from '../text';
import { form, writeId } from '../write';

export const makeFeedInput = form({ writeId });
export const revokeFeedInput = form({ writeId });
export const weeklyLetterInput = form({ writeId, wanted: ticked() });
/** A token as it stands in an address: 32 bytes in base64url, or in hexadecimal. */
export const tokenInput = z.string().regex(/^[\w-]{20,100}$/);
