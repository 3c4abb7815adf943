import { describe, expect, it } from 'vitest';
import { type Listed, matchList, type Wanted } from './match-list';
import { massOfSeeds } from './seed-mass';

const item = (id: string, cropKey: string, variety: string, unit: Listed['unit'] = 'seeds'): Listed => ({
  ...{ id, cropKey, variety, unit },
});
const list = [
  item('red', 'onion', 'Red Keeper'),
  item('plain', 'onion', 'Plain'),
  item('sets', 'onion', 'Plain', 'sets'),
  item('carrot', 'carrot', 'Long', 'milligrams'),
  item('oca', 'oca', 'Pink', 'milligrams'),
];
const matched = (...wanted: Wanted[]) => {
  const { amounts, unlisted } = matchList(wanted, list);
  return [Object.fromEntries(amounts), unlisted];
};

describe('a grower’s list against what is ordered', () => {
  it.each([
    [{ cropKey: 'onion', variety: ' red keeper ', seeds: 80 }, { red: 80 }],
    [{ cropKey: 'onion', variety: null, seeds: 80 }, { red: 80 }],
    [{ cropKey: 'onion', variety: 'plain', sets: 40 }, { sets: 40 }],
    [{ cropKey: 'carrot', variety: null, seeds: 300 }, { carrot: massOfSeeds('carrot', 300)?.massMg }],
    [{ cropKey: 'carrot', variety: 'Long', seeds: 0 }, {}],
  ])('%j is %j', (want, amounts) => expect(matched(want)).toEqual([amounts, []]));

  it.each([
    [{ cropKey: 'onion', variety: 'Brown', seeds: 80 }],
    [{ cropKey: 'carrot', variety: null, sets: 5 }],
    [{ cropKey: 'leek', variety: null, seeds: 5 }],
    // Nobody has weighed it.
    [{ cropKey: 'oca', variety: null, seeds: 5 }],
  ])('%j is not listed', (want) => expect(matched(want)).toEqual([{}, [want]]));

  it('is added up by item', () => {
    const any = { cropKey: 'onion', variety: null, seeds: 20 };
    expect(matched({ cropKey: 'onion', variety: 'Red keeper', seeds: 80 }, any)).toEqual([{ red: 100 }, []]);
  });
});
