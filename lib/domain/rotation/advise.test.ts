import { describe, expect, it } from 'vitest';
import { footprint } from '../ground/footprint';
import { advise } from './advise';
import type { Succession } from './rules/rule';

const bed = footprint(0, 0, 100, 200);
const half = footprint(0, 0, 100, 100);
const all = ['brassicas-after-legumes', 'roots-off-manure', 'potatoes-off-lime', 'standing-apart'];
const stood = (
  cropGroup: 'legumes' | 'alliums' | 'standing',
  firstSeason: number,
  lastSeason = firstSeason,
  ground = bed,
) => ({
  id: `${cropGroup} ${firstSeason}`,
  footprint: ground,
  cropKey: 'x',
  hostGroups: [],
  cropGroup,
  firstSeason,
  lastSeason,
});
const asked = (cropGroup: Succession['crop']['cropGroup'], given: Partial<Succession> = {}): Succession => ({
  crop: { cropGroup, takesManure: cropGroup === 'brassicas' },
  footprint: bed,
  season: 2027,
  history: [],
  works: [],
  ...given,
});

describe('the general rules', () => {
  const manured = (season: number, ground = half) => ({ kind: 'manured' as const, season, footprint: ground });
  const limed = (season: number) => ({ kind: 'limed' as const, season, footprint: half });
  it.each([
    ['roots on ground manured for them', asked('roots', { works: [manured(2027)] }), [['roots-off-manure', 10_000]]],
    [
      'two dressings on the same half count once',
      asked('roots', { works: [manured(2027), manured(2027)] }),
      [['roots-off-manure', 10_000]],
    ],
    ['roots on ground manured for another season', asked('roots', { works: [manured(2026)] }), []],
    [
      'roots that take manure',
      asked('roots', { crop: { cropGroup: 'roots', takesManure: true }, works: [manured(2027)] }),
      [],
    ],
    ['potatoes after lime', asked('potatoes', { works: [limed(2026)] }), [['potatoes-off-lime', 10_000]]],
    ['potatoes two seasons after lime', asked('potatoes', { works: [limed(2025)] }), []],
    ['brassicas after legumes', asked('brassicas', { history: [stood('legumes', 2026)] }), []],
    [
      'brassicas half after alliums',
      asked('brassicas', { history: [stood('alliums', 2026, 2026, half)] }),
      [['brassicas-after-legumes', 10_000]],
    ],
    ['brassicas after what nobody wrote down', asked('brassicas'), []],
    [
      'onions where rhubarb stands',
      asked('alliums', { history: [stood('standing', 2020, 2200, half)] }),
      [['standing-apart', 10_000]],
    ],
    ['onions after a green manure', asked('alliums', { history: [stood('standing', 2027)] }), []],
  ])('%s', (_, succession, expected) => {
    expect(advise(succession, all).map(({ rule, areaCm2 }) => [rule, areaCm2])).toEqual(expected);
  });

  it('are silent where the society leaves them off', () => {
    expect(advise(asked('roots', { works: [manured(2027)] }), ['standing-apart'])).toEqual([]);
  });
});
