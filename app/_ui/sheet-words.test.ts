import { describe, expect, test } from 'vitest';
import { plainGround, plainOrder } from '@/tests/fixtures/sheet-orders';
import { calendarDate } from '@/lib/domain/calendar/calendar-date';
import { portionOf } from '@/lib/domain/sheet/portion';
import { figuresOf } from '@/lib/domain/sheet/sheet-figures';
import type { SheetOrder } from '@/lib/domain/sheet/sheet-order';
import { stagesOf } from '@/lib/domain/trench/stages';
import { inTimeWords, portionWords, sessionWords } from './pace-words';
import { stepWords } from './sheet-steps';
import {
  barrowWords,
  limesWithManure,
  litres,
  loadsOf,
  mealAmount,
  soilVolume,
  soilWeight,
  spanWords,
  timesWords,
  trenchesWords,
} from './sheet-words';

const figures = figuresOf(plainOrder, plainGround);
const bare: SheetOrder = { ...plainOrder, manure: null, meal: null, strawGPerM2: 0, springFinishCm: null };

describe('amounts', () => {
  test('are told as finely as they are poured', () => {
    expect([litres(5400), litres(54_000), litres(0)]).toEqual(['5.4 L', '54 L', '0 L']);
    expect([soilVolume(180_000), soilVolume(1_080_000)]).toEqual(['180 L', '1.1 m³']);
    expect(soilWeight({ least: 196_200, most: 1_237_000 }, 'metric')).toBe('200 kg to 1.2 t');
    expect(soilWeight(null, 'metric')).toBe('its weight not known');
    expect([loadsOf(1), loadsOf(2.34), loadsOf(0.01)]).toEqual(['1 load', '2.3 loads', 'under 0.1 of a load']);
    expect([timesWords(1), timesWords(2.04), timesWords(4.72), timesWords(0.01), timesWords(0)]).toEqual([
      'once',
      'twice',
      '4.7 times',
      'under 0.1 times',
      '0 times',
    ]);
  });

  test('are ranges where their ends differ', () => {
    expect(spanWords({ least: 3, most: 4 }, String)).toBe('3 to 4');
    expect(spanWords({ least: 3, most: 3 }, String)).toBe('3');
    expect(spanWords(null, String)).toBe('not known');
  });

  test('of meal are by the jar, and by weight where no jar is known', () => {
    expect(mealAmount({ massG: 57, jars: 57 / 228 }, 'metric')).toBe('¼ jar (57 g)');
    expect(mealAmount({ massG: 57, jars: null }, 'metric')).toBe('57 g');
    expect(mealAmount({ massG: 0, jars: 0 }, 'metric')).toBe('0 g');
  });

  test('count trenches, or strips', () => {
    expect(trenchesWords(plainOrder, 1)).toBe('1 trench');
    expect(trenchesWords({ method: 'mulch' }, 3)).toBe('3 strips');
  });
});

describe('the barrow', () => {
  const [first, second] = figures.layers.trenches;
  if (!first || !second) throw new Error('no trench');
  const after = (number: number, leftMl: number) => ({ ...second, barrow: { number, leftMl } });

  test('is fetched first, drawn on, and fetched again', () => {
    expect(barrowWords({ number: 0, leftMl: 0 }, first)).toBe('Fetch the first barrow: 76 L left in it afterwards.');
    expect(barrowWords(first.barrow, second)).toBe('From the first barrow: 67 L left in it afterwards.');
    expect(barrowWords({ number: 1, leftMl: 4000 }, after(2, 80_000))).toBe(
      'The 4 L left in the first barrow, then fetch the second barrow: 80 L left in it afterwards.',
    );
  });

  test('is emptied, and several may go into one trench', () => {
    expect(barrowWords({ number: 1, leftMl: 9000 }, after(1, 0))).toBe('From the first barrow: empty afterwards.');
    expect(barrowWords({ number: 0, leftMl: 0 }, after(12, 5000))).toBe(
      'Fetch 12 barrows: in the 12th barrow, 5 L left in it afterwards.',
    );
  });
});

