import { describe, expect, test } from 'vitest';
import { energyLimits, longestSpellMinutes, type PaceKey, paceOf } from '@/lib/domain/catalogue/paces';
import { diggingMinutes } from '@/lib/domain/exertion/digging-minutes';
import { energyKcalPerMin } from '@/lib/domain/exertion/energy';
import { planDays } from '@/lib/domain/exertion/plan-days';
import { restMinutes } from '@/lib/domain/exertion/rest';
import { type Digger, sessionOf } from '@/lib/domain/exertion/session';
import { spellOf } from '@/lib/domain/exertion/spell';

const digger: Digger = {
  ageBand: 'under-60',
  pace: 'steady',
  bodyMassKg: 70,
  sessionMinutes: 60,
  limitKcalPerMin: null,
};

describe('rest', () => {
  // The Engineering Toolbox, Humans: Required Rest Time (undated), its one example, answer printed: a task of 600 W, a
  // limit of 350 W, rest at 100 W, 60 minutes. The formula does not mind the unit.
  test('600 W against 350 W: 30 minutes in the hour', () => expect(restMinutes(60, 600, 350, 100)).toBe(30));

  // Murrell 1965, R = T (W − S) ÷ (W − 1.5), in lecture problems at slideplayer.com, no. 12156508 (undated). The figures given
  // were read there; the answers were not visible and are derived.
  test('6 kcal/min against 4: 26.67 minutes; 10 against 4: 42.35 minutes', () => {
    expect(restMinutes(60, 6, 4)).toBeCloseTo(26.67, 2);
    expect(restMinutes(60, 10, 4)).toBeCloseTo(42.35, 2);
  });

  // Derived: METs of the 2011 Compendium for 70 kg, against the 5 kcal/min of NIOSH, Work Practices Guide, 1981.
  test.each<[PaceKey, number]>([
    ['steady', 14.59],
    ['brisk', 33.93],
  ])('digging, %s, 70 kg: %s minutes in the hour', (pace, minutes) => {
    const { restMin } = sessionOf({ ...digger, pace, limitKcalPerMin: energyLimits.most.kcalPerMin }, 0);
    expect(restMin).toBeCloseTo(minutes, 2);
  });
});

describe('energy', () => {
  // American Council on Exercise, What formula for calculating energy expenditure (undated), worked example: 68 kg at 10 METs.
  test('68 kg at 10 METs: 11.9 kcal a minute, 357 in half an hour', () => {
    expect(energyKcalPerMin(10, 68)).toBeCloseTo(11.9, 9);
    expect(energyKcalPerMin(10, 68) * 30).toBeCloseTo(357, 9);
  });

  // Ainsworth et al., 2011 Compendium of Physical Activities, lawn and garden, by code and text. 3.5 for light to moderate
  // digging also in Postgraduate Medical Journal, Table 1, activities at 3.5 METs and above, after the same.
  test.each<[PaceKey, string, number]>([
    ['gentle', '08045', 3.5],
    ['steady', '08050', 5],
    ['brisk', '08052', 7.8],
  ])('digging, %s, is %s at %s METs', (pace, code, met) =>
    expect(paceOf(pace).exertion).toMatchObject({ code, met, edition: 2011 }),
  );

  // Derived from the two above.
  test('70 kg: 6.125 kcal a minute at a steady pace, 9.555 at a brisk one', () => {
    expect(energyKcalPerMin(paceOf('steady').exertion.met, 70)).toBeCloseTo(6.125, 9);
    expect(energyKcalPerMin(paceOf('brisk').exertion.met, 70)).toBeCloseTo(9.555, 9);
  });

  // Herrmann et al., 2024 Adult Compendium of Physical Activities, abstract: for 19 to 59 years, those of 60 taken out.
  test('nobody of sixty, and nobody who has not said, is given them', () => {
    expect(paceOf('steady').exertion).toMatchObject({ leastAge: 19, mostAge: 59 });
    for (const ageBand of ['60-or-over', 'not-said'] as const) {
      const plan = planDays({
        work: { kind: 'minutes', minutes: 240 },
        digger: { ...digger, ageBand },
        sessionsPerWeek: 3,
        daysLeft: 60,
        soilMassG: null,
      });
      expect(plan.basis.code).toBe('by-the-clock');
      expect(plan.notes).toContain('no-energy-figure');
    }
  });
});

describe('pace', () => {
  // International Institute of Rural Reconstruction, Bio-intensive Approach to Small-scale Household Food Production, 1993:
  // two to six hours for 9 m², the first time; so 1.5 to 4.5 m² an hour.
  test('9 m² two spits deep take two to six hours', () => {
    expect(diggingMinutes(90_000, 'double-digging', 'brisk') / 60).toBeCloseTo(2, 9);
    expect(diggingMinutes(90_000, 'double-digging', 'gentle') / 60).toBeCloseTo(6, 9);
    expect(diggingMinutes(15_000, 'double-digging', 'gentle')).toBeCloseTo(60, 9);
    expect(diggingMinutes(45_000, 'double-digging', 'brisk')).toBeCloseTo(60, 9);
  });

  // J. Jeavons, How to Grow More Vegetables: two to six hours for 100 square feet, 9.29 m², the first time.
  test('so do 100 square feet, within a quarter of an hour', () => {
    expect(Math.abs(diggingMinutes(92_903, 'double-digging', 'brisk') - 120)).toBeLessThan(15);
    expect(Math.abs(diggingMinutes(92_903, 'double-digging', 'gentle') - 360)).toBeLessThan(15);
  });

  // Ministry of Agriculture, Dig for Victory Leaflet No. 20 (New Series), How to Dig: half an hour to an hour for a start.
  test('by the clock, nobody starts with more than half an hour or goes on with more than an hour', () => {
    const old: Digger = { ...digger, ageBand: '60-or-over', sessionMinutes: 480 };
    expect([sessionOf(old, 0).totalMin, sessionOf(old, 1).totalMin]).toEqual([30, 60]);
  });

  // Canadian Centre for Occupational Health and Safety, Shovelling (undated, as relayed): 15 minutes at a time.
  test('nobody digs longer than a quarter of an hour without a pause', () => {
    for (const pace of ['gentle', 'steady', 'brisk'] as const)
      for (const sessionMinutes of [30, 60, 120, 480]) {
        const spell = spellOf(sessionOf({ ...digger, pace, sessionMinutes }, 0));
        expect(spell.diggingMin).toBeLessThanOrEqual(15);
      }
    expect(longestSpellMinutes.value).toBe(15);
  });
});
