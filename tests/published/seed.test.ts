import { describe, expect, test } from 'vitest';
import { packetWhy } from '@/app/_ui/seed-words';
import { germinationStandardsOf } from '@/lib/domain/catalogue/germination-standards';
import { soilTemperatureOf } from '@/lib/domain/catalogue/soil-temperatures';
import { spacingsOf } from '@/lib/domain/catalogue/spacings';
import { footprint } from '@/lib/domain/ground/footprint';
import { emergence } from '@/lib/domain/seed/emergence';
import { orderList } from '@/lib/domain/seed/order-list';
import { packetState } from '@/lib/domain/seed/packet-state';
import { apartOf, plantsOn } from '@/lib/domain/seed/plants-on';
import { massOfSeeds, seedsInMass } from '@/lib/domain/seed/seed-mass';
import { seedNeed } from '@/lib/domain/seed/seed-need';
import { germinationOf } from '@/lib/domain/seed/seeds-wanted';

// Iowa State University Extension, Life Expectancy of Vegetable Seeds, 1999, after Maynard and Hochmuth, Knott's Handbook: years in
// favourable storage. Good in the last of them, past in the next.
// biome-ignore format: the table's own rows
test.each([
  [1, ['onion', 'parsley', 'parsnip', 'salsify']],
  [2, ['leek', 'pepper', 'sweetcorn']],
  [3, ['asparagus', 'french-bean', 'calabrese', 'carrot', 'celeriac', 'celery', 'chinese-cabbage', 'kohlrabi', 'new-zealand-spinach', 'pea', 'spinach']],
  [4, ['beetroot', 'brussels-sprout', 'winter-cabbage', 'cauliflower', 'chard', 'chicory', 'aubergine', 'florence-fennel', 'kale', 'mustard-greens', 'winter-squash', 'swede', 'tomato', 'turnip']],
  [5, ['cucumber', 'endive', 'melon', 'radish']],
  [6, ['lettuce']],
])('seed that lives %i years', (years, keys) => {
  for (const key of keys) {
    expect([key, packetState(key, 2020, 2020 + years - 1).code]).toEqual([key, 'sound']);
    expect([key, packetState(key, 2020, 2020 + years).code]).toEqual([key, 'test-first']);
    expect([key, packetState(key, 2020, 2020 + years + 1).code]).toEqual([key, 'past']);
    // What the tin says of it, and whether it spares an order.
    const tin = [{ id: 'packet', cropKey: key, variety: null, seeds: 40, packedYear: 2020 }];
    const needs = [{ cropKey: key, variety: null, seeds: 100 }];
    const orderIn = (season: number) => orderList(needs, tin, season)[0]?.toOrder;
    expect([key, orderIn(2020 + years), orderIn(2020 + years + 1)]).toEqual([key, 60, 100]);
    const said = packetWhy(packetState(key, 2020, 2020 + years + 1), 2020 + years + 1, null);
    expect(said).toContain(`it lives about ${years} ${years === 1 ? 'year' : 'years'}, so it is not counted`);
  }
});

// Oregon State University Extension, Soil temperature conditions for vegetable seed germination, 2013, after Harrington: least [°F],
// and the same in °C by arithmetic.
// biome-ignore format: the table's own rows
test.each([
  [35, 1.7, ['lettuce', 'onion', 'parsnip', 'spinach']],
  [40, 4.4, ['beetroot', 'chard', 'winter-cabbage', 'carrot', 'cauliflower', 'parsley', 'pea', 'radish', 'turnip']],
  [50, 10, ['asparagus', 'tomato', 'sweetcorn']],
  [60, 15.6, ['french-bean', 'cucumber', 'aubergine', 'pepper', 'winter-squash']],
])('at least %i °F, %d °C', (leastF, leastC, keys) => {
  for (const key of keys) {
    expect([key, soilTemperatureOf(key)?.leastF]).toEqual([key, leastF]);
    const cold = emergence(key, leastC - 0.2);
    expect(cold.code).toBe('too-cold');
    expect(cold.code === 'too-cold' && Math.abs((cold.leastC ?? 0) - leastC) < 0.06).toBe(true);
  }
});

