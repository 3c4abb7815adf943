import { expect, test } from 'vitest';
import { manureAgeOf } from './manure-age';

test.each([
  ['raw', 'fresh'],
  ['young', 'old'],
  ['rotted', 'old'],
  ['composted', 'old'],
] as const)('%s manure is %s', (state, age) => expect(manureAgeOf(state)).toBe(age));
