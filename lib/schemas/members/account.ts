import { z } from 'zod';
import { writeId } from '../write';

const email = z
  .string()
  .trim()
  .toLowerCase()
  .pipe(z.email('Give your e-mail address, such as name@example.org.').max(254, 'That address is too long.'));
const password = z.string().min(1, 'Give your password.').max(200, 'That password is too long.');

/** A password somebody chooses: long is what counts. */
const newPassword = z
  .string()
  .min(10, 'Choose a password of at least 10 characters; three odd words do well.')
  .max(200, 'Keep the password to 200 characters.');

export const signInInput = z.strictObject({ writeId, email, password, to: z.string().max(200).default('') });
export const joinInput = z.strictObject({ writeId, token: z.string().max(100), email, newPassword });
export const forgotInput = z.strictObject({ writeId, email });
export const resetInput = z.strictObject({ writeId, token: z.string().max(100), newPassword });
export const changePasswordInput = z.strictObject({ writeId, password, newPassword });
