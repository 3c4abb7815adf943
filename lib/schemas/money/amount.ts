import { z } from 'zod';

const shape = /^(?:£\s*)?(\d{1,6}(?:[.,]\d{1,2})?)$/;

/** An amount of money as it is typed, in pounds; comes out in pence. */
export function pounds(what: string, least: 0 | 1 = 1) {
  const words = `Give ${what} in pounds${least ? ', above nothing' : ''}, such as 12 or 12.40.`;
  return z
    .string({ error: words })
    .trim()
    .max(20, words)
    .regex(shape, words)
    .transform((text) => Math.round(Number((shape.exec(text)?.[1] ?? '').replace(',', '.')) * 100))
    .refine((minor) => minor >= least, words);
}
