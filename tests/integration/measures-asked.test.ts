import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Outcome } from '@/lib/usecases/refusal';
import { askBales } from '@/lib/usecases/measures/ask-bales';
import { askBarrow } from '@/lib/usecases/measures/ask-barrow';
import { askBucket, fillNames } from '@/lib/usecases/measures/ask-bucket';
import { askHeap, heapShapes } from '@/lib/usecases/measures/ask-heap';
import { askJar } from '@/lib/usecases/measures/ask-jar';
import { askUnits, unitKinds } from '@/lib/usecases/measures/ask-units';
import type { Typed } from '@/lib/usecases/measures/fields';

const barrows = { society: 85, own: 85 };
const heap = (typed: Typed) => askHeap(typed, 'metric', barrows);
const value = <T>(outcome: Outcome<T>): T => (outcome.ok ? outcome.value : expect.fail(JSON.stringify(outcome)));
const wrong = (outcome: Outcome<unknown>) =>
  outcome.ok ? [] : outcome.refusals.map(({ code, field }) => [code, field]);

describe('a heap', () => {
  it('is reckoned from its sizes, in whole litres and loads', () => {
    const cone = { shape: 'cone', acrossCm: '2 m', roundCm: '', heightCm: '1 m' };
    expect(value(heap(cone))).toMatchObject({ litres: 1047, loads: 12, ownLoads: null, material: null });
    expect(value(askHeap({ ...cone, material: 'straw' }, 'metric', { society: 85, own: 100 }))).toMatchObject({
      loads: 12,
      ownLoads: 10,
      material: { key: 'straw' },
    });
    const round = value(heap({ shape: 'cone', roundCm: '6.2832 m', heightCm: '100 cm' }));
    expect([round.roundCm, round.litres]).toEqual([628.32, 1047]);
  });

  it('takes bare numbers in the member’s own units', () => {
    const box = { shape: 'box', lengthCm: '10', widthCm: '5', heightCm: '2' };
    expect(value(askHeap(box, 'imperial', barrows)).litres).toBe(2831);
    expect(value(heap(box)).litres).toBe(100_000);
  });

  it('is refused beside the field that cannot be', () => {
    const box = { shape: 'box', lengthCm: '2 m', widthCm: '1 m', heightCm: '1 m' };
    expect(wrong(heap({ ...box, shape: 'pyramid' }))).toEqual([['choice-wanted', 'shape']]);
    expect(wrong(heap({ ...box, heightCm: '0', widthCm: '-1 m' }))).toEqual([
      ['length-wanted', 'widthCm'],
      ['length-wanted', 'heightCm'],
    ]);
    expect(wrong(heap({ ...box, material: 'gold' }))).toEqual([['choice-wanted', 'material']]);
    expect(wrong(heap({ ...box, shape: 'ridge', widthCm: '3 m' }))).toEqual([['ridge-too-short', 'lengthCm']]);
    expect(wrong(heap({ ...box, shape: 'flat-topped', topLengthCm: '3 m', topWidthCm: '2 m' }))).toEqual([
      ['top-larger-than-foot', 'topLengthCm'],
      ['top-larger-than-foot', 'topWidthCm'],
    ]);
    expect(wrong(heap({ ...box, shape: 'trailer', topLengthCm: '0', topWidthCm: '0' }))).toEqual([
      ['length-wanted', 'sidesCm'],
    ]);
    for (const [acrossCm, roundCm] of [
      ['', ''],
      ['2 m', '6 m'],
    ] as const)
      expect(wrong(heap({ shape: 'cone', acrossCm, roundCm, heightCm: '1 m' }))).toEqual([
        ['one-of-two', 'acrossCm'],
        ['one-of-two', 'roundCm'],
      ]);
  });
});

