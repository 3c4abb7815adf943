import { describe, expect, it } from 'vitest';
import { crops } from '../catalogue/crops';
import { plantedCrops, spacingsOf } from '../catalogue/spacings';
import { footprint } from '../ground/footprint';
import { seedNeed } from './seed-need';

const ground = { footprint: footprint(0, 0, 120, 360), along: 'length' as const };

describe('what a planting needs', () => {
  it('is seed for its plants, by printed distances and the least that may be sold', () =>
    expect(seedNeed({ cropKey: 'parsnip', ...ground })).toMatchObject({
      from: 'seed',
      rows: 3,
      inRow: 24,
      plants: 72,
      seeds: 150,
      apart: { rowsCm: 38, inRowCm: 15 },
      apartSource: 'allotment-guide-distances',
      germinationPercent: 60,
      germinationSource: 'canada-germination',
      marginPercent: 25,
      mass: { massMg: 355, isDoubtful: true },
    }));

  it('goes by what the grower says first', () =>
    expect(
      seedNeed({
        cropKey: 'parsnip',
        ...ground,
        apart: { rowsCm: 30, inRowCm: 10 },
        germinationPercent: 90,
        marginPercent: 0,
      }),
    ).toMatchObject({ plants: 144, seeds: 160, apartSource: 'own', germinationSource: 'own', marginPercent: 0 }));

  it('is sets, one for each plant, of what is planted; of onions, as is said', () => {
    expect(seedNeed({ cropKey: 'maincrop-potato', ...ground })).toMatchObject({ from: 'sets', sets: 14, plants: 14 });
    expect(seedNeed({ cropKey: 'onion', ...ground, from: 'sets' })).toMatchObject({ from: 'sets', sets: 180 });
    expect(seedNeed({ cropKey: 'onion', ...ground })).toMatchObject({ from: 'seed', seeds: 322 });
  });

  it('is not known where nobody gives distances', () => {
    expect(seedNeed({ cropKey: 'oca', ...ground })).toBeNull();
    expect(seedNeed({ cropKey: 'oca', ...ground, apart: { rowsCm: 60, inRowCm: 45 } })).toMatchObject({
      from: 'sets',
      sets: 16,
      apartSource: 'own',
    });
  });

  it('refuses distances and shares that are none', () => {
    expect(() => seedNeed({ cropKey: 'parsnip', ...ground, apart: { rowsCm: 0, inRowCm: 10 } })).toThrow(RangeError);
    expect(() => seedNeed({ cropKey: 'parsnip', ...ground, germinationPercent: 0 })).toThrow(RangeError);
  });

  it('is found for every crop with distances, and what is planted is a crop', () => {
    const keys = crops.map(({ key }) => key);
    for (const cropKey of keys) {
      const need = seedNeed({ cropKey, ...ground });
      expect([cropKey, need === null]).toEqual([cropKey, spacingsOf(cropKey).length === 0]);
      if (need?.from === 'seed') expect(need.seeds).toBeGreaterThanOrEqual(need.plants);
    }
    expect(plantedCrops.cropKeys.filter((key) => !keys.includes(key))).toEqual([]);
  });
});
