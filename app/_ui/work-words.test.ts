import { expect, test } from 'vitest';
import { clashWords, loggedWords, waitWords } from './work-words';

const wait = { cropName: 'Carrot', earliestOn: '2027-07-10', whileGrowing: false, isWorstCase: false };

test('what was logged, with what follows from it', () => {
  expect(loggedWords({ kind: 'manured', waits: [], clashes: [] })).toBe('Logged. The turn is reset there.');
  expect(loggedWords({ kind: 'fed', waits: [wait], clashes: [{ code: 'not-known' }] })).toMatch(
    /^Logged\. Take no harvest of carrot before Sat,? 10 July 2027\. Lime and manure are both logged/,
  );
});

test('a wait, with manure on what grew, and as a worst case', () => {
  expect(waitWords({ ...wait, whileGrowing: true })).toMatch(
    /^Take no harvest of carrot, which had manure while it grew, before/,
  );
  expect(waitWords({ ...wait, isWorstCase: true })).toMatch(
    /is not known: neither the day nor the age .* At the worst, not before/,
  );
});

test('each kind of clash once, with its latest day', () => {
  const late = { code: 'too-soon', order: 'manure-first', earliestOn: '2027-02-12' };
  const words = clashWords([
    { ...late, earliestOn: '2027-02-02' },
    late,
    { ...late, order: 'same-day' },
    { code: 'not-known' },
  ]);
  expect(words).toHaveLength(3);
  expect(words[0]).toContain('12 February 2027');
  expect(clashWords([{ ...late, order: 'lime-first' }])[0]).toMatch(/^Manure came too soon after lime/);
  expect(clashWords([])).toEqual([]);
});
