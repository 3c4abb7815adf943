import { z } from 'zod';

// Control characters never belong in a line; newlines and tabs may stand in notes.
const lineBreakers = /[\u0000-\u001f\u007f\u2028\u2029]/;
const controls = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/;

/** One line of text, trimmed; `what` names it in the complaint: "Give the plot's number." */
export function line(what: string, max = 80) {
  return z
    .string({ error: `Give ${what}.` })
    .trim()
    .min(1, `Give ${what}.`)
    .max(max, `Keep ${what} to ${max} characters.`)
    .refine((text) => !lineBreakers.test(text), `Keep ${what} to one line of plain text.`);
}

/** One line that may be left empty; empty comes out as null. */
export function optionalLine(what: string, max = 80) {
  return z
    .string()
    .trim()
    .max(max, `Keep ${what} to ${max} characters.`)
    .refine((text) => !lineBreakers.test(text), `Keep ${what} to one line of plain text.`)
    .default('')
    .transform((text) => text || null);
}

/** A note of several lines that may be left empty; empty comes out as null. */
export function optionalNote(what: string, max = 2000) {
  return z
    .string()
    .trim()
    .max(max, `Keep ${what} to ${max} characters.`)
    .refine((text) => !controls.test(text), `Keep ${what} to plain text.`)
    .default('')
    .transform((text) => text.replaceAll('\r\n', '\n') || null);
}

/** A whole number typed into a field. */
export function wholeNumber(what: string, min: number, max: number) {
  const words = `Give ${what} as a whole number from ${min} to ${max.toLocaleString('en-GB')}.`;
  return z
    .string({ error: words })
    .trim()
    .regex(/^\d{1,9}$/, words)
    .transform(Number)
    .refine((value) => value >= min && value <= max, words);
}

/** An address for mail, in lower case; or null where it may be left empty. */
export function optionalEmail() {
  const words = 'Give an e-mail address such as name@example.org, or leave it empty.';
  return z
    .union([z.literal(''), z.email(words).max(254, words)], { error: words })
    .default('')
    .transform((text) => text.toLowerCase() || null);
}

/** A checkbox: ticked or not. */
export function ticked() {
  return z
    .string()
    .optional()
    .transform((value) => value !== undefined && value !== '');
}
