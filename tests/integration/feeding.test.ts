import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { addDays, addMonths, type CalendarDate, yearOf } from '@/lib/domain/calendar/calendar-date';
import { todayIn } from '@/lib/platform/clock';
import { readBook } from '@/lib/usecases/book/read-book';
import { seasonServed } from '@/lib/usecases/ground/holding-need';
import { judgePlanting } from '@/lib/usecases/ground/judge-planting';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { recordTrouble } from '@/lib/usecases/ground/keep-troubles';
import { logWork, retireWork } from '@/lib/usecases/ground/keep-works';
import { readFeeding } from '@/lib/usecases/ground/read-feeding';
import { readBed } from '@/lib/usecases/ground/read-ground';
import { changeHabits } from '@/lib/usecases/recipes/change-habits';
import { changeSetting } from '@/lib/usecases/settings/settings';
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

const today = todayIn('Europe/London');
const season = seasonServed(today);
const daysAgo = (days: number): CalendarDate => addDays(today, -days);

let society: TestSociety;
let holder: TestMember;
let plot: Awaited<ReturnType<typeof makePlot>>;
let bedId: string;

beforeAll(async () => {
  society = await makeSociety();
  holder = await makeMember(society);
  plot = await makePlot(society, 'F1', [holder.id]);
  bedId = (await makeBed(society, plot)).id;
});

// A bed of 6 × 2 m, with nothing on record.
beforeEach(async () => {
  const where = { societyId: society.id };
  await db().groundWork.updateMany({ where, data: { retiredAt: new Date() } });
  await db().planting.updateMany({ where, data: { retiredAt: new Date() } });
});

const log = (typed: object, who = holder) => logWork.run(who.caller, once({ bedId, season: String(season), ...typed }));
const works = async () => (await readBed.run(holder.caller, { bedId })).works;
const feeding = (asked: object = {}, who = holder) => readFeeding.run(who.caller, { bedId, ...asked });
const plant = (cropKey: string, change: object = {}) =>
  done(recordPlanting.run(holder.caller, once({ bedId, cropKey, season: String(season), ...change })));
const horse = { materialKey: 'horse-manure', ageMonths: '8', doneOn: daysAgo(3) };

