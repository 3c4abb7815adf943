import { expect, it } from 'vitest';
import { pieceWeightG } from './piece-weight';

const lot = (keepingKey: string, pieceG: number | null) => ({ keepingKey, pieceG });

it.each([
  ['the mean of what is said', 'onion', [lot('onion', 100), lot('onion', 140), lot('onion', null)], 120],
  ['the kind’s where nothing is said', 'onion', [lot('onion', null), lot('potato', 300)], 120],
  ['the kind’s where nothing is kept', 'garlic', [], 50],
])('is %s', (_, key, lots, expected) => expect(pieceWeightG(key, lots)).toBe(expected));

it('is not known of an unknown kind', () => expect(() => pieceWeightG('pebble', [])).toThrow(RangeError));