describe('steps', () => {
  test('of every stage say what is done, with the amounts of their trench', () => {
    for (const order of [plainOrder, bare, { ...plainOrder, layout: 'two-halves' as const }]) {
      const told = { order, figures: figuresOf(order, plainGround), units: 'metric' as const };
      for (const { code, trench } of stagesOf(told.figures.digging)) {
        const { title, how } = stepWords(code, trench ?? 6, told);
        expect(title).toMatch(/^[A-Z]/);
        expect(how).toMatch(/\.$/);
        expect(how).not.toMatch(/undefined|NaN|null| {2}|\.\./);
      }
    }
  });

  test('name what goes into the bottom, and what through the top', () => {
    const told = { order: plainOrder, figures, units: 'metric' as const };
    expect(stepWords('fork-bottom', 1, told).how).toContain(
      'Fork in ¼ jar (50 g) of hoof and horn. Spread 5.4 L of manure over it.',
    );
    expect(stepWords('turn-next', 1, told).how).toContain('Mix 3.6 L of manure through it');
    expect(stepWords('open-first', 1, told).how).toContain('Wheel it to the far end, 3 barrows');
    expect(stepWords('spring-finish', 6, told).how).toContain('fold in the top 8 cm');
  });

  test('of a single trench put its own soil back', () => {
    const one = { ...plainGround, lengthCm: 60 };
    const told = { order: bare, figures: figuresOf(bare, one), units: 'metric' as const };
    expect(stepWords('open-first', 1, told).how).toContain('goes back where it came from');
    expect(stepWords('fill-last', 1, told).how).toBe('Put its own soil back.');
  });
});

describe('pace', () => {
  const digger = { ageBand: 'under-60', pace: 'steady', bodyMassKg: 70, limitKcalPerMin: null } as const;
  const portion = (sessionMinutes: number, day = '2026-11-09') => {
    const pace = {
      digger: { ...digger, sessionMinutes },
      sessionsPerWeek: 3,
      from: plainOrder.from,
      until: plainOrder.until,
    };
    const found = portionOf(figures.digging.plan, [], pace, calendarDate(day), null);
    if (!found) throw new Error('nothing to do');
    return found;
  };

  test('tells whole trenches, or the beginning of one', () => {
    expect(portionWords(portion(90), plainOrder)).toBe('trenches 1 and 2');
    expect(portionWords(portion(45), plainOrder)).toBe('trench 1');
    expect(portionWords(portion(20), plainOrder)).toBe('begin trench 1: 10 of its 20 minutes');
    expect(portionWords(portion(240), plainOrder)).toBe('trenches 1 to 6');
  });

  test('tells a session by the watch', () =>
    expect(sessionWords(portion(90).plan.firstSession, plainOrder)).toBe(
      '4 times 12 min of digging, then 10 min of rest',
    ));

  test('tells days needed against days left', () => {
    const told = (day: string, minutes = 90) => inTimeWords(portion(minutes, day), '1 December');
    expect(told('2026-11-09')).toBe('3 sessions, 5 days from first to last; 23 days are left until 1 December.');
    expect(told('2026-11-29')).toContain('3 days are left until 1 December: 2 too few. 5 sessions a week would do.');
    expect(told('2026-12-01')).toContain('1 day is left until 1 December: 4 too few. Ask for help');
    expect(told('2026-12-02')).toContain('The last day for it was 1 December');
  });
});

test('a meal that limes does not go with manure', () => {
  expect(limesWithManure(plainOrder)).toBe(false);
  const ash = plainOrder.meal && { ...plainOrder.meal, key: 'wood-ash' };
  expect(limesWithManure({ ...plainOrder, meal: ash })).toBe(true);
  expect(limesWithManure({ ...plainOrder, meal: ash, manure: null })).toBe(false);
});