describe('work is logged', () => {
  it('by barrow-loads of one’s own barrow, weighed once', async () => {
    await done(changeHabits.run(holder.caller, once({ barrowLitres: '60' })));
    await done(log({ ...horse, amount: '4' }));
    await done(log({ ...horse, amount: '4' }, society.secretary));
    await done(changeHabits.run(holder.caller, once({})));
    expect(await works()).toMatchObject([
      { kind: 'manured', loads: 4, massG: 4 * 85 * 400, ageMonths: 8, incorporated: true },
      { kind: 'manured', loads: 4, massG: 4 * 60 * 400 },
    ]);
  });

  it.each<[Readonly<Record<string, string | null>>, number | null]>([
    [{ materialKey: 'horse-manure', amount: '60 kg', amountBy: 'weight' }, 60_000],
    [{ materialKey: 'horse-manure', amount: '1 cwt', amountBy: 'weight' }, 50_802],
    [{ materialKey: 'horse-manure', amount: '5', amountBy: 'rate' }, 60_000],
    [{ materialKey: null, amount: '5 kg/m²', amountBy: 'rate' }, 60_000],
    [{ materialKey: null, amount: '4', amountBy: 'loads' }, null],
    [{ materialKey: 'horse-manure', amount: '1 load' }, 34_000],
    [{ materialKey: 'horse-manure', amount: '2 barrow-loads', amountBy: 'rate' }, 68_000],
    [{ materialKey: 'horse-manure', amount: '60 kg' }, 60_000],
    [{ materialKey: 'horse-manure', amount: '5 kg/m²' }, 60_000],
    [{ kind: 'limed', amount: '6 oz', amountBy: 'rate' }, 2436],
    [{ kind: 'limed', amount: '6 oz', amountBy: 'weight' }, 170],
    [{ kind: 'fed', materialKey: 'hoof-and-horn', amount: '70', amountBy: 'rate' }, 840],
    [{ kind: 'fed', materialKey: 'bone-meal', amount: '4 oz/sq yd', amountBy: 'rate' }, 1632],
    [{ kind: 'limed', amount: '200', amountBy: 'rate' }, 2400],
    [{ kind: 'limed', amount: '2.5', amountBy: 'weight' }, 2500],
    [{ kind: 'strawed', amount: '2' }, 2 * 85 * 70],
    [{ kind: 'limed', amount: '', amountBy: 'rate' }, null],
  ])('%j weighs %s g', async ({ materialKey = '', ...typed }, massG) => {
    await done(log({ ...typed, materialKey: materialKey ?? '' }));
    expect(await works()).toMatchObject([{ massG }]);
  });

  it('in the member’s own units where none are named', async () => {
    await db().member.update({ where: { id: holder.id }, data: { units: 'imperial' } });
    await done(log({ ...horse, amount: '10', amountBy: 'rate', method: 'double-digging', depth: '20' }));
    await db().member.update({ where: { id: holder.id }, data: { units: 'metric' } });
    const logged = await works();
    expect(logged.find(({ kind }) => kind === 'manured')?.massG).toBe(65_100);
    expect(logged.find(({ kind }) => kind === 'dug')).toMatchObject({
      method: 'double-digging',
      depthCm: 51,
      massG: null,
    });
  });

  it('on a strip of the bed, left on top, with its age', async () => {
    await done(
      log({ ...horse, amount: '30 kg', amountBy: 'weight', partLength: '1 m', placed: 'on-top', ageMonths: '2' }),
    );
    expect(await works()).toMatchObject([{ shareCm2: 60_000, incorporated: false, ageMonths: 2, massG: 30_000 }]);
    expect((await readBed.run(holder.caller, { bedId })).turn?.turn).toMatchObject({
      notDueCm2: 60_000,
      unloggedCm2: 60_000,
    });
  });

  it('and manure alone resets the turn', async () => {
    for (const kind of ['dug', 'fed', 'limed', 'strawed']) await done(log({ kind }));
    expect((await readBed.run(holder.caller, { bedId })).turn?.turn.unloggedCm2).toBe(120_000);
    await done(log({}));
    expect((await readBed.run(holder.caller, { bedId })).turn?.turn.unloggedCm2).toBe(0);
  });

  it.each([
    [{ amount: '2.5' }, 'loads-wrong'],
    [{ amount: '5 stone' }, 'loads-wrong'],
    [{ amount: '5 loads', kind: 'limed', amountBy: 'rate' }, 'not-by-the-barrow'],
    [{ amount: 'lots', amountBy: 'weight' }, 'weight-wrong'],
    [{ amount: 'lots', amountBy: 'rate' }, 'rate-wrong'],
    [{ kind: 'fed', amount: '2' }, 'not-by-the-barrow'],
    [{ kind: 'limed', amount: '2' }, 'not-by-the-barrow'],
    [{ kind: 'limed', materialKey: 'horse-manure' }, 'material-unknown'],
    [{ kind: 'fed', materialKey: 'horse-manure' }, 'material-unknown'],
    [{ materialKey: 'straw' }, 'material-unknown'],
    [{ materialKey: 'wood-chip' }, 'material-unknown'],
    [{ materialKey: 'bone-meal' }, 'material-unknown'],
    [{ materialKey: 'horse-manure', amount: '100 kg/m²', amountBy: 'rate', partLength: '' }, null],
    [{ depth: '4' }, 'depth-out-of-range'],
    [{ depth: '121' }, 'depth-out-of-range'],
    [{ depth: 'two spits' }, 'length-wrong'],
    [{ doneOn: addDays(today, 1) }, 'done-in-the-future'],
    [{ season: String(yearOf(today) + 2) }, 'season-out-of-range'],
    [{ partFrom: '2 m' }, 'part-outside-bed'],
  ])('%j is refused with %s', async (typed, code) => {
    expect(await refusedWith(log(typed))).toEqual(code ? [code] : []);
  });

  it('never beyond what the book can hold', async () => {
    const most = { amount: '9999', materialKey: 'hen-manure' };
    await done(changeSetting.run(society.secretary.caller, once({ key: 'barrowLitres', value: '300', from: today })));
    expect(await refusedWith(log(most, society.secretary))).toEqual(['amount-too-much']);
    await done(changeSetting.run(society.secretary.caller, once({ key: 'barrowLitres', value: '85', from: today })));
  });

  it('once, whoever sends it twice, and stands in the book as what it was', async () => {
    const sent = once({
      bedId,
      season: String(season),
      kind: 'fed',
      materialKey: 'bone-meal',
      amount: '70',
      amountBy: 'rate',
    });
    await done(logWork.run(holder.caller, sent));
    await done(logWork.run(holder.caller, sent));
    expect(await works()).toHaveLength(1);
    const { rows } = await readBook.run(society.secretary.caller, { verb: 'fed' });
    expect(rows[0]).toMatchObject({ after: { season, materialKey: 'bone-meal', massG: 840 } });
  });
});

