import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cropOf, crops } from '../catalogue/crops';
import { germinationStandards } from '../catalogue/germination-standards';
import { seedLives } from '../catalogue/seed-lives';
import { seedWeights } from '../catalogue/seed-weights';
import { emergenceDays, soilTemperatures } from '../catalogue/soil-temperatures';
import { spacings } from '../catalogue/spacings';
import { massOfSeeds, seedsInMass } from './seed-mass';

describe('the weight of seeds', () => {
  it('is by the first account, between those of all', () =>
    expect(massOfSeeds('onion', 300)).toEqual({
      massMg: 1_064,
      leastMg: 996,
      mostMg: 1_064,
      source: 'olds-chart',
      isDoubtful: false,
    }));

  it('is doubtful where accounts differ by half as much again, and where there is wild seed alone', () => {
    expect(massOfSeeds('parsnip', 100)).toMatchObject({ massMg: 237, mostMg: 400, isDoubtful: true });
    expect(massOfSeeds('broad-bean', 10)).toMatchObject({ massMg: 9_210, isDoubtful: true });
    expect(massOfSeeds('tomato', 100)).toMatchObject({ massMg: 258, leastMg: 258, mostMg: 258 });
  });

  it('is none of none, and unknown where nobody weighed it', () => {
    expect(massOfSeeds('onion', 0)?.massMg).toBe(0);
    expect(massOfSeeds('garlic', 10)).toBeNull();
    expect(seedsInMass('garlic', 1_000)).toBeNull();
  });

  it('is of whole seeds, and seeds of a weight', () => {
    expect(() => massOfSeeds('onion', 1.5)).toThrow(RangeError);
    expect(() => seedsInMass('onion', 0)).toThrow(RangeError);
    expect(seedsInMass('onion', 1_000)).toEqual({ seeds: 282, fewest: 282, most: 301 });
  });

  it('holds the seeds again that it was reckoned for', () => {
    const weighed = crops.map(({ key }) => key).filter((key) => massOfSeeds(key, 1));
    fc.assert(
      fc.property(fc.constantFrom(...weighed), fc.integer({ min: 1, max: 10_000 }), (key, seeds) => {
        const mass = massOfSeeds(key, seeds);
        expect(mass && mass.leastMg <= mass.massMg && mass.massMg <= mass.mostMg).toBe(true);
        expect(seedsInMass(key, mass?.massMg ?? 0)?.seeds).toBeGreaterThanOrEqual(seeds);
      }),
    );
  });
});

it('every row of seed speaks of crops of the catalogue', () => {
  const rows = [spacings, seedWeights, germinationStandards, seedLives, soilTemperatures, emergenceDays].flat();
  for (const key of rows.flatMap(({ cropKeys }) => cropKeys)) expect(cropOf(key)?.key).toBe(key);
  const once = [seedLives, soilTemperatures, emergenceDays];
  for (const table of once) {
    const keys = table.flatMap(({ cropKeys }) => cropKeys);
    expect(new Set(keys).size).toBe(keys.length);
  }
});
