import { describe, expect, it } from 'vitest';
import { ownSowingOf } from './own-sowing';

const none = { apart: null, from: null, germinationPercent: null, marginPercent: null };

describe('how somebody sows', () => {
  it.each([
    [{ apart: { rowsCm: 30, inRowCm: 10 } }, { ...none, apart: { rowsCm: 30, inRowCm: 10 } }],
    [
      { from: 'sets', marginPercent: 0 },
      { ...none, from: 'sets', marginPercent: 0 },
    ],
    [
      { germinationPercent: 100, apart: { rowsCm: 30 } },
      { ...none, germinationPercent: 100 },
    ],
    [
      { germinationPercent: 1, marginPercent: 401, from: 'x' },
      { ...none, germinationPercent: 1 },
    ],
  ])('%j is read', (kept, own) => expect(ownSowingOf(kept)).toEqual(own));

  it.each([
    [null],
    ['x'],
    [7],
    [{}],
    [{ germinationPercent: 0 }],
    [{ apart: { rowsCm: 0, inRowCm: 5 } }],
    [{ apart: 7 }],
  ])('%j says nothing', (kept) => expect(ownSowingOf(kept)).toBeNull());
});
