import { describe, expect, test } from 'vitest';
import { hostGroups } from './host-groups';
import {
  isAllowed,
  isSettingKey,
  type SettingKey,
  settingInForce,
  settingParts,
  settings,
  settingValues,
} from './settings';

const keys = Object.keys(settings) as SettingKey[];

test('every default is allowed by its own bounds', () => {
  for (const key of keys) expect([key, isAllowed(key, settings[key].value)]).toEqual([key, true]);
});

describe('isSettingKey', () => {
  test('every setting, and a break for each host group', () => {
    expect(keys.every(isSettingKey)).toBe(true);
    for (const { key } of hostGroups) expect(isSettingKey(`break.${key}`)).toBe(true);
  });

  test.each(['', 'toString', '__proto__', 'constructor', 'break.', 'barrowlitres'])('%j is none', (text) =>
    expect(isSettingKey(text)).toBe(false),
  );
});

describe('isAllowed', () => {
  test.each<[SettingKey, unknown, boolean]>([
    ['barrowLitres', 20, true],
    ['barrowLitres', 19, false],
    ['barrowLitres', 300, true],
    ['barrowLitres', 301, false],
    ['barrowLitres', 85.5, false],
    ['barrowLitres', '85', false],
    ['barrowLitres', Number.NaN, false],
    ['barrowLitres', Number.POSITIVE_INFINITY, false],
    ['barrowLitres', null, false],
    ['break.brassica-kin', 0, true],
    ['break.brassica-kin', 20, true],
    ['break.brassica-kin', -1, false],
    ['neighboursSee', 'group', true],
    ['neighboursSee', 'everything', false],
    ['seasonFrom', '02-28', true],
    ['seasonFrom', '02-29', false],
    ['seasonFrom', '04-31', false],
    ['seasonTo', '12-31', true],
    ['seasonTo', '13-01', false],
    ['seasonTo', '8-31', false],
    ['seasonTo', 831, false],
    ['lastFrost', '02-01', true],
    ['lastFrost', '01-31', false],
    ['lastFrost', '06-30', true],
    ['lastFrost', '07-01', false],
    ['firstFrost', '07-31', false],
    ['firstFrost', '08-01', true],
  ])('%s = %j: %s', (key, value, allowed) => expect(isAllowed(key, value)).toBe(allowed));
});

describe('settingValues', () => {
  test('the defaults where the society has set nothing', () => {
    const values = settingValues({});
    expect(values).toMatchObject({
      manuringIntervalYears: 3,
      manureRateGPerM2: 5000,
      barrowLitres: 85,
      cultivableSharePercent: 75,
    });
    expect(Object.values(values.breakYears)).toEqual(hostGroups.map(() => 3));
  });

  test('its own where it has; one that is out of bounds now is passed over', () => {
    const own = Object.freeze({ barrowLitres: 100, 'break.allium-kin': 7, edgeWidthCm: 9999, unknown: 1 });
    const values = settingValues(own);
    expect(values).toMatchObject({ barrowLitres: 100, edgeWidthCm: 30 });
    expect(values.breakYears).toMatchObject({ 'allium-kin': 7, 'brassica-kin': 3 });
    expect(values).not.toHaveProperty('unknown');
  });
});

test('every setting is shown once, and in force reads as it would be set', () => {
  expect(settingParts.flatMap((part) => part.keys).toSorted()).toEqual(keys.toSorted());
  for (const key of keys) expect([key, settingInForce(settingValues({}), key)]).toEqual([key, settings[key].value]);
  const own = { 'trouble.clubroot': 99, 'rule.roots-off-manure': 'off', 'break.beet-kin': 5 };
  for (const [key, value] of Object.entries(own))
    expect(settingInForce(settingValues(own), key as SettingKey)).toBe(value);
});
