import { describe, expect, it } from 'vitest';
import { mixedYields } from '@/lib/domain/catalogue/published-yields';
import { yieldsSaidOf } from '@/lib/domain/harvest/published-yield';
import { gPerM2Of } from '@/lib/domain/quantity/area-rate';

// University of Maine Cooperative Extension, L. B. Stack, Planting Chart for the Home Vegetable Garden: pounds from ten feet of row, rows
// and plants in inches. What they come to on ten metres of row, and so on the ground of the closest and the widest rows, by hand.
describe('yields of a row', () => {
  // biome-ignore format: one row of the chart a line
  it.each([
    ['carrot', 14.9, 0.305, 0.457],
    ['beetroot', 14.9, 0.305, 0.457],
    ['parsnip', 22.3, 0.457, 0.61],
    ['pea', 14.9, 0.457, 0.914],
    ['courgette', 22.3, 0.914, 0.914],
    ['winter-squash', 14.9, 1.829, 2.438],
    ['turnip', 37.2, 0.305, 0.457],
  ] as const)('%s: %d kg from 10 m', (key, kgPer10M, closeM, wideM) => {
    const [chart] = yieldsSaidOf(key);
    expect(chart?.source).toBe('maine-planting');
    expect(Math.abs((chart?.mostGPerM2 ?? 0) / ((kgPer10M * 100) / closeM) - 1)).toBeLessThan(0.005);
    expect(Math.abs((chart?.leastGPerM2 ?? 0) / ((kgPer10M * 100) / wideM) - 1)).toBeLessThan(0.005);
  });
});

// FAO, EcoCrop database, record 1642: parsnip 26 to 40 t/ha.
it('a field of parsnips yields 2.6 to 4.0 kg on a square metre', () =>
  expect(yieldsSaidOf('parsnip').find(({ source }) => source === 'ecocrop-parsnip')).toMatchObject({
    leastGPerM2: gPerM2Of(26, 't/ha'),
    mostGPerM2: gPerM2Of(40, 't/ha'),
  }));

// Germany, Düngeverordnung, 2017, Anlage 4, Tabelle 4: leek 600 dt/ha, carrots 600 to 900.
it('fields of leeks and carrots yield what the official table reckons with', () => {
  const field = (key: string) => yieldsSaidOf(key).find(({ source }) => source === 'duev-vegetables');
  expect(field('leek')).toMatchObject({ leastGPerM2: 6_000, mostGPerM2: 6_000 });
  expect(field('carrot')).toMatchObject({ leastGPerM2: 6_000, mostGPerM2: 9_000 });
});

// Rutgers New Jersey Agricultural Experiment Station, Monthly Briefing 7(1), September 2012: half a pound on a square foot of mixed crops.
// Trial at Harlow Carr, 1975: weighed crops of 1,435 lb from 250 m².
it('mixed ground yields what is printed, in metric', () => {
  const said = (source: string) => mixedYields.find((one) => one.source === source)?.gPerM2 ?? 0;
  expect(Math.abs(said('rutgers-mixed') - gPerM2Of(50, 'lb/100 sq ft'))).toBeLessThan(5);
  expect(Math.abs(said('harlow-carr') - (1_435 * 453.59237) / 250)).toBeLessThan(10);
});
