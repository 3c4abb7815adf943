import { expect, test } from 'vitest';
import { cropContactOf, cropContacts, notEaten } from './contact';
import { cropDemands, cropDemandsOf } from './crop-demands';
import { cropOf, crops } from './crops';
import { nitrogenCeilingOf, nitrogenCeilings } from './nitrogen-limits';

test('every row, and every ceiling, speaks of crops of the catalogue', () => {
  for (const { cropKeys } of [...cropDemands, ...nitrogenCeilings])
    for (const key of cropKeys) expect(cropOf(key)?.key).toBe(key);
});

test('rows are told apart by their German names', () =>
  expect(new Set(cropDemands.map(({ german }) => german)).size).toBe(cropDemands.length));

test('what the tables do not name has no row', () => {
  for (const key of [
    'broad-bean',
    'runner-bean',
    'tomato',
    'garlic',
    'pepper',
    'mangetout',
    'spring-cabbage',
    'phacelia',
  ])
    expect(cropDemandsOf(key)).toEqual([]);
  // Of swede the contents alone are given.
  expect(cropDemandsOf('swede').map(({ demandKgPerHa }) => demandKgPerHa)).toEqual([null]);
  expect(cropDemandsOf('lettuce').length).toBe(7);
});

test('a crop has one ceiling or none', () => {
  const keys = nitrogenCeilings.flatMap(({ cropKeys }) => cropKeys);
  expect(new Set(keys).size).toBe(keys.length);
  expect(nitrogenCeilingOf('pea')?.kgPerHa).toBe(0);
  expect(nitrogenCeilingOf('tomato')).toBeUndefined();
});

test('every crop is either eaten, in one way, or a green manure', () => {
  const listed = [...cropContacts.map(({ cropKey }) => cropKey), ...notEaten];
  expect([...listed].sort()).toEqual(crops.map(({ key }) => key).sort());
  expect(cropContactOf('carrot')).toEqual({ cropKey: 'carrot', contact: 'touches-soil', eaten: 'either' });
  expect(cropContactOf('mustard')).toBeUndefined();
});

test('green manures are the crops that call themselves so', () =>
  expect([...notEaten].sort()).toEqual(
    crops
      .filter(({ name }) => name.endsWith('green manure'))
      .map(({ key }) => key)
      .sort(),
  ));
