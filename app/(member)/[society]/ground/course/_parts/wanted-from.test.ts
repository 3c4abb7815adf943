import { expect, it } from 'vitest';
import { wantedFrom } from './wanted-from';

const crops = [{ key: 'onion', cropGroup: 'alliums' }];

it('is the crop and its ground', () =>
  expect(wantedFrom('onion:40000', crops)).toEqual({ key: 'onion', areaCm2: 40_000, group: 'alliums' }));

it.each([undefined, '', 'onion', 'onion:', 'onion:0', 'onion:-1', 'onion:1.5', 'pebble:40000', 'onion:999999999'])(
  'passes over %s',
  (text) => expect(wantedFrom(text, crops)).toBeNull(),
);
