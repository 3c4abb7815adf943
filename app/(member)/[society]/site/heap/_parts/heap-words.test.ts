import { expect, test } from 'vitest';
import { loadedWords, overWords, placeWords, proofWords, wayWords } from './heap-words';

test('ways in metres or yards', () => {
  expect(wayWords(8449, 'metric')).toBe('84 m');
  expect(wayWords(8449, 'imperial')).toBe('92 yd');
  expect(loadedWords(1_234_567, 'metric')).toBe('12,346');
});
test('how much more than the best', () => {
  expect(overWords(41_000, 341_667, 'metric')).toBe('410 loaded metres more, 12 %');
  expect(overWords(-9144, 91_440, 'imperial')).toBe('100 loaded yards less, 10 %');
  expect(overWords(0, 10, 'metric')).toBe('as good as the best');
  expect(overWords(500, 0, 'metric')).toBe('5 loaded metres more');
});
test('a place from the corner, to either side of it', () => {
  expect(placeWords({ xCm: 6000, yCm: 2750 }, 'metric')).toBe('60 m east and 27.5 m south of the site’s corner');
  expect(placeWords({ xCm: -305, yCm: -610 }, 'imperial')).toBe(
    '10.01 ft west and 20.01 ft north of the site’s corner',
  );
});
test('the proof says how many places were worked out', () => {
  const of = (code: 'nodes-suffice' | 'all-compared' | 'no-loads' | 'no-place', basis: 'paths' | 'straight-lines') =>
    proofWords({ basis, proof: { code, places: 1213 } });
  expect(of('nodes-suffice', 'paths')).toContain('worked out: 1,213.');
  expect(of('all-compared', 'paths')).toContain('Every drop point was worked out: 1,213.');
  expect(of('no-place', 'straight-lines')).toContain('No paths are drawn');
  expect(of('no-place', 'paths')).toBe('No place is allowed there.');
  expect(of('no-loads', 'paths')).toContain('Nothing is to be wheeled');
});
