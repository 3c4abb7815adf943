import { describe, expect, test } from 'vitest';
import { cropOf } from '@/lib/domain/catalogue/crops';
import { clearYearsOfRotation } from '@/lib/domain/catalogue/host-groups';
import { settingValues } from '@/lib/domain/catalogue/settings';
import { troubleOf } from '@/lib/domain/catalogue/troubles';
import { footprint } from '@/lib/domain/ground/footprint';
import { judge } from '@/lib/domain/rotation/judge';

// American Crystal Sugar Company, Ag Note 334: years in the rotation, and years between.
test.each([
  [2, 1],
  [3, 2],
  [4, 3],
  [5, 4],
  [6, 5],
  [7, 6],
  [8, 7],
])('a rotation of %s years leaves %s clear', (rotation, clear) => {
  expect(clearYearsOfRotation(rotation)).toBe(clear);
});

// Cornell Cooperative Extension, Cortland County, Rotating Vegetables by Family, 2021: two unrelated years between.
test('a rotation of three years leaves two unrelated years', () => expect(clearYearsOfRotation(3)).toBe(2));

const bed = footprint(0, 0, 120, 360);
const first = 2000;

/** How the same crop is judged again, so many clear and recorded years after it. */
function judgedAfter(clearYears: number, cropKey: string, trouble: string) {
  const crop = cropOf(cropKey) ?? expect.fail(cropKey);
  const found = troubleOf(trouble) ?? expect.fail(trouble);
  const record = {
    id: 'first',
    footprint: bed,
    cropKey,
    hostGroups: crop.hostGroups,
    cropGroup: crop.cropGroup,
    firstSeason: first,
    lastSeason: first,
  };
  const since = Array.from({ length: clearYears }, (_, at) => ({
    ...record,
    id: `bare ${at}`,
    cropKey: 'bare',
    hostGroups: [],
    cropGroup: null,
    firstSeason: first + 1 + at,
    lastSeason: first + 1 + at,
  }));
  const { breakYears, edgeWidthCm, edgeSharePercent } = settingValues({});
  return judge({
    proposal: { footprint: bed, hostGroups: crop.hostGroups, season: first + clearYears + 1 },
    history: [record, ...since],
    settings: { breakYears, edgeWidthCm, edgeSharePercent },
    troubles: [
      {
        id: 't',
        troubleKey: trouble,
        hosts: found.hosts,
        footprint: bed,
        foundSeason: first,
        breakYears: found.clearYears,
      },
    ],
  }).verdict;
}

describe('breaks where a trouble has been found', () => {
  test.each([
    // University of Connecticut IPM, Having Problems Controlling Vegetable Crop Diseases: Try Rotation, table of periods.
    ['clubroot', 'summer-cabbage', 7],
    ['clubroot', 'turnip', 7],
    ['clubroot', 'radish', 7],
    ['blackleg', 'turnip', 4],
    ['black-rot', 'kale', 3],
    ['bottom-rot', 'lettuce', 3],
    ['beet-leaf-spot', 'beetroot', 3],
    // University of California IPM, onion and garlic, Fusarium basal rot: three to four years out.
    ['basal-rot', 'onion', 4],
    // Ontario Ministry of Agriculture, Bulb and stem nematode in onions and carrots: three years of crops that are no hosts.
    ['onion-eelworm', 'garlic', 3],
    ['onion-eelworm', 'carrot', 3],
    ['onion-eelworm', 'beetroot', 3],
    // American Crystal Sugar Company, Ag Note 334: root rot of beet controlled in a rotation of four years.
    ['beet-root-rot', 'beetroot', 3],
    // Processors and Growers Research Organisation: ten years once foot rot is established.
    ['pea-foot-rot', 'pea', 10],
    // Processors and Growers Research Organisation, Practice Abstract 36: ten years before beans again.
    ['bean-eelworm', 'broad-bean', 10],
    // Royal Horticultural Society, advice profile 929: five to six years at the least.
    ['potato-eelworm', 'maincrop-potato', 6],
    ['potato-eelworm', 'tomato', 6],
  ])('%s, %s: kept after %s clear years, short after one fewer', (trouble, cropKey, clearYears) => {
    expect(judgedAfter(clearYears, cropKey, trouble)).toBe('kept');
    expect(judgedAfter(clearYears - 1, cropKey, trouble)).toBe('short');
  });

  // University of California IPM, onion and garlic, white rot: sclerotia live over twenty years; no rotation clears it.
  test('white rot is not outwaited in twenty years', () => expect(judgedAfter(20, 'leek', 'white-rot')).toBe('short'));
});
