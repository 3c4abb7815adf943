import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anySheet, plainGround, plainOrder } from '@/tests/fixtures/sheet-orders';
import { addDays, calendarDate } from '../calendar/calendar-date';
import { areaCm2, footprint, overlap } from '../ground/footprint';
import { dugPieces } from './done-ground';
import { diggingOf } from './sheet-order';

const monday = calendarDate('2026-11-09');
const tuesday = calendarDate('2026-11-10');
const { plan } = diggingOf(plainOrder, plainGround);
const on = (doneOn: typeof monday, ...trenches: number[]) => trenches.map((trench) => ({ trench, doneOn }));

describe('dugPieces', () => {
  it('is nothing where nothing was done', () => expect(dugPieces(plan, plainGround, [])).toEqual([]));

  it('joins what was done side by side on one day, where the ground lies on its plot', () =>
    expect(dugPieces(plan, plainGround, [...on(monday, 2, 1), ...on(tuesday, 3)])).toEqual([
      { footprint: footprint(60, 200, 120, 120), doneOn: monday, trenches: [1, 2] },
      { footprint: footprint(60, 320, 120, 60), doneOn: tuesday, trenches: [3] },
    ]));

  it('is the whole ground when all was done on one day', () =>
    expect(dugPieces(plan, plainGround, on(monday, 1, 2, 3, 4, 5, 6))).toEqual([
      { footprint: plainGround, doneOn: monday, trenches: [1, 2, 3, 4, 5, 6] },
    ]));

  it('keeps the two halves apart', () => {
    const halves = diggingOf({ ...plainOrder, layout: 'two-halves' }, plainGround).plan;
    expect(dugPieces(halves, plainGround, on(monday, 1, 2, 3, 4, 5, 6, 7)).map((one) => one.footprint)).toEqual([
      footprint(60, 200, 60, 360),
      footprint(120, 500, 60, 60),
    ]);
  });

  it('refuses a trench that is none, or ticked twice', () => {
    for (const ticks of [on(monday, 7), on(monday, 0), [...on(monday, 1), ...on(tuesday, 1)]])
      expect(() => dugPieces(plan, plainGround, ticks)).toThrow(RangeError);
  });

  it('covers the trenches ticked and nothing else, whatever was ticked when', () =>
    fc.assert(
      fc.property(anySheet, fc.infiniteStream(fc.nat(3)), ({ order, ground }, chance) => {
        const { plan: any } = diggingOf(order, ground);
        const ticks = any.trenches.flatMap(({ number }) => {
          const day = chance.next().value ?? 0;
          return day === 3 ? [] : [{ trench: number, doneOn: addDays(monday, day) }];
        });
        const pieces = dugPieces(any, ground, ticks);
        const done = any.trenches.filter(({ number }) => ticks.some(({ trench }) => trench === number));
        const sum = (areas: number[]) => areas.reduce((total, area) => total + area, 0);
        expect(sum(pieces.map((one) => areaCm2(one.footprint)))).toBe(sum(done.map((one) => areaCm2(one.footprint))));
        for (const { footprint: piece, trenches } of pieces) {
          expect(overlap(piece, ground)).toEqual(piece);
          const own = any.trenches.filter(({ number }) => trenches.includes(number));
          const shared = own.map((one) => ({
            ...one.footprint,
            xCm: one.footprint.xCm + ground.xCm,
            yCm: one.footprint.yCm + ground.yCm,
          }));
          expect(shared.map((one) => overlap(one, piece))).toEqual(shared);
        }
      }),
    ));
});
