import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { densityOfBucketfuls } from './bucket-test';

const fills = (count: number, massG: number) => Array.from({ length: count }, () => massG);

describe('densityOfBucketfuls', () => {
  test('the bucket comes off, and the fills are averaged', () => {
    const test = Object.freeze({ bucketLitres: 10, emptyG: 500, fullG: Object.freeze([4500, 5000, 5500]) });
    expect(densityOfBucketfuls(test)).toEqual({
      densityGPerL: 450,
      leastGPerL: 400,
      mostGPerL: 500,
      fills: 3,
      enough: 'fewer-than-five',
    });
  });

  test.each([
    [1, 'fewer-than-five'],
    [4, 'fewer-than-five'],
    [5, 'fewer-than-ten'],
    [9, 'fewer-than-ten'],
    [10, 'sound'],
    [20, 'sound'],
  ])('%s fills: %s', (count, enough) =>
    expect(densityOfBucketfuls({ bucketLitres: 10, emptyG: 0, fullG: fills(count, 4000) })).toMatchObject({
      fills: count,
      enough,
    }),
  );

  test('the order in which they were weighed changes nothing, and the mean lies between the ends', () => {
    const weighed = fc.array(fc.integer({ min: 1000, max: 30_000 }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(weighed, fc.integer({ min: 5, max: 40 }), (fullG, bucketLitres) => {
        const found = densityOfBucketfuls({ bucketLitres, emptyG: 0, fullG });
        expect(densityOfBucketfuls({ bucketLitres, emptyG: 0, fullG: fullG.toReversed() })).toEqual(found);
        expect(found.leastGPerL <= found.densityGPerL && found.densityGPerL <= found.mostGPerL).toBe(true);
        const together = fullG.reduce((sum, massG) => sum + massG, 0) / (bucketLitres * fullG.length);
        expect(Math.abs(found.densityGPerL - together)).toBeLessThanOrEqual(0.5 + 1e-9);
      }),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused wherever it stands', (value) => {
    expect(() => densityOfBucketfuls({ bucketLitres: value, emptyG: 0, fullG: [4000] })).toThrow(RangeError);
    expect(() => densityOfBucketfuls({ bucketLitres: 10, emptyG: 0, fullG: [4000, value] })).toThrow(RangeError);
    if (value !== 0)
      expect(() => densityOfBucketfuls({ bucketLitres: 10, emptyG: value, fullG: [4000] })).toThrow(RangeError);
  });

  test('a bucket no heavier full than empty, no bucket, and one that held next to nothing are refused', () => {
    expect(() => densityOfBucketfuls({ bucketLitres: 10, emptyG: 500, fullG: [500] })).toThrow(RangeError);
    expect(() => densityOfBucketfuls({ bucketLitres: 10, emptyG: 0, fullG: [] })).toThrow(RangeError);
    expect(() => densityOfBucketfuls({ bucketLitres: 10, emptyG: 0, fullG: [4] })).toThrow(RangeError);
  });
});
