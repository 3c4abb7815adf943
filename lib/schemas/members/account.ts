import { z } from 'zod';
import { form, writeId } from '../write';

const emailWords = 'Give your e-mail address, such as name@example.org.';
const email = z
  .string({ error: emailWords })
  .trim()
  .max(254, { error: 'That address is too long.', abort: true })
  .toLowerCase()
  .pipe(z.email(emailWords));
const password = z
  .string({ error: 'Give your password.' })
  .min(1, 'Give your password.')
  .max(200, 'That password is too long.');
const linkWords = 'This link is not whole. Open it once more from the mail, or copy all of it.';
const token = z.string({ error: linkWords }).max(100, linkWords);

const newPasswordWords = 'Choose a password of at least 10 characters; three odd words do well.';

/** A password somebody chooses: long is what counts. */
const newPassword = z
  .string({ error: newPasswordWords })
  .min(10, newPasswordWords)
  .max(200, 'Keep the password to 200 characters.');

const wayWords = 'The page to go to afterwards is not in the address. Open the sign-in page afresh.';

export const signInInput = form({
  writeId,
  email,
  password,
  to: z.string({ error: wayWords }).max(200, wayWords).default(''),
});
export const joinInput = form({ writeId, token, email, newPassword });
export const forgotInput = form({ writeId, email });
export const resetInput = form({ writeId, token, newPassword });
export const changePasswordInput = form({ writeId, password, newPassword });
