import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acrossCmOfRound, type Heap, heapLitres } from './heap-volume';
import { loadsIn } from './load';

const sides = { lengthCm: 300, widthCm: 200, heightCm: 100 };

describe('heapLitres', () => {
  test.each<[Heap, number]>([
    [{ kind: 'box', ...sides }, 6000],
    [{ kind: 'cone', acrossCm: 200, heightCm: 100 }, 1047],
    [{ kind: 'dome', lengthCm: 200, widthCm: 200, heightCm: 100 }, 2094],
    [{ kind: 'ridge', lengthCm: 200, widthCm: 200, heightCm: 100 }, 1047],
    [{ kind: 'ridge', ...sides }, 2047],
    [{ kind: 'flat-topped', ...sides, topLengthCm: 300, topWidthCm: 200 }, 6000],
    [{ kind: 'flat-topped', ...sides, topLengthCm: 0, topWidthCm: 0 }, 2000],
    [{ kind: 'flat-topped', ...sides, topLengthCm: 300, topWidthCm: 0 }, 3000],
    [{ kind: 'trailer', ...sides, sidesCm: 40, topLengthCm: 300, topWidthCm: 0 }, 5400],
    [{ kind: 'box', lengthCm: 10, widthCm: 10, heightCm: 9.9 }, 0],
    [{ kind: 'box', lengthCm: 10, widthCm: 10, heightCm: 10 }, 1],
  ])('%j holds %s L', (heap, litres) => expect(heapLitres(heap)).toBe(litres));

  test('a ball’s half is a dome, and a dome as high as a box touches its roof', () => {
    expect(heapLitres({ kind: 'dome', lengthCm: 200, widthCm: 200, heightCm: 100 })).toBe(
      Math.floor(((4 / 3) * Math.PI * 100 ** 3) / 2 / 1000),
    );
  });

  test('litres go on into loads', () => {
    const litres = heapLitres({ kind: 'cone', acrossCm: 200, heightCm: 100 });
    expect(loadsIn({ thousandths: litres, unit: 'm3' }, 85, 400)).toBe(12);
  });

  test.each<Heap>([
    { kind: 'cone', acrossCm: 0, heightCm: 100 },
    { kind: 'cone', acrossCm: 200, heightCm: -1 },
    { kind: 'cone', acrossCm: Number.NaN, heightCm: 1 },
    { kind: 'box', ...sides, lengthCm: 0 },
    { kind: 'box', ...sides, heightCm: Number.POSITIVE_INFINITY },
    { kind: 'dome', ...sides, widthCm: -200 },
    { kind: 'ridge', ...sides, lengthCm: 199 },
    { kind: 'flat-topped', ...sides, topLengthCm: 301, topWidthCm: 0 },
    { kind: 'flat-topped', ...sides, topLengthCm: 0, topWidthCm: -1 },
    { kind: 'flat-topped', ...sides, topLengthCm: Number.NaN, topWidthCm: 0 },
    { kind: 'trailer', ...sides, sidesCm: 0, topLengthCm: 0, topWidthCm: 0 },
  ])('%j is refused', (heap) => expect(() => heapLitres(heap)).toThrow(RangeError));
});

describe('against a heap cut into thin slices', () => {
  const size = fc.integer({ min: 30, max: 900 });

  // Each slice lies flat at a height between 0 and 1; its area is written down by what the shape is, not by its formula.
  const sliced = (heightCm: number, areaCm2At: (height: number) => number) => {
    const slices = 2000;
    let sum = 0;
    for (let slice = 0; slice < slices; slice++) sum += areaCm2At((slice + 0.5) / slices);
    return (sum * heightCm) / slices / 1000;
  };
  const near = (litres: number, byHand: number) => expect(Math.abs(litres - byHand)).toBeLessThan(1 + byHand / 1000);

  test('a cone', () => {
    fc.assert(
      fc.property(size, size, (acrossCm, heightCm) => {
        near(
          heapLitres({ kind: 'cone', acrossCm, heightCm }),
          sliced(heightCm, (height) => Math.PI * ((acrossCm / 2) * (1 - height)) ** 2),
        );
      }),
    );
  });

  test('a dome', () => {
    fc.assert(
      fc.property(size, size, size, (lengthCm, widthCm, heightCm) => {
        near(
          heapLitres({ kind: 'dome', lengthCm, widthCm, heightCm }),
          sliced(heightCm, (height) => (Math.PI / 4) * lengthCm * widthCm * (1 - height ** 2)),
        );
      }),
    );
  });

  test('a ridge', () => {
    fc.assert(
      fc.property(size, size, size, (widthCm, longer, heightCm) => {
        const straight = longer - 30;
        near(
          heapLitres({ kind: 'ridge', lengthCm: widthCm + straight, widthCm, heightCm }),
          sliced(heightCm, (height) => {
            const broad = widthCm * (1 - height);
            return straight * broad + (Math.PI / 4) * broad ** 2;
          }),
        );
      }),
    );
  });

  test('a flat top, with and without a trailer under it', () => {
    fc.assert(
      fc.property(
        size,
        size,
        size,
        fc.nat(100),
        fc.nat(100),
        (lengthCm, widthCm, heightCm, longPercent, broadPercent) => {
          const [topLengthCm, topWidthCm] = [(lengthCm * longPercent) / 100, (widthCm * broadPercent) / 100];
          const over = sliced(
            heightCm,
            (height) => (lengthCm + (topLengthCm - lengthCm) * height) * (widthCm + (topWidthCm - widthCm) * height),
          );
          const heap = { lengthCm, widthCm, heightCm, topLengthCm, topWidthCm };
          near(heapLitres({ kind: 'flat-topped', ...heap }), over);
          near(heapLitres({ kind: 'trailer', ...heap, sidesCm: 50 }), over + (lengthCm * widthCm * 50) / 1000);
        },
      ),
    );
  });
});

describe('acrossCmOfRound', () => {
  test('round and across, there and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), (roundCm) => {
        expect(acrossCmOfRound(roundCm) * Math.PI).toBeCloseTo(roundCm, 6);
      }),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused', (roundCm) =>
    expect(() => acrossCmOfRound(roundCm)).toThrow(RangeError),
  );
});