// Harrington and Minges 1954, in Knott's Handbook, in a copy: days to emerge at 5, 10, 15, 20 and 25 °C; null: none comes up.
test.each([
  ['onion', [31, 13, 7, 5, 4]],
  ['parsnip', [57, 27, 19, 14, 15]],
  ['lettuce', [15, 7, 4, 3, 2]],
  ['spinach', [23, 12, 7, 6, 5]],
  ['carrot', [51, 17, 10, 7, 6]],
  ['pea', [36, 14, 9, 8, 6]],
  ['sweetcorn', [null, 22, 12, 7, 4]],
])('%s emerges in %j days at 5 to 25 °C', (key, printed) => {
  printed.forEach((days, at) => {
    const found = emergence(key, 5 + 5 * at);
    expect(found).toMatchObject(
      days === null ? { code: 'too-cold' } : { code: 'comes-up', leastDays: days, mostDays: days },
    );
  });
});

// As above; at 15 °C the least soil temperature of the other table, 60 °F, speaks against it.
test.each([
  ['french-bean', 11, 8],
  ['cucumber', 6, 4],
])('%s emerges in %i days at 20 °C and %i at 25', (key, at20, at25) => {
  expect(emergence(key, 20)).toMatchObject({ leastDays: at20, mostDays: at20 });
  expect(emergence(key, 25)).toMatchObject({ leastDays: at25, mostDays: at25 });
  for (const cold of [5, 10]) expect(emergence(key, cold).code).toBe('too-cold');
});

describe('the least germination that seed is sold with', () => {
  const apart = { rowsCm: 10, inRowCm: 10 };
  const old = { id: 'old', variety: null, seeds: 100, packedYear: 1990 };

  // European Union, Directive 2002/55/EC, Annex II, as transposed in Germany: Saatgutverordnung, Anlage 3 no. 7.1.
  // biome-ignore format: the table's own rows
  test.each([
    [65, ['welsh-onion', 'leek', 'garlic', 'chives', 'pepper', 'endive', 'chicory', 'globe-artichoke', 'carrot', 'parsley', 'aubergine', 'lambs-lettuce']],
    [70, ['onion', 'shallot', 'celery', 'celeriac', 'asparagus', 'chard', 'beetroot', 'cauliflower', 'florence-fennel', 'radish', 'rhubarb', 'scorzonera']],
    [75, ['kohlrabi', 'kale', 'calabrese', 'winter-cabbage', 'brussels-sprout', 'chinese-cabbage', 'melon', 'courgette', 'lettuce', 'tomato', 'french-bean', 'spinach']],
    [80, ['turnip', 'cucumber', 'winter-squash', 'runner-bean', 'pea', 'broad-bean']],
    [85, ['sweetcorn']],
  ])('European Union: %i %%', (percent, keys) => {
    for (const key of keys) {
      expect([key, germinationOf(key)]).toEqual([key, { percent, source: 'eu-germination' }]);
      // So many are sown for a hundred plants; and seed that came up as the directive asks for counts in full, half as well by half.
      const need = seedNeed({ cropKey: key, footprint: footprint(0, 0, 100, 100), along: 'length', apart, from: 'seed', marginPercent: 0 });
      expect([key, need?.plants, need && 'seeds' in need ? need.seeds : null]).toEqual([key, 100, Math.ceil(10_000 / percent)]);
      const counts = (testedPercent: number) =>
        orderList([{ cropKey: key, variety: null, seeds: 100 }], [{ ...old, cropKey: key, testedPercent }], 2027)[0]?.inHand;
      expect([key, counts(percent), counts(Math.floor(percent / 2))]).toEqual([key, 100, Math.floor((100 * Math.floor(percent / 2)) / percent)]);
    }
  });

  // Where the directive names no species: Canada, Seeds Regulations, Schedule I, Tables XVI to XX; United States, 7 CFR 201.31, in a copy.
  test.each([
    ['parsnip', 60, 'canada-germination'],
    ['swede', 80, 'canada-germination'],
    ['salsify', 75, 'canada-germination'],
    ['butternut', 80, 'canada-germination'],
    ['new-zealand-spinach', 50, 'canada-germination'],
    ['dill', 50, 'canada-germination'],
    ['mustard-greens', 75, 'us-germination'],
    ['pak-choi', 75, 'us-germination'],
    ['tomatillo', 50, 'us-germination'],
  ])('%s: %i %%, %s', (key, percent, source) => expect(germinationOf(key)).toEqual({ percent, source }));

  // The three beside each other: EU / Canada / United States.
  test.each([
    ['carrot', 65, 60, 55],
    ['parsley', 65, 55, 60],
    ['pepper', 65, 65, 55],
    ['celery', 70, 55, 55],
    ['leek', 65, 65, 60],
    ['lettuce', 75, 70, 80],
  ])('%s: %i, %i and %i %%', (key, ...printed) =>
    expect(germinationStandardsOf(key).map(({ leastPercent }) => leastPercent)).toEqual(printed),
  );
});

