import { expect, test } from 'vitest';
import { type CautionedWork, cautions, cautionsFor } from './cautions';
import { sources } from './sources';

const works: readonly CautionedWork[] = [
  'digging',
  'heavy-soil',
  'lifting',
  'barrowing',
  'manure',
  'compost',
  'meal',
  'lime',
  'straw',
  'stored-food',
  'stored-potatoes',
];

test('each caution once, with words, a source and work that it belongs to', () => {
  expect(new Set(cautions.map(({ key }) => key)).size).toBe(cautions.length);
  for (const { key, words, when, source } of cautions) {
    expect(key).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(words).toMatch(/^[A-Z].{20,200}\.$/);
    expect(when.length > 0 && when.every((work) => works.includes(work)) && Object.hasOwn(sources, source)).toBe(true);
  }
});

test('all work has its cautions, and all of them give way to better advice', () => {
  for (const work of works) {
    const found = cautionsFor([work]);
    expect([work, found.length]).toEqual([work, Math.max(2, found.length)]);
    expect(found.at(-1)?.key).toBe('others-know');
  }
});

test('digging manure into clay: each caution once, the most pressing first', () => {
  const keys = cautionsFor(['digging', 'manure', 'heavy-soil']).map(({ key }) => key);
  expect(keys[0]).toBe('stop');
  expect(keys).toEqual(
    expect.arrayContaining(['warm-up', 'small-spadefuls', 'wet-clay', 'tetanus', 'gloves', 'germs']),
  );
  expect(new Set(keys).size).toBe(keys.length);
  expect(keys).not.toContain('dust');
});

test('no work, no caution', () => expect(cautionsFor([])).toEqual([]));
