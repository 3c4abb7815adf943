import { describe, expect, it } from 'vitest';
import { cropOf } from './crops';
import { curings, curingsOf } from './curings';
import { keepingOf, keepings, keepingsOfCrop } from './keepings';
import { lifeDays, storageLives, storageLivesOf } from './storage-lives';
import { storageLosses } from './storage-losses';
import { keptAlone, shelves, storeApart } from './store-apart';
import { storeLimits } from './store-limits';

const kinds = keepings.map(({ key }) => key);

describe('what keeps', () => {
  it('has one key each, and comes of crops of the catalogue', () => {
    expect(new Set(kinds).size).toBe(kinds.length);
    for (const cropKey of keepings.flatMap(({ cropKeys }) => cropKeys)) expect(cropOf(cropKey)?.key).toBe(cropKey);
    expect(keepingOf('nobody-knows')).toBeUndefined();
  });

  it('is found by its crop, the usual kind first', () => {
    expect(keepingsOfCrop('onion').map(({ key }) => key)).toEqual(['onion', 'onion-mild']);
    expect(keepingsOfCrop('lettuce')).toEqual([]);
  });

  it('has one life each that forecasts set out from', () => {
    for (const key of kinds) {
      const [first, ...others] = storageLivesOf(key);
      expect([key, first?.starts, first?.least !== null]).toEqual([key, true, true]);
      expect(others.filter(({ starts }) => starts)).toEqual([]);
    }
  });

  it('is gone over as growers say: onions by the fortnight, potatoes by the month', () =>
    expect(['onion', 'potato'].map((key) => keepingOf(key)?.goingOverDays)).toEqual([14, 30]));
});

it('every row of the store speaks of a kind, and is the right way round', () => {
  const named = [
    ...[...storageLives, ...curings, ...storageLosses].map(({ keepingKey }) => keepingKey),
    ...[...storeLimits, ...shelves].flatMap(({ keepingKeys }) => keepingKeys),
    ...storeApart.flatMap(({ fromKeys, harmedKeys }) => [...fromKeys, ...harmedKeys]),
    ...keptAlone.sets.flat(),
  ];
  expect(named.filter((key) => !kinds.includes(key))).toEqual([]);
  for (const { least, most } of storageLives) expect(least === null || most === null || least <= most).toBe(true);
  for (const { leastDays, mostDays } of curings) expect(leastDays <= mostDays).toBe(true);
  for (const { fromTenthC, toTenthC } of [...storageLives, ...curings, ...shelves])
    expect(fromTenthC === null || toTenthC === null || fromTenthC <= toTenthC).toBe(true);
  expect(curingsOf('carrot')).toEqual([]);
});

it('printed lengths of life are days', () => {
  expect([lifeDays(0.5, 'months'), lifeDays(1, 'months'), lifeDays(9, 'months'), lifeDays(3, 'weeks')]).toEqual([
    15, 30, 274, 21,
  ]);
  expect(() => lifeDays(0, 'weeks')).toThrow(RangeError);
  expect(() => lifeDays(0.3, 'months')).toThrow(RangeError);
});
