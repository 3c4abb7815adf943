import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keepings } from '../catalogue/keepings';
import { mustNotStandBeside } from './stand-apart';
import { tooColdFor } from './too-cold';

const at = (placeId: string, ...keys: readonly string[]) =>
  keys.map((keepingKey) => ({ id: keepingKey, keepingKey, placeId }));
const told = (...keys: readonly string[]) =>
  mustNotStandBeside(at('shed', ...keys)).map(({ code, lotId, besideId }) => `${lotId} ${code} ${besideId}`);

describe('what stands in one place', () => {
  it('apples spoil carrots, by ethylene and by taint, whichever came first', () => {
    expect(told('apple', 'carrot')).toEqual(['carrot ethylene apple', 'carrot taint apple']);
    expect(told('carrot', 'apple')).toEqual(['carrot ethylene apple', 'carrot taint apple']);
  });

  it('apples shorten the life of squash, which wants warmer air too', () => {
    expect(told('butternut', 'apple')).toEqual(['butternut ethylene apple', 'butternut other-shelf apple']);
    const [, air] = mustNotStandBeside(at('shed', 'butternut', 'apple'));
    expect(air).toMatchObject({ wants: { key: 'warm-dry' }, besideWants: { key: 'cold-fruit' } });
  });

  it('onions stand with garlic, not with potatoes', () => {
    expect(told('onion', 'garlic')).toEqual([]);
    expect(told('onion', 'potato')).toEqual(['onion alone potato', 'onion other-shelf potato']);
  });

  it('roots of one shelf stand together, and so do two lots of a kind', () => {
    expect(told('carrot', 'beetroot', 'parsnip')).toEqual([]);
    expect(mustNotStandBeside(at('shed', 'onion', 'onion'))).toEqual([]);
  });

  it('nothing is said across places', () =>
    expect(mustNotStandBeside([...at('shed', 'apple'), ...at('clamp', 'carrot')])).toEqual([]));

  it('every finding is of two lots of one place, and the order given changes none', () => {
    const lots = fc.array(
      fc.record({
        keepingKey: fc.constantFrom(...keepings.map(({ key }) => key)),
        placeId: fc.constantFrom('shed', 'clamp'),
      }),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(lots, (kinds) => {
        const named = kinds.map((lot, index) => ({ ...lot, id: `${index}` }));
        const pairs = (list: typeof named) =>
          mustNotStandBeside(list)
            .map(({ code, lotId, besideId }) => [code, ...[lotId, besideId].sort()].join())
            .sort();
        expect(pairs([...named].reverse())).toEqual(pairs(named));
        for (const { lotId, besideId } of mustNotStandBeside(named))
          expect(named[Number(lotId)]?.placeId).toBe(named[Number(besideId)]?.placeId);
      }),
    );
  });
});

describe('what is too cold, or too warm', () => {
  const codes = (key: string, tenths: number) => tooColdFor(key, tenths).map(({ code }) => code);

  it.each([
    ['butternut', 100, []],
    ['butternut', 99, ['chills']],
    ['butternut', -1, ['freezes', 'chills']],
    ['sweet-potato', 129, ['chills']],
    ['sweet-potato', 130, []],
    ['potato', 43, ['sweetens']],
    ['potato', 44, []],
    ['potato', 100, ['sprouts']],
    ['onion', 49, []],
    ['onion', 50, ['sprouts']],
    ['onion', 250, []],
    ['onion', -8, []],
    ['onion', -9, ['freezes']],
    ['garlic', 180, []],
  ])('%s at %i tenths of a degree: %j', (key, tenths, expected) => expect(codes(key, tenths)).toEqual(expected));

  it('says by how far', () => {
    expect(tooColdFor('butternut', 60)).toMatchObject([{ code: 'chills', belowTenthC: 100, beyondTenthC: 40 }]);
    expect(tooColdFor('onion', 80)).toMatchObject([{ code: 'sprouts', beyondTenthC: 30 }]);
  });

  it.each([0.5, 501, -501, Number.NaN])('%d is no temperature', (tenths) =>
    expect(() => tooColdFor('onion', tenths)).toThrow(RangeError),
  );
});
