import { describe, expect, test } from 'vitest';
import { cropGroups, isCropGroup } from './crop-groups';
import { cropOf, crops } from './crops';
import { isHostGroup } from './host-groups';
import { materialOf, materials } from './materials';
import { persistence } from './persistence';
import { sources } from './sources';
import { troubleOf, troubles } from './troubles';

describe('crops', () => {
  test('at least sixty, each once, by key and by name', () => {
    expect(crops.length).toBeGreaterThanOrEqual(60);
    expect(new Set(crops.map(({ key }) => key)).size).toBe(crops.length);
    expect(new Set(crops.map(({ name }) => name)).size).toBe(crops.length);
  });

  test('each in a group that is one, with host groups that are some, and sources that are named', () => {
    for (const { key, cropGroup, hostGroups, familySource, nameSource } of crops) {
      expect(key).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(isCropGroup(cropGroup) && hostGroups.every(isHostGroup)).toBe(true);
      expect(Object.hasOwn(sources, familySource) && Object.hasOwn(sources, nameSource)).toBe(true);
    }
  });

  test('none may be taken for bare ground', () => expect(cropOf('bare')).toBeUndefined());

  test('every group has a crop', () => {
    for (const { key } of cropGroups) expect(crops.some(({ cropGroup }) => cropGroup === key)).toBe(true);
  });

  // The trade's groups cut across the troubles of the soil.
  test.each([
    'swede',
    'turnip',
    'radish',
    'kohlrabi',
    'horseradish',
    'mustard',
    'mustard-greens',
    'rocket',
    'mizuna',
    'chinese-cabbage',
  ])('%s is a host of the cabbage kin’s troubles, whatever group it is dug in', (key) =>
    expect(cropOf(key)?.hostGroups).toContain('brassica-kin'),
  );

  test('a family that rotates shares its host group', () => {
    const families = {
      Amaryllidaceae: 'allium-kin',
      Apiaceae: 'carrot-kin',
      Brassicaceae: 'brassica-kin',
      Cucurbitaceae: 'cucurbit-kin',
      Fabaceae: 'legume-kin',
      Solanaceae: 'potato-kin',
      Amaranthaceae: 'beet-kin',
    };
    for (const [family, hostGroup] of Object.entries(families))
      for (const crop of crops.filter((one) => one.family === family))
        expect([crop.key, crop.hostGroups]).toEqual([crop.key, [hostGroup]]);
  });

  test('what stands is perennial and outside the rotation', () => {
    for (const crop of crops.filter(({ stands }) => stands))
      expect(crop).toMatchObject({ life: 'perennial', cropGroup: 'standing' });
  });

  test('long roots take no manure', () => {
    for (const key of ['carrot', 'parsnip', 'salsify', 'scorzonera']) expect(cropOf(key)?.takesManure).toBe(false);
  });
});

test('a material’s density lies within its published range', () => {
  for (const { key, densityGPerL, leastGPerL, mostGPerL } of materials) {
    expect([key, leastGPerL > 0 && leastGPerL <= densityGPerL && densityGPerL <= mostGPerL]).toEqual([key, true]);
    expect(materialOf(key)?.key).toBe(key);
  }
  expect(materialOf('gravel')).toBeUndefined();
});

test('a trouble’s break, and none where no break clears it', () => {
  expect(new Set(troubles.map(({ key }) => key)).size).toBe(troubles.length);
  expect(troubleOf('clubroot')?.clearYears).toBe(7);
  expect(troubleOf('white-rot')?.clearYears).toBeNull();
  expect(troubleOf('gnomes')).toBeUndefined();
});

test('every trouble has hosts and sources, and every account of dwindling a trouble', () => {
  for (const { key, hosts, source, otherwise } of troubles) {
    expect([key, hosts.length > 0 && hosts.every(isHostGroup)]).toEqual([key, true]);
    expect([source, ...otherwise.map((other) => other.source)].every((one) => Object.hasOwn(sources, one))).toBe(true);
  }
  for (const { trouble, source } of persistence) {
    expect(troubleOf(trouble)?.key).toBe(trouble);
    expect(Object.hasOwn(sources, source)).toBe(true);
  }
});
