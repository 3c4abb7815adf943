import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anySheet, plainGround, plainOrder } from '@/tests/fixtures/sheet-orders';
import { calendarDate } from '../calendar/calendar-date';
import { footprint } from '../ground/footprint';
import { layersOf } from '../trench/layers';
import { usedUpTo } from '../trench/used-up-to';
import { diggingOf } from './sheet-order';
import { worksOfSheet } from './works-of-sheet';

const doneOn = calendarDate('2026-11-09');
const upTo = (done: number) => Array.from({ length: done }, (_, at) => ({ trench: at + 1, doneOn }));

describe('worksOfSheet', () => {
  it('logs two trenches of double digging: dug, manured, fed, strawed', () => {
    const where = { footprint: footprint(60, 200, 120, 120), doneOn };
    const laid = { ...where, incorporated: true, method: null, depthCm: null };
    expect(worksOfSheet(plainOrder, plainGround, upTo(2))).toEqual([
      {
        ...{ ...where, kind: 'dug', method: 'double-digging', depthCm: 50 },
        ...{ materialKey: null, massG: null, ageMonths: null, incorporated: true },
      },
      { ...laid, kind: 'manured', materialKey: 'horse-manure', massG: 7200, ageMonths: 14 },
      { ...laid, kind: 'fed', materialKey: 'hoof-and-horn', massG: 101, ageMonths: null },
      { ...laid, kind: 'strawed', materialKey: 'straw', massG: 720, ageMonths: null },
    ]);
  });

  it('logs nothing where nothing was done', () => expect(worksOfSheet(plainOrder, plainGround, [])).toEqual([]));

  it('logs digging alone where nothing goes in', () => {
    const bare = { ...plainOrder, method: 'single-digging' as const, manure: null, meal: null, strawGPerM2: 0 };
    expect(worksOfSheet(bare, plainGround, upTo(1))).toMatchObject([{ kind: 'dug', depthCm: 25 }]);
  });

  it('leaves a mulch on top and digs nothing', () => {
    const manure = plainOrder.manure && { ...plainOrder.manure, bottomGPerM2: 0 };
    const mulch = { ...plainOrder, method: 'mulch' as const, manure, meal: null };
    const works = worksOfSheet(mulch, plainGround, upTo(1));
    expect(works.map(({ kind, incorporated }) => [kind, incorporated])).toEqual([
      ['manured', false],
      ['strawed', false],
    ]);
  });

  it('weighs what the sheet says was used, to the gram, however far it was followed', () =>
    fc.assert(
      fc.property(anySheet, fc.nat(), ({ order, ground }, some) => {
        const { plan, dressing } = diggingOf(order, ground);
        const done = some % (plan.trenches.length + 1);
        const used = usedUpTo(layersOf(plan, dressing), done);
        const works = worksOfSheet(order, ground, upTo(done));
        const mass = (kind: string) =>
          works.filter((one) => one.kind === kind).reduce((sum, { massG }) => sum + (massG ?? 0), 0);
        expect(mass('manured')).toBe(used.manureBottomG + used.manureTopG);
        expect(mass('strawed')).toBe(used.strawG);
        expect(mass('fed')).toBe(used.meals.reduce((sum, { massG }) => sum + massG, 0));
      }),
    ));
});