describe('a log is taken back', () => {
  it('and the turn comes back with it', async () => {
    await done(log({}));
    const [work] = await works();
    await done(retireWork.run(holder.caller, once({ bedId, workId: work?.id ?? '' })));
    expect(await works()).toEqual([]);
    expect((await readBed.run(holder.caller, { bedId })).turn?.turn.unloggedCm2).toBe(120_000);
  });

  it('but what a ground sheet logged is taken back on the sheet', async () => {
    const { id: sheetId } = await db().groundSheet.create({
      data: {
        ...{
          societyId: society.id,
          bedId,
          frameId: plot.frameId,
          madeByMemberId: holder.id,
          season,
          cropGroup: 'alliums',
        },
        ...{ xCm: 60, yCm: 60, widthCm: 600, lengthCm: 200, order: {} },
      },
    });
    await done(log({}));
    const [work] = await works();
    await db().groundWork.update({ where: { id: work?.id ?? '' }, data: { sheetId } });
    expect(await refusedWith(retireWork.run(holder.caller, once({ bedId, workId: work?.id ?? '' })))).toEqual([
      'work-of-a-sheet',
    ]);
    expect(await works()).toMatchObject([{ sheetId }]);
    await db().groundWork.update({ where: { id: work?.id ?? '' }, data: { sheetId: null } });
  });
});