describe('seeds to the gram', () => {
  // Trade chart, seeds to the ounce, as reprinted; to the gram by arithmetic.
  test.each([
    ['french-bean', 3.5],
    ['beetroot', 53],
    ['calabrese', 317],
    ['winter-cabbage', 300],
    ['carrot', 882],
    ['cauliflower', 353],
    ['cucumber', 35],
    ['endive', 776],
    ['kale', 307],
    ['leek', 388],
    ['swede', 423],
    ['tomato', 388],
    ['lettuce', 882],
    ['onion', 282],
    ['parsley', 529],
    ['pea', 4.2],
    ['pepper', 159],
    ['radish', 88],
    ['spinach', 99],
    ['sweetcorn', 6.2],
    ['turnip', 529],
  ])('%s: %d', (key, perGram) =>
    expect(Math.abs((seedsInMass(key, 100_000)?.seeds ?? 0) / 100 / perGram - 1)).toBeLessThan(0.015),
  );

  // Royal Botanic Gardens, Kew, Seed Information Database, in a copy of 2019: weight of a thousand seeds [g].
  test.each([
    ['chives', 0.99],
    ['celery', 0.3],
    ['runner-bean', 925.2],
    ['broad-bean', 921],
    ['salsify', 13.3],
    ['aubergine', 3.3],
    ['coriander', 10.3],
    ['phacelia', 1.7],
    ['grazing-rye', 17.1],
  ])('a thousand of %s: %d g, and doubtful', (key, thousandG) =>
    expect(massOfSeeds(key, 1_000)).toMatchObject({ massMg: Math.round(thousandG * 1000), isDoubtful: true }),
  );

  // The chart and the collection differ most where the reference says so: parsnip 423 and 250.
  test('parsnip is doubtful', () =>
    expect([seedsInMass('parsnip', 1_000), massOfSeeds('parsnip', 100)?.isDoubtful]).toEqual([
      { seeds: 423, fewest: 250, most: 423 },
      true,
    ]));
});

describe('distances', () => {
  // A square of a hundred feet of row, reckoned row by row on ground ten rows wide.
  const plants = (key: string, account: string) => {
    const spacing = spacingsOf(key).find(({ source }) => source === account);
    if (!spacing) throw new Error(`${account} does not tell of ${key}`);
    const apart = apartOf(spacing);
    return { ...apart, ...plantsOn(footprint(0, 0, apart.rowsCm * 10, 305), apart, 'length') };
  };

  // University of Maine Cooperative Extension, Planting Chart for the Home Vegetable Garden: rows and in the row, the middle of what is
  // printed [cm by arithmetic]; ten feet of row take six to seven plants of asparagus, cabbage, pepper and aubergine at 18 inches.
  test.each([
    ['asparagus', 107, 46, 6],
    ['aubergine', 76, 46, 6],
    ['pepper', 53, 46, 6],
    ['carrot', 38, 6, 50],
    ['beetroot', 38, 6, 50],
    ['maincrop-potato', 84, 25, 12],
    ['tomato', 91, 69, 4],
    ['winter-squash', 213, 183, 1],
  ])('%s: rows %i cm, in the row %i cm, %i on ten feet', (key, rowsCm, inRowCm, inRow) =>
    expect(plants(key, 'maine-planting')).toMatchObject({ rowsCm, inRowCm, inRow, rows: 10 }),
  );

  // Ministry of Agriculture, Allotment and Garden Guide, 1945: parsnips 15 by 6 inches, lettuces 12 by 9 to 12, French beans 24 to 30 by 9.
  test.each([
    ['parsnip', 38, 15],
    ['lettuce', 30, 27],
    ['french-bean', 69, 23],
  ])('%s: rows %i cm, in the row %i cm', (key, rowsCm, inRowCm) =>
    expect(plants(key, 'allotment-guide-distances')).toMatchObject({ rowsCm, inRowCm }),
  );

  // Royal Horticultural Society, onions, grow your own: sets 5 to 10 cm apart, rows 25 to 30 cm.
  test('onion sets', () => expect(plants('onion', 'rhs-onion')).toMatchObject({ rowsCm: 28, inRowCm: 8, inRow: 38 }));
});
