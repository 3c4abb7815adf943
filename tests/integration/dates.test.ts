import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { db } from '@/lib/data/db';
import { openScopeOfMember } from '@/lib/data/scope';
import { holdingsOfMember } from '@/lib/data/holding';
import { type CalendarDate, calendarDate } from '@/lib/domain/calendar/calendar-date';
import { datesOfDates } from '@/lib/usecases/dates/dates-dates';
import { type DatesDue, dueOfDates } from '@/lib/usecases/dates/due-dates';
import { readCropDates } from '@/lib/usecases/dates/read-crop-dates';
import { readDates } from '@/lib/usecases/dates/read-dates';
import { recordDay } from '@/lib/usecases/dates/record-day';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { readWeek } from '@/lib/usecases/week/read-week';
import { NotFound } from '@/lib/usecases/refusal';
import { changeSetting } from '@/lib/usecases/settings/settings';
import { makeSheet } from '@/lib/usecases/sheets/make-sheet';
import {
  done,
  makeBed,
  makeMember,
  makePlot,
  makeSociety,
  once,
  refusedWith,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

// The clock that the use-cases read, moved by hand through the year.
const clock = vi.hoisted(() => ({ at: new Date('2026-11-28T08:00:00Z') }));
vi.mock('@/lib/platform/clock', async (original) => {
  const real = await original<typeof import('@/lib/platform/clock')>();
  const now = () => clock.at;
  return { ...real, now, todayIn: (timeZone: string) => real.dayIn(timeZone, clock.at) };
});
const morning = (day: string) => void (clock.at = new Date(`${day}T08:00:00Z`));
const today = (): CalendarDate => calendarDate(clock.at.toISOString().slice(0, 10));

let society: TestSociety;
let holder: TestMember;
let stranger: TestMember;
let beds: string[];
let number = 0;

beforeAll(async () => {
  society = await makeSociety();
  stranger = await makeMember(society, { name: 'Zeb' });
});

beforeEach(async () => {
  morning('2026-11-28');
  number += 1;
  holder = await makeMember(society, { name: `Ada ${number}` });
  const plot = await makePlot(society, `T${number}`, [holder.id]);
  beds = [(await makeBed(society, plot)).id, (await makeBed(society, plot, 1)).id];
});

const record = async (cropKey: string, season: number, more: object = {}, bedId = beds[0] ?? '') => {
  const { plantingId } = await done(
    recordPlanting.run(holder.caller, once({ bedId, cropKey, season: String(season), ...more })),
  );
  return plantingId;
};
const say = (plantingId: string, what: string, onDay: string, who = holder) =>
  recordDay.run(who.caller, once({ plantingId, what, onDay }));
const read = () => readDates.run(holder.caller, {});
const context = async () => {
  const scope = await openScopeOfMember(db(), holder.id);
  const holdings = await holdingsOfMember(db(), scope, holder.id, today());
  return [{ db: db(), scope, today: today() }, holdings] as const;
};
const due = async () => dueOfDates(...(await context()));
const dated = async () => datesOfDates(...(await context()));
const codes = (all: readonly DatesDue[]) =>
  all.map((one) => (one.code === 'sow' ? `${one.step.step} ${one.cropKey} ${one.daysLeft}` : one.code));

describe('what is in its window', () => {
  it('stands on the page of the week, till the day is recorded', async () => {
    const garlic = await record('garlic', 2027);
    expect(codes(await due())).toEqual(['plant-out garlic 2']);
    const week = await readWeek.run(holder.caller, {});
    expect(week.due.filter(({ code }) => code === 'sow')).toHaveLength(1);
    await done(say(garlic, 'planted', '2026-11-28'));
    expect(await due()).toEqual([]);
    expect((await read()).lines).toMatchObject([{ cropKey: 'garlic', isToCome: false, steps: [] }]);
    expect(await db().planting.findUniqueOrThrow({ where: { id: garlic } })).toMatchObject({
      firstSeason: 2027,
      lastSeason: 2027,
      planned: true,
      plantedOn: new Date('2026-11-28'),
    });
  });

  it('is one line for a crop, however many beds, and one for all that have time', async () => {
    await record('garlic', 2027);
    await record('garlic', 2027, {}, beds[1]);
    expect(await due()).toMatchObject([{ code: 'sow', plantings: [{ bedName: '1' }, { bedName: '2' }] }]);
    morning('2027-03-18');
    const more = ['carrot', 'beetroot', 'spinach'].map((cropKey, at) =>
      record(cropKey, 2027, { partFrom: `${at * 0.5} m`, partLength: '0.5 m' }, beds[1]),
    );
    await Promise.all(more);
    morning('2027-04-20');
    const all = (await due()).filter(({ code }) => code === 'also-in-window');
    expect(all).toMatchObject([{ crops: [{ cropKey: 'spinach' }, { cropKey: 'beetroot' }, { cropKey: 'carrot' }] }]);
  });

  it('long-season onions: sown under cover in January, planted out in spring', async () => {
    const onion = await record('onion', 2027);
    expect(await due()).toEqual([]);
    morning('2027-01-25');
    expect(codes(await due())).toEqual(['under-cover onion 6']);
    await done(say(onion, 'sown', '2027-01-25'));
    expect(await due()).toEqual([]);
    morning('2027-04-25');
    expect(codes(await due())).toEqual(['plant-out onion 5']);
    await done(say(onion, 'planted', '2027-04-25'));
    expect(await due()).toEqual([]);
    expect(await db().planting.findUniqueOrThrow({ where: { id: onion } })).toMatchObject({ firstSeason: 2027 });
  });
});

describe('what stands in the way', () => {
  it('is told with its reason, asked for in time, and gone once it is cleared', async () => {
    const cabbage = await record('winter-cabbage', 2026);
    await record('shallot', 2027);
    const { conflicts } = await read();
    expect(conflicts).toMatchObject([
      {
        code: 'stands-too-long',
        daysLate: 16,
        planting: { cropName: 'Shallot' },
        before: { cropName: 'Cabbage, winter' },
      },
    ]);
    expect(await due()).toEqual([]);
    morning('2027-01-16');
    expect(await due()).toMatchObject([{ code: 'sow', daysLeft: 58, standing: ['Cabbage, winter'] }]);
    morning('2027-02-15');
    expect(await due()).toMatchObject([
      { code: 'clear-for', by: '2027-03-15', daysLeft: 28 },
      { code: 'sow', daysLeft: 28 },
    ]);
    expect(await dated()).toMatchObject([
      { code: 'plant', from: '2027-01-15', to: '2027-03-15', facts: { crop: 'Shallot', bed: '1' } },
      { key: `clear ${cabbage}`, code: 'clear', from: '2027-01-15', to: '2027-03-15', facts: { next: 'Shallot' } },
    ]);
    await done(say(cabbage, 'cleared', '2027-02-15'));
    expect((await read()).conflicts).toEqual([]);
    expect(await due()).toMatchObject([{ code: 'sow', standing: [] }]);
  });

  it('the ground is to be finished first', async () => {
    await record('garlic', 2027);
    const { sheetId } = await done(
      makeSheet.run(holder.caller, once({ bedId: beds[0] ?? '', group: 'alliums', season: '2027' })),
    );
    expect((await read()).conflicts).toMatchObject([{ code: 'ground-to-finish', sheetId, isBegun: false }]);
    const [sow] = (await due()).filter((one) => one.code === 'sow');
    expect(sow?.code === 'sow' && sow.trenchesLeft).toBeGreaterThan(0);
  });

  it('a plan whose last day is past is said to clash, once', async () => {
    const parsnip = await record('parsnip', 2027);
    morning('2027-03-20');
    expect(codes(await due())).toEqual(['clash']);
    await done(say(parsnip, 'sown', '2027-03-12'));
    expect(await due()).toEqual([]);
  });

  it('what was planned for a season that is over asks for nothing', async () => {
    await record('parsnip', 2027);
    morning('2028-02-01');
    expect(await due()).toEqual([]);
    expect((await read()).lines).toMatchObject([{ cropKey: 'parsnip', isToCome: false }]);
  });
});

describe('the society’s frosts', () => {
  it('move the windows of everybody from the day on which they hold', async () => {
    const other = await makeSociety();
    const ask = () => readCropDates.run(other.secretary.caller, { group: 'potatoes' });
    const plantingOf = async () => {
      const { crops, areFrostsOwn } = await ask();
      const early = crops.find(({ key }) => key === 'early-potato')?.ways[0]?.windows[0];
      return [early?.from, early?.movedDays, areFrostsOwn];
    };
    expect(await plantingOf()).toEqual(['2027-03-20', 0, false]);
    const set = (key: string, value: string) =>
      changeSetting.run(other.secretary.caller, once({ key, value, from: '2026-11-28' }));
    await done(set('lastFrost', '11 May'));
    expect(await plantingOf()).toEqual(['2027-03-30', 10, true]);
    expect(await refusedWith(set('lastFrost', '1 July'))).toEqual(['setting-out-of-range']);
    expect(await refusedWith(set('firstFrost', '31 July'))).toEqual(['setting-out-of-range']);
  });
});

describe('recording a day', () => {
  it('refuses what cannot be, and says which field', async () => {
    const garlic = await record('garlic', 2027);
    expect(await refusedWith(say(garlic, 'planted', '2026-11-29'))).toEqual(['done-in-the-future']);
    expect(await refusedWith(say(garlic, 'planted', '2026-08-01'))).toEqual(['day-of-another-season']);
    await done(say(garlic, 'planted', '2026-11-10'));
    expect(await refusedWith(say(garlic, 'planted', '2026-11-11'))).toEqual(['day-recorded']);
    expect(await refusedWith(say(garlic, 'sown', '2026-11-20'))).toEqual(['planted-before-sown']);
    expect(await refusedWith(say(garlic, 'cleared', '2026-11-09'))).toEqual(['cleared-before-sown']);
  });

  it('is for the holders and the secretary; strangers find nothing, and nothing changes', async () => {
    const garlic = await record('garlic', 2027);
    await expect(say(garlic, 'planted', '2026-11-10', stranger)).rejects.toThrow(NotFound);
    expect(await db().planting.findUniqueOrThrow({ where: { id: garlic } })).toMatchObject({ plantedOn: null });
    await done(say(garlic, 'planted', '2026-11-10', society.secretary));
    const audit = await db().auditRow.findFirst({ where: { thingId: garlic, verb: 'planted' } });
    expect(audit).toMatchObject({ after: { plantedOn: '2026-11-10' }, before: { plantedOn: null } });
  });

  it('of two who enter different days at once, one is taken and the other told', async () => {
    const garlic = await record('garlic', 2027);
    const days = ['2026-11-10', '2026-11-11', '2026-11-12', '2026-11-13'];
    const replies = await Promise.all(days.map((onDay) => say(garlic, 'planted', onDay)));
    expect(replies.filter(({ ok }) => ok)).toHaveLength(1);
  });

  it('rhubarb holds its ground until it is cleared, and then no longer', async () => {
    const rhubarb = await record('rhubarb', 2022);
    await record('onion', 2027);
    expect((await read()).conflicts).toMatchObject([{ code: 'stands-on' }]);
    await done(say(rhubarb, 'cleared', '2026-11-03'));
    expect(await db().planting.findUniqueOrThrow({ where: { id: rhubarb } })).toMatchObject({
      firstSeason: 2022,
      lastSeason: 2026,
    });
    expect((await read()).conflicts).toEqual([]);
  });
});

it('the secretary reads the dates of a holding that she keeps for; a stranger does not', async () => {
  await record('garlic', 2027);
  const [, [holding]] = await context();
  const ask = (who: TestMember) => readDates.run(who.caller, { holdingId: holding?.id });
  expect((await ask(society.secretary)).lines).toHaveLength(1);
  await expect(ask(stranger)).rejects.toThrow(NotFound);
});
