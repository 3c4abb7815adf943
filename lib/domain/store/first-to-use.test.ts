import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goneOver, storeLot } from '@/tests/fixtures/store-lots';
import { calendarDate } from '../calendar/calendar-date';
import { firstToUse } from './first-to-use';

const today = calendarDate('2026-10-13');
const squash = (id: string, overrides: Parameters<typeof storeLot>[0] = {}) =>
  storeLot({
    id,
    keepingKey: 'squash',
    placeTenthC: 140,
    putIn: 12,
    putInOn: calendarDate('2026-10-01'),
    ...overrides,
  });
const codes = (...lots: Parameters<typeof firstToUse>[0]) =>
  firstToUse(lots, today).map(({ lotId, reasons }) => [lotId, ...reasons.map(({ code }) => code)].join(' '));

describe('what is used first', () => {
  it('is what was damaged, then what is green, then what keeps', () =>
    expect(
      codes(squash('sound'), squash('green', { condition: 'unripe' }), squash('split', { condition: 'damaged' })),
    ).toEqual(['split damaged near-end', 'green unripe-in-light', 'sound']));

  it('is a short keeper near its end before a long one', () => {
    const chillies = storeLot({ id: 'chillies', keepingKey: 'fresh-chilli', placeTenthC: 80 });
    expect(codes(storeLot({ id: 'onions' }), chillies)).toEqual(['chillies near-end', 'onions']);
    const [first] = firstToUse([chillies], today);
    expect(first?.reasons).toEqual([{ code: 'near-end', ...first?.useBy }]);
  });

  it('is a lot that loses faster than its kind, with what it lost and what it would have', () => {
    const rotten = goneOver(
      storeLot({ id: 'rotten' }),
      ['2026-09-15', 4, 4],
      ['2026-09-29', 4, 6],
      ['2026-10-13', 4, 8],
    );
    const fine = goneOver(storeLot({ id: 'fine' }), ['2026-09-15', 4, 0], ['2026-09-29', 4, 1], ['2026-10-13', 4, 0]);
    const [first, second] = firstToUse([fine, rotten], today);
    expect([first?.lotId, second?.lotId, second?.reasons]).toEqual(['rotten', 'fine', []]);
    const losing = first?.reasons.find(({ code }) => code === 'losing-fast');
    expect(losing).toMatchObject({ badPieces: 18 });
    expect(losing?.code === 'losing-fast' && losing.usualPieces).toBeGreaterThan(0);
    expect(losing?.code === 'losing-fast' && losing.usualPieces).toBeLessThan(3);
  });

  it('is, of like lots, the one put in sooner', () =>
    expect(codes(squash('later'), squash('sooner', { putInOn: calendarDate('2026-09-15') }))).toEqual([
      'sooner',
      'later',
    ]));

  it('passes over what is used up', () => expect(codes(goneOver(squash('gone'), ['2026-10-10', 12, 0]))).toEqual([]));

  it('does not hang on the order given', () => {
    const lots = [
      squash('a'),
      squash('b', { condition: 'damaged' }),
      squash('c', { condition: 'unripe' }),
      squash('d'),
      storeLot({ id: 'e' }),
      storeLot({ id: 'f', keepingKey: 'fresh-chilli' }),
    ];
    const expected = codes(...lots);
    fc.assert(
      fc.property(fc.shuffledSubarray(lots, { minLength: lots.length }), (shuffled) => {
        expect(codes(...shuffled)).toEqual(expected);
      }),
      { numRuns: 20 },
    );
  });

  it('refuses an unknown kind', () =>
    expect(() => codes(storeLot({ keepingKey: 'nobody-knows' }))).toThrow(RangeError));
});

it('tells of a lot that has long outlived its kind in numbers', () => {
  const old = goneOver(
    storeLot({ keepingKey: 'onion-mild', putInOn: calendarDate('2020-09-01') }),
    ['2024-09-01', 0, 20],
    ['2024-10-01', 0, 30],
  );
  const [first] = firstToUse([old], calendarDate('2024-11-01'));
  for (const reason of first?.reasons ?? [])
    if (reason.code === 'losing-fast') expect(reason.usualPieces).toBeGreaterThan(0);
});
