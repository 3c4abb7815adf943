import { expect, test } from 'vitest';
import { materialOf, materials } from './materials';
import { mealOf, meals } from './meals';
import { type Contents, content, nutrientContents, nutrientContentsOf, nutrients } from './nutrient-contents';
import { sources } from './sources';

const figures = (contents: Contents) =>
  nutrients.flatMap((nutrient) => {
    const held = contents[nutrient];
    return held ? [held, ...held.otherwise] : [];
  });

test('every row speaks of a heaped material, once', () => {
  for (const { materialKey } of nutrientContents) {
    expect([materialKey, materialOf(materialKey)?.key]).toEqual([materialKey, materialKey]);
    expect(nutrientContentsOf(materialKey)?.materialKey).toBe(materialKey);
  }
  expect(new Set(nutrientContents.map(({ materialKey }) => materialKey)).size).toBe(nutrientContents.length);
  expect(new Set(materials.map(({ key }) => key)).size).toBe(materials.length);
});

test('manures and composts have a row, bedding has none', () => {
  for (const { key, kind } of materials)
    expect([key, nutrientContentsOf(key) === undefined]).toEqual([key, kind === 'bedding']);
});

test('every figure is whole grams in a tonne, of a source that is named', () => {
  for (const { gPerT, source } of [...nutrientContents, ...meals].flatMap(figures)) {
    expect(Number.isSafeInteger(gPerT) && gPerT >= 0 && gPerT < 1_000_000).toBe(true);
    expect(Object.hasOwn(sources, source)).toBe(true);
  }
});

test('a content keeps what others say, with the dry matter where there is one', () =>
  expect(content('hoduflu', 2, ['earth-kind', 3], ['from-memory', 4, 60])).toEqual({
    gPerT: 2,
    source: 'hoduflu',
    otherwise: [
      { gPerT: 3, source: 'earth-kind' },
      { gPerT: 4, source: 'from-memory', dryMatterPercent: 60 },
    ],
  }));

// Mixed manure lies between its parts, whatever they are.
test('mixed manure holds no less than the poorest and no more than the richest of horse, cattle, pig and sheep', () => {
  const parts = ['horse-manure', 'cattle-manure', 'pig-manure', 'sheep-manure'].map(
    (key) => nutrientContentsOf(key)?.nitrogen?.gPerT ?? expect.fail(key),
  );
  const mixed = nutrientContentsOf('mixed-manure')?.nitrogen ?? expect.fail('no nitrogen');
  const all = [mixed, ...mixed.otherwise].map(({ gPerT }) => gPerT);
  expect([Math.min(...all), Math.max(...all)]).toEqual([Math.min(...parts), Math.max(...parts)]);
});

test('meals are no materials, range from less to more, and one limes', () => {
  for (const { key, usualRate, density, release } of meals) {
    expect(materialOf(key)).toBeUndefined();
    expect(mealOf(key)?.key).toBe(key);
    expect(usualRate.leastGPerM2 > 0 && usualRate.leastGPerM2 <= usualRate.mostGPerM2).toBe(true);
    if (density) expect(density.leastGPerL > 0 && density.leastGPerL <= density.mostGPerL).toBe(true);
    if (release) expect(release.leastPercent <= release.mostPercent && release.mostPercent <= 100).toBe(true);
  }
  expect(meals.filter(({ limes }) => limes).map(({ key }) => key)).toEqual(['wood-ash']);
  expect(mealOf('guano')).toBeUndefined();
});
