import type { Chance } from '../chance';

/** Ids drawn from a seeded chance, so that the same seed makes the same rows: version 4 of RFC 9562. */
export function idsOf(chance: Chance): () => string {
  const hex = (digits: number) =>
    Math.floor(chance.next() * 16 ** digits)
      .toString(16)
      .padStart(digits, '0');
  return () => `${hex(8)}-${hex(4)}-4${hex(3)}-${chance.one(['8', '9', 'a', 'b'])}${hex(3)}-${hex(6)}${hex(6)}`;
}
