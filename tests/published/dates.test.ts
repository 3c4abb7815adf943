import { describe, expect, test } from 'vitest';
import { bestSoilWords, emergenceColumns, emergenceWords, leastSoilWords } from '@/app/_ui/soil-words';
import { type CalendarDate, monthOf } from '@/lib/domain/calendar/calendar-date';
import { referenceFrosts, type Step } from '@/lib/domain/catalogue/windows';
import { type CropWay, windowsOf } from '@/lib/domain/dates/windows-of';

const waysOf = (cropKey: string) => windowsOf(cropKey, 2027, referenceFrosts);
const stepsOf = (ways: readonly CropWay[], steps: readonly Step[]) =>
  ways.flatMap(({ windows }) => windows.filter(({ step }) => steps.includes(step)));
const halfOf = (day: CalendarDate) => `${Number(day.slice(8)) < 15 ? '' : 'mid-'}${monthOf(day)}`;

// Ministry of Agriculture, Allotment and Garden Guide, vol. 1, 1945, as transcribed: what is sown or planted, and from when.
// Sprouts: seedbed, third week of March to the end of April. Leeks: seedbed, middle of March. Parsnips: middle of February to the middle of
// March. Onions: under glass in January. Runner beans: middle of May. French beans in the south: middle of April. Spinach: sown February
// to May; lettuce: March to July.
describe('months of the Ministry’s guide', () => {
  test.each<[string, Step, string, number | null]>([
    ['brussels-sprout', 'seedbed', 'mid-3', 4],
    ['leek', 'seedbed', 'mid-3', null],
    ['parsnip', 'in-place', 'mid-2', 3],
    ['onion', 'under-cover', '1', 1],
    ['runner-bean', 'in-place', 'mid-5', null],
    ['french-bean', 'in-place', 'mid-4', null],
    ['spinach', 'in-place', 'mid-2', 5],
    ['lettuce', 'in-place', 'mid-3', 7],
    ['radish', 'in-place', '3', null],
    ['maincrop-potato', 'plant-out', '4', null],
  ])('%s, %s: from %s', (cropKey, step, from, lastMonth) => {
    const told = stepsOf(waysOf(cropKey), [step]).filter(({ source }) => source === 'allotment-guide-sowing');
    expect(told.map((window) => halfOf(window.from))).toEqual([from]);
    if (lastMonth !== null) expect(told.map(({ to }) => monthOf(to))).toEqual([lastMonth]);
  });

  test('broad beans in November or February, parsley in March or July', () => {
    const months = (cropKey: string) => stepsOf(waysOf(cropKey), ['in-place']).map(({ from }) => monthOf(from));
    expect(months('broad-bean')).toEqual([11, 2]);
    expect(months('parsley')).toEqual([3, 7]);
  });
});

// Royal Horticultural Society, onions, grow your own: sets from the middle of March to the middle of April.
test('onion sets, middle of March to middle of April', () => {
  const sets = waysOf('onion').filter(({ way }) => way === 'sets');
  expect(stepsOf(sets, ['plant-out']).map(({ from, to }) => [from, to])).toEqual([['2027-03-15', '2027-04-15']]);
});

// Usual English practice, no publication: the months in which a crop is in the ground, sown or planted to cleared, at the reference frosts.
// biome-ignore format: the list's own rows
describe('months in the ground, common practice', () => {
  test.each([
    [4, 10, ['summer-cabbage', 'calabrese', 'kohlrabi', 'beetroot']],
    [6, 3, ['winter-cabbage']],
    [9, 5, ['spring-cabbage']],
    [5, 3, ['brussels-sprout', 'celeriac']],
    [4, 11, ['cauliflower']],
    [6, 4, ['purple-sprouting', 'kale', 'leek']],
    [5, 2, ['swede']],
    [3, 11, ['turnip', 'mizuna', 'mustard-greens', 'carrot']],
    [7, 11, ['chinese-cabbage', 'pak-choi']],
    [3, 9, ['radish']],
    [3, 10, ['rocket', 'mustard', 'spring-onion', 'welsh-onion', 'phacelia', 'lettuce']],
    [3, 8, ['pea', 'mangetout', 'onion']],
    [4, 10, ['french-bean', 'maincrop-potato']],
    [5, 10, ['runner-bean', 'florence-fennel', 'courgette', 'winter-squash', 'butternut', 'new-zealand-spinach', 'sweetcorn']],
    [8, 4, ['field-bean', 'winter-vetch', 'clover', 'lambs-lettuce', 'winter-purslane']],
    [1, 7, ['shallot']],
    [10, 7, ['garlic']],
    [2, 3, ['parsnip']],
    [5, 11, ['celery']],
    [4, 9, ['coriander', 'dill']],
    [3, 7, ['early-potato']],
    [6, 10, ['tomato', 'pepper', 'aubergine', 'tomatillo', 'sweet-potato']],
    [5, 9, ['cucumber', 'buckwheat']],
    [6, 9, ['melon']],
    [4, 5, ['chard']],
    [5, 12, ['endive', 'chicory', 'oca']],
    [2, 2, ['jerusalem-artichoke']],
    [4, 3, ['salsify', 'scorzonera']],
    [9, 4, ['grazing-rye']],
  ])('from month %i to month %i', (from, to, cropKeys) => {
    for (const cropKey of cropKeys) {
      const [first] = waysOf(cropKey);
      const into = stepsOf(first ? [first] : [], ['in-place', 'plant-out']).map((window) => window.from).sort()[0];
      const out = stepsOf(first ? [first] : [], ['clear'])[0]?.to;
      expect([cropKey, into && monthOf(into), out && monthOf(out)]).toEqual([cropKey, from, to]);
    }
  });

  test.each([
    ['onion', 'overwintered', 9, 7],
    ['cauliflower', 'winter', 7, 5],
  ])('%s, %s: from month %i to month %i', (cropKey, wanted, from, to) => {
    const way = waysOf(cropKey).filter((one) => one.way === wanted);
    expect(stepsOf(way, ['plant-out']).map((window) => monthOf(window.from))).toEqual([from]);
    expect(stepsOf(way, ['clear']).map((window) => monthOf(window.to))).toEqual([to]);
  });
});