describe('bales', () => {
  const ground = { bale: 'small', rate: '500 g/m2', area: '120 m2' };

  it('go by the ground or the ground by them, with the range that bales are met at', () => {
    expect(value(askBales(ground, 'metric'))).toMatchObject({
      baleG: 13_000,
      isSaid: false,
      rateGPerM2: 500,
      found: { of: 'ground', areaCm2: 1_200_000, bales: { usual: 5, least: 5, most: 5 } },
    });
    expect(value(askBales({ bale: 'small', rate: '500', count: '5' }, 'metric')).found).toEqual({
      of: 'bales',
      bales: 5,
      areaCm2: { usual: 1_300_000, least: 1_200_000, most: 1_400_000 },
    });
  });

  it('follow from how thick the straw lies, and from what one was found to weigh', () => {
    const thick = { bale: 'small', thickness: '5', area: '10 m2', baleWeight: '10 kg' };
    expect(value(askBales(thick, 'metric'))).toMatchObject({
      isSaid: true,
      rateGPerM2: 3500,
      thicknessCm: 5,
      found: { bales: { usual: 4, least: 4, most: 4 } },
    });
  });

  it('want one of each two', () => {
    expect(wrong(askBales({ ...ground, thickness: '5 cm' }, 'metric'))).toEqual([
      ['one-of-two', 'rate'],
      ['one-of-two', 'thickness'],
    ]);
    expect(wrong(askBales({ bale: 'small', rate: '500' }, 'metric'))).toEqual([
      ['one-of-two', 'area'],
      ['one-of-two', 'count'],
    ]);
    expect(wrong(askBales({ ...ground, rate: '0', baleWeight: '0' }, 'metric'))).toEqual([
      ['bale-mass-wanted', 'baleWeight'],
      ['rate-wanted', 'rate'],
    ]);
  });
});

describe('a bucket test', () => {
  const fills = (massKg: string, count: number) =>
    Object.fromEntries(fillNames.slice(0, count).map((name) => [name, massKg]));

  it('says what a litre weighs, and whether the fills were enough', () => {
    const five = value(askBucket({ bucket: '20', empty: '', ...fills('19.48', 5) }, 'metric')).density;
    expect(five).toEqual({ densityGPerL: 974, leastGPerL: 974, mostGPerL: 974, fills: 5, enough: 'fewer-than-ten' });
    expect(value(askBucket({ bucket: '2 gal', empty: '1 lb', ...fills('9', 10) }, 'imperial')).density).toMatchObject({
      densityGPerL: 399,
      enough: 'sound',
    });
    // A fill that was not made is none, wherever its line stands.
    expect(value(askBucket({ bucket: '10', fill3: '5', fill9: '7' }, 'metric')).density).toMatchObject({
      densityGPerL: 600,
      leastGPerL: 500,
      mostGPerL: 700,
      enough: 'fewer-than-five',
    });
  });

  it('is refused beside each fill that cannot be', () => {
    expect(wrong(askBucket({ bucket: '0', fill1: 'heavy', fill2: '5' }, 'metric'))).toEqual([
      ['volume-wanted', 'bucket'],
      ['mass-wanted', 'fill1'],
    ]);
    expect(wrong(askBucket({ bucket: '10', empty: '1', fill1: '1', fill2: '0.9', fill3: '5' }, 'metric'))).toEqual([
      ['lighter-than-empty', 'fill1'],
      ['lighter-than-empty', 'fill2'],
    ]);
    expect(wrong(askBucket({ bucket: '10' }, 'metric'))).toEqual([['no-bucketful', 'fill1']]);
    expect(wrong(askBucket({ bucket: '1000', fill1: '1 g' }, 'metric'))).toEqual([['weighs-nothing', 'fill1']]);
  });
});

describe('a barrow and a jar', () => {
  it('hold what was counted and weighed', () => {
    expect(value(askBarrow({ bucket: '10', struck: '8.5', heaped: '11' }, 'metric')).barrow).toEqual({
      struckLitres: 85,
      heaped: { litres: 110, overPercent: 29 },
    });
    const jar = { meal: 'hoof-and-horn', jarMl: '370', jarWeighedG: '225', area: '10 m2', rate: '100' };
    expect(value(askJar(jar, 'metric'))).toMatchObject({
      jar: { basis: 'weighed', jarG: 225 },
      dressing: { areaCm2: 100_000, rateGPerM2: 100, massG: 1000 },
    });
    expect(value(askJar({ ...jar, jarWeighedG: '', area: '' }, 'metric'))).toMatchObject({
      jar: { basis: 'estimated', jarG: 228, leastG: 218, mostG: 237 },
      dressing: null,
    });
    expect(value(askJar({ ...jar, meal: 'wood-ash', jarWeighedG: '' }, 'metric')).jar).toEqual({ basis: 'not-known' });
  });

  it('are refused beside their fields', () => {
    expect(wrong(askBarrow({ bucket: '10', struck: '8', heaped: '7' }, 'metric'))).toEqual([
      ['heaped-below-struck', 'heaped'],
    ]);
    expect(wrong(askBarrow({ bucket: '0.1', struck: '1' }, 'metric'))).toEqual([['holds-nothing', 'struck']]);
    expect(wrong(askJar({ meal: 'sand', jarMl: '49', jarWeighedG: '10001' }, 'metric'))).toEqual([
      ['choice-wanted', 'meal'],
      ['jar-size-wanted', 'jarMl'],
      ['jar-mass-wanted', 'jarWeighedG'],
    ]);
  });
});