describe('what feeds a bed', () => {
  it('stands beside what the planned crop demands, by area', async () => {
    await plant('leek');
    await done(log({ ...horse, amount: '30 kg', amountBy: 'weight', partLength: '1 m' }));
    const { dressings, pieces } = await feeding();
    expect(dressings).toMatchObject([
      { rateGPerM2: 5000, shareCm2: 60_000, supply: { nitrogen: { mgPerM2: 25_000 }, magnesia: { mgPerM2: 7500 } } },
    ]);
    expect(pieces.map(({ areaCm2, cropKey, balance }) => [areaCm2, cropKey, balance.nitrogen?.mgPerM2])).toEqual([
      [60_000, 'leek', dressings[0]?.supply?.firstYear?.mgPerM2],
      [60_000, 'leek', 0],
    ]);
    expect(pieces[0]?.balance.demands[0]).toMatchObject({
      totalNitrogenMgPerM2: 25_000,
      removedNitrogenMgPerM2: 15_000,
    });
  });

  it('is reckoned by the holder’s own soil, which the secretary does not see', async () => {
    await done(changeHabits.run(holder.caller, once({ soil: 'sandy' })));
    const autumn = `${yearOf(today) - 1}-10-01`;
    await done(log({ ...horse, doneOn: autumn, amount: '5', amountBy: 'rate' }));
    const firstYear = async (who: TestMember) => (await feeding({}, who)).dressings[0]?.supply?.firstYear?.mgPerM2;
    const soils = async (who: TestMember) => (await feeding({}, who)).soil;
    expect(await soils(holder)).toEqual({ key: 'sandy', isAssumed: false });
    expect(await soils(society.secretary)).toEqual({ key: 'loamy', isAssumed: true });
    expect([await firstYear(holder), await firstYear(society.secretary)]).toEqual([1250, 2500]);
    await done(changeHabits.run(holder.caller, once({})));
  });

  it('passes the guidance where dressings overlap, says on how much ground, and which rate keeps it', async () => {
    await done(log({ ...horse, amount: '5', amountBy: 'rate' }));
    expect((await feeding()).nitrogen).toMatchObject({ timesLimit: 1, overCm2: 0, withinCm2: 120_000 });
    await done(log({ ...horse, amount: '7', amountBy: 'rate', partLength: '0.5 m' }));
    const { nitrogen } = await feeding();
    expect(nitrogen).toMatchObject({
      worstMgPerM2: 60_000,
      timesLimit: 2.4,
      overCm2: 30_000,
      withinCm2: 90_000,
      worstMeanMgPerM2: 20_000,
      materialKey: 'horse-manure',
      now: { rateGPerM2: 0 },
      clearYear: { rateGPerM2: 5000 },
      overRotation: { rateGPerM2: 15_000 },
    });
  });

  it('is not known where amounts are not, and nothing is said of ground without a log', async () => {
    expect((await feeding()).nitrogen).toMatchObject({ isRecorded: false, worstMgPerM2: 0 });
    await plant('leek');
    await done(log({ ...horse, amount: '' }));
    const { dressings, nitrogen, pieces } = await feeding();
    expect(dressings).toMatchObject([{ supply: null, reasons: ['amount-not-known'] }]);
    expect(nitrogen).toMatchObject({ unknownCm2: 120_000, withinCm2: 0, isHadKnown: false });
    expect(pieces[0]?.balance.nitrogen).toBeNull();
  });

  it('counts a meal, and leaves straw and lime out', async () => {
    await done(log({ kind: 'fed', materialKey: 'hoof-and-horn', amount: '100', amountBy: 'rate' }));
    await done(log({ kind: 'strawed', amount: '500 g/m²', amountBy: 'rate' }));
    await done(log({ kind: 'limed', amount: '200', amountBy: 'rate' }));
    const { dressings, nitrogen } = await feeding();
    expect(dressings).toHaveLength(1);
    expect(nitrogen).toMatchObject({ worstMgPerM2: 14_000, unknownCm2: 0 });
  });
});

describe('harvests wait', () => {
  const raw = { materialKey: 'horse-manure', ageMonths: '1', doneOn: daysAgo(3) };

  it('for fresh manure: told on logging, on the bed and before planting', async () => {
    await plant('carrot', { season: String(season) });
    const reply = await done(log({ ...raw, amount: '4' }));
    const until = addMonths(daysAgo(3), 11);
    expect(reply.waits).toEqual([{ cropName: 'Carrot', earliestOn: until, whileGrowing: false, isWorstCase: false }]);
    expect((await feeding()).waits).toMatchObject([
      {
        cropName: 'Carrot',
        earliestOn: until,
        meeting: { contact: 'touches-soil', eaten: 'either' },
        areaCm2: 120_000,
      },
    ]);
    const judged = await judgePlanting.run(holder.caller, { bedId, cropKey: 'radish', season: String(season) });
    expect(judged).toMatchObject({ wait: { earliestOn: until } });
    const later = await judgePlanting.run(holder.caller, { bedId, cropKey: 'radish', season: String(season + 2) });
    expect(later).toMatchObject({ wait: null });
  });

  it('not for a strip that had none, nor for rotted manure of the summer before', async () => {
    await done(log({ ...raw, partLength: '1 m' }));
    const asked = { bedId, cropKey: 'carrot', season: String(season), partFrom: '1 m' };
    expect(await judgePlanting.run(holder.caller, asked)).toMatchObject({ wait: null });
    expect(await judgePlanting.run(holder.caller, { ...asked, partFrom: '0.9 m' })).toMatchObject({
      wait: { areaCm2: 6000 },
    });
    await done(log({ ...raw, ageMonths: '12', doneOn: `${season - 1}-08-15`, partFrom: '1 m' }));
    expect(await judgePlanting.run(holder.caller, asked)).toMatchObject({ wait: null });
  });

  it('longest where nobody wrote the age or the day down', async () => {
    await plant('carrot');
    await done(log({}));
    const [wait] = (await feeding()).waits;
    expect(wait).toMatchObject({
      earliestOn: addMonths(today, 12),
      isWorstCase: true,
      manurings: [{ isDayKnown: false, state: 'raw', monthsHeaped: null }],
    });
  });
});

