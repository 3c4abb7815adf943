import { z } from 'zod';
import { parseLength, type Units } from '@/lib/domain/quantity/length';

const words = {
  empty: (what: string) => `Give ${what}, such as 3.6 m or 12 ft.`,
  'not-a-length': (what: string) => `That is not a length. Give ${what} as 3.6 m, 360 cm, 12 ft or 12 ft 6 in.`,
  'too-long': (what: string) => `That is over 1,000 m. Give ${what} in metres or feet.`,
};

/** A typed length, kept as typed and read in the member's units: tenths of a millimetre. */
export function typedLength(what: string, units: Units, least = 0) {
  return z
    .string({ error: words.empty(what) })
    .max(40, words['not-a-length'](what))
    .transform((text, context) => {
      const read = parseLength(text, units);
      if (read.ok && read.tenthMm >= least * 100) return { text: text.trim(), tenthMm: read.tenthMm };
      context.addIssue({ code: 'custom', message: read.ok ? `Give ${what} of at least ${least} cm.` : words[read.code](what) });
      return z.NEVER;
    });
}

/** The same where it may be left empty: null then. */
export function optionalTypedLength(what: string, units: Units) {
  return z.union([z.literal('').transform(() => null), typedLength(what, units)]).default(null);
}
