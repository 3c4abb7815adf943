import { z } from 'zod';

// Control characters never belong in a line; newlines and tabs may stand in notes. Half a character (a lone surrogate)
// cannot be stored at all.
const lineBreakers = /[\u0000-\u001f\u007f-\u009f\u2028\u2029]|\p{Surrogate}/u;
const controls = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]|\p{Surrogate}/u;
const visible = /[\p{L}\p{N}\p{P}\p{S}]/u;

/** Text as a form sends it: trimmed, and cut short by a complaint before anything else looks at it. */
function text(words: string, max: number, tooLong: string) {
  return z.string({ error: words }).trim().max(max, { error: tooLong, abort: true });
}

/** One line of text, trimmed; `what` names it in the complaint: "Give the plot's number." */
export function line(what: string, max = 80) {
  return text(`Give ${what}.`, max, `Keep ${what} to ${max} characters.`)
    .refine((typed) => visible.test(typed), { error: `Give ${what}.`, abort: true })
    .refine((typed) => !lineBreakers.test(typed), `Keep ${what} to one line of plain text.`);
}

/** One line that may be left empty; empty comes out as null. */
export function optionalLine(what: string, max = 80) {
  const plain = `Keep ${what} to one line of plain text.`;
  return text(plain, max, `Keep ${what} to ${max} characters.`)
    .refine((typed) => typed === '' || (visible.test(typed) && !lineBreakers.test(typed)), plain)
    .default('')
    .transform((typed) => typed || null);
}

/** Several lines of text that must say something. */
export function note(what: string, max: number) {
  return text(`Give ${what}.`, max, `Keep ${what} to ${max.toLocaleString('en-GB')} characters.`)
    .refine((typed) => visible.test(typed), { error: `Give ${what}.`, abort: true })
    .refine((typed) => !controls.test(typed), `Keep ${what} to plain text.`)
    .transform((typed) => typed.replaceAll('\r\n', '\n'));
}

/** A note of several lines that may be left empty; empty comes out as null. */
export function optionalNote(what: string, max = 2000) {
  const plain = `Keep ${what} to plain text.`;
  return text(plain, max, `Keep ${what} to ${max} characters.`)
    .refine((typed) => typed === '' || (visible.test(typed) && !controls.test(typed)), plain)
    .default('')
    .transform((typed) => typed.replaceAll('\r\n', '\n') || null);
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

/** A whole number that may be left empty; empty comes out as null. */
export function optionalWhole(what: string, least: number, most: number) {
  return z
    .union([z.literal('').transform(() => null), wholeNumber(what, least, most)], {
      error: `Give ${what} as a whole number, or leave it empty.`,
    })
    .default(null);
}

/** A length as it is typed; the use-case reads it, in the member's own units. */
export function typedLength() {
  return z.string({ error: 'Give one length, such as 3.6 m.' }).max(40, 'That is too long for a length.').default('');
}

/** An address for mail, in lower case; or null where it may be left empty. */
export function optionalEmail() {
  const words = 'Give an e-mail address such as name@example.org, or leave it empty.';
  return text(words, 254, words)
    .toLowerCase()
    .pipe(z.union([z.literal(''), z.email(words)], { error: words }))
    .default('')
    .transform((typed) => typed || null);
}

/** A checkbox: ticked or not. */
export function ticked() {
  const words = 'Tick the box, or leave it.';
  return z
    .string({ error: words })
    .max(20, words)
    .optional()
    .transform((value) => value !== undefined && value !== '');
}