describe('lime', () => {
  it('too near to manure is logged all the same, and the clash is shown', async () => {
    await done(log({ ...horse, doneOn: daysAgo(20) }));
    const reply = await done(log({ kind: 'limed', doneOn: daysAgo(3), amount: '200', amountBy: 'rate' }));
    expect(reply.clashes).toEqual([{ code: 'too-soon', order: 'manure-first', earliestOn: addMonths(daysAgo(20), 3) }]);
    const { clashes, lime } = await feeding();
    expect(clashes).toMatchObject([{ code: 'too-soon', areaCm2: 120_000 }]);
    expect(lime.days).toMatchObject({
      manure: { earliestOn: addMonths(daysAgo(3), 3), isOpen: false },
      lime: { earliestOn: addMonths(daysAgo(20), 3), isOpen: false },
      test: { earliestOn: addMonths(daysAgo(3), 3), isOpen: false },
    });
  });

  it('wood ash counts as lime, and other ground does not clash', async () => {
    await done(log({ ...horse, partLength: '1 m' }));
    expect((await done(log({ kind: 'limed', partFrom: '1 m', doneOn: today }))).clashes).toEqual([]);
    const ash = { kind: 'fed', materialKey: 'wood-ash', doneOn: today, partLength: '1 m' };
    expect((await done(log(ash))).clashes).toMatchObject([{ code: 'too-soon' }]);
  });

  it.each([
    [
      { texture: 'loam', ph: '5.5' },
      { need: { gPerM2: 200, dressings: [200], bedG: 2400 }, isPhWrong: false },
    ],
    [{ texture: 'clay-loam', ph: '4,5' }, { need: { gPerM2: 700, dressings: [350, 350] } }],
    [{ texture: 'loam', ph: '6.5' }, { need: { gPerM2: 0, dressings: [] } }],
    [
      { texture: 'loam', ph: '6.5', purpose: 'clubroot' },
      { need: { gPerM2: 100 }, target: { leastPhTenths: 70 } },
    ],
    [
      { texture: 'loam', ph: '5.5', purpose: 'potatoes' },
      { need: null, target: null },
    ],
    [
      { texture: 'peat', ph: '5.0' },
      { need: null, target: { leastPhTenths: 58 } },
    ],
    [{ ph: '' }, { need: null, isPhWrong: false, asked: { texture: 'loam', purpose: 'vegetables' } }],
    [{ ph: '9.1' }, { need: null, isPhWrong: true }],
    [{ ph: 'sour' }, { need: null, isPhWrong: true }],
    [{ ph: '5.55' }, { need: null, isPhWrong: true }],
    [
      { texture: '__proto__', ph: '5.5' },
      { asked: { texture: 'loam' }, need: { gPerM2: 200 } },
    ],
  ])('%j comes to %j', async (asked, told) => {
    expect((await feeding(asked)).lime).toMatchObject(told);
  });

  it('is reckoned for what is planned: none before potatoes, more where clubroot was found', async () => {
    const purpose = async () => (await feeding()).lime.asked.purpose;
    expect(await purpose()).toBe('vegetables');
    const found = { bedId, troubleKey: 'clubroot', certainty: 'sure', foundOn: '2026-05-01' };
    await done(recordTrouble.run(holder.caller, once(found)));
    expect(await purpose()).toBe('clubroot');
    await plant('early-potato');
    expect(await purpose()).toBe('potatoes');
  });
});
