import { expect, it } from 'vitest';
import { conditionsWords, curingDaysWords, lifeWords } from './published-words';

const air = { fromTenthC: null, toTenthC: null, fromRh: null, toRh: null };

it.each([
  [{ least: 6, most: 9, printedIn: 'months' }, '6 to 9 months'],
  [{ least: 9, most: null, printedIn: 'months' }, '9 months or more'],
  [{ least: 4, most: 4, printedIn: 'weeks' }, '4 weeks'],
  [{ least: null, most: null, printedIn: 'months' }, 'not said'],
] as const)('a life is told as it is printed', (life, words) => expect(lifeWords(life)).toBe(words));

it.each([
  [{ ...air, fromTenthC: 0, toTenthC: 0, fromRh: 65, toRh: 70 }, '0 °C, 65 % to 70 % humidity'],
  [{ ...air, fromTenthC: 100 }, '10 °C or more'],
  [{ ...air, toRh: 75 }, 'up to 75 % humidity'],
  [air, 'not said'],
])('its air is told as far as it is known', (given, words) => expect(conditionsWords(given)).toBe(words));

it.each([
  [{ leastDays: 14, mostDays: 20 }, '14 to 20 days'],
  [{ leastDays: 10, mostDays: 10 }, '10 days'],
  [{ leastDays: 0, mostDays: 0 }, 'not cured'],
])('curing is told in days', (given, words) => expect(curingDaysWords(given)).toBe(words));