describe('units', () => {
  it.each([
    [{ of: 'length', length: '12 ft 6 in' }, 'm', 3.81],
    [{ of: 'area', area: '10 rods' }, 'm²', 252.9285],
    [{ of: 'weight', weight: '3 cwt' }, 'kg', 152.407],
    [{ of: 'rate', rate: '4', unit: 'oz/sq yd' }, 'g/m²', 135.62299],
  ] as const)('%j is said in %s', (typed, unit, amount) => {
    const found = value(askUnits(typed, 'metric')).amounts.find((one) => one.unit === unit);
    expect(found?.amount).toBeCloseTo(amount, 5);
  });

  it('refuse what they are not', () => {
    expect(wrong(askUnits({ of: 'volume' }, 'metric'))).toEqual([['choice-wanted', 'of']]);
    expect(wrong(askUnits({ of: 'rate', rate: '0', unit: 'stone' }, 'metric'))).toEqual([
      ['number-wanted', 'rate'],
      ['choice-wanted', 'unit'],
    ]);
  });
});

describe('whatever is typed', () => {
  const odd = fc.oneof(fc.constantFrom('', '0', '-1', '1e308', 'NaN', '999999 t', '1000 m'), fc.string());
  /** Mostly what belongs there, down to the least and up to the most. */
  const mostly = (...fitting: readonly string[]) =>
    fc.oneof({ arbitrary: fc.constantFrom(...fitting), weight: 9 }, { arbitrary: odd, weight: 1 });
  const length = () => mostly('3 m', '12 ft 6 in', '1 mm', '1000 m', '2.5', '20');
  const either = (...fitting: readonly string[]) => mostly(...fitting, ...fitting.map(() => ''));
  const fields = {
    shape: fc.constantFrom(...heapShapes),
    ...{ lengthCm: length(), widthCm: length(), heightCm: length(), acrossCm: either('2 m'), roundCm: either('6 m') },
    ...{ topLengthCm: mostly('0', '1 mm', '3 m'), topWidthCm: mostly('0', '1 m'), sidesCm: length() },
    bale: fc.constantFrom('small', 'big-8-4-4', 'round-4'),
    ...{ baleWeight: either('1 kg', '2 t', '28 lb'), rate: either('1 g/m2', '500', '100 kg/m2', '4 oz', '9999999') },
    ...{ thickness: either('1 mm', '5 cm', '100 cm'), area: either('0.001 m2', '10 rods', '999999 m2') },
    ...{ count: either('1', '9999'), bucket: mostly('0.1 L', '10', '2 gal', '1000000 L') },
    ...{ empty: either('600 g', '1 lb'), struck: mostly('8', '0.0001', '9999999'), heaped: either('11', '9999999') },
    meal: fc.constantFrom('hoof-and-horn', 'wood-ash'),
    ...{ jarMl: mostly('370', '50', '5 L'), jarWeighedG: either('225', '1 g', '10 kg') },
    of: fc.constantFrom(...unitKinds),
    ...{ length: length(), weight: mostly('1 g', '3 cwt', '1000 t'), unit: fc.constantFrom('oz/sq yd', 'tons/acre') },
    ...Object.fromEntries(fillNames.map((name) => [name, either('5 kg', '1 g', '1000 t')])),
  };
  const numbers = (found: unknown): number[] => {
    if (typeof found === 'number') return [found];
    return found !== null && typeof found === 'object' ? Object.values(found).flatMap(numbers) : [];
  };

  it.each([heap, askBales, askBucket, askBarrow, askJar, askUnits].map((ask, nth) => [nth, ask] as const))(
    'is answered with finite numbers from 0, or refused beside fields that are there: %i',
    (_, ask) => {
      let answered = 0;
      fc.assert(
        fc.property(fc.record(fields), fc.constantFrom('metric' as const, 'imperial' as const), (typed, units) => {
          const outcome = ask(typed, units);
          answered += Number(outcome.ok);
          if (outcome.ok)
            expect(numbers(outcome.value).filter((one) => !(Number.isFinite(one) && one >= 0))).toEqual([]);
          else expect(outcome.refusals.filter(({ field }) => !(field && field in typed))).toEqual([]);
        }),
        { numRuns: 1500 },
      );
      expect(answered).toBeGreaterThan(30);
    },
  );
});