// Oregon State University Extension, Soil temperature conditions for vegetable seed germination, 2013, after Harrington: least and best
// [°F], as the page of dates shows them to whoever reckons so, and the least to the others in °C.
describe('the soil that seed comes up in, as the screen shows it', () => {
  test.each([
    ['lettuce', 35, '1.7', '40 to 80'],
    ['onion', 35, '1.7', '50 to 95'],
    ['parsnip', 35, '1.7', '50 to 70'],
    ['spinach', 35, '1.7', '45 to 75'],
    ['beetroot', 40, '4.4', '50 to 85'],
    ['chard', 40, '4.4', '50 to 85'],
    ['winter-cabbage', 40, '4.4', '45 to 95'],
    ['carrot', 40, '4.4', '45 to 85'],
    ['cauliflower', 40, '4.4', '45 to 85'],
    ['parsley', 40, '4.4', '50 to 85'],
    ['pea', 40, '4.4', '40 to 75'],
    ['radish', 40, '4.4', '45 to 90'],
    ['turnip', 40, '4.4', '60 to 105'],
    ['asparagus', 50, '10', '60 to 85'],
    ['tomato', 50, '10', '60 to 85'],
    ['sweetcorn', 50, '10', '60 to 95'],
    ['french-bean', 60, '15.6', '60 to 85'],
    ['cucumber', 60, '15.6', '60 to 95'],
    ['aubergine', 60, '15.6', '75 to 90'],
    ['pepper', 60, '15.6', '65 to 95'],
  ])('%s: at least %i °F, %s °C', (cropKey, leastF, leastC, best) => {
    expect(leastSoilWords(cropKey, 'imperial')).toBe(`${leastF} °F`);
    expect(leastSoilWords(cropKey, 'metric')).toBe(`${leastC} °C`);
    expect(bestSoilWords(cropKey, 'imperial')).toBe(`${best} °F`);
  });

  // Harrington and Minges, 1954, in Knott's Handbook, in a copy: days at 5, 10, 15, 20 and 25 °C.
  test.each([
    ['onion', ['31', '13', '7', '5', '4']],
    ['parsnip', ['57', '27', '19', '14', '15']],
    ['lettuce', ['15', '7', '4', '3', '2']],
    ['spinach', ['23', '12', '7', '6', '5']],
    ['carrot', ['51', '17', '10', '7', '6']],
    ['pea', ['36', '14', '9', '8', '6']],
    ['french-bean', ['none', 'none', '16', '11', '8']],
    ['sweetcorn', ['none', '22', '12', '7', '4']],
    ['cucumber', ['none', 'none', '13', '6', '4']],
  ])('%s: days to emerge', (cropKey, days) => expect(emergenceColumns(cropKey)).toEqual(days));

  test('in soil of 7 °C, between the columns', () => {
    expect(emergenceWords('parsnip', 7, 'metric')).toBe('up in 27 to 57 days');
    expect(emergenceWords('french-bean', 7, 'metric')).toBe('too cold: wait for 15.6 °C');
    expect(emergenceWords('leek', 7, 'metric')).toBe('not known');
    expect(emergenceWords('turnip', 7, 'metric')).toBe('warm enough; days not known');
  });
});
