import 'server-only';
import { pounds } from '@/lib/schemas/money/amount';

const price = pounds('the price of one pack', 0);

/** A price as it was typed, in pence; null where it is none. */
export function penceTyped(text: string): number | null {
  const read = price.safeParse(text);
  return read.success ? read.data : null;
}
