import { randomUUID } from 'node:crypto';
import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { wordsFor } from '@/app/_server/words';
import { db } from '@/lib/data/db';
import { areaCm2, type Footprint } from '@/lib/domain/ground/footprint';
import { halvePlot } from '@/lib/usecases/plots/halve-and-join';
import { changeHolders, endTenancy, letPlot } from '@/lib/usecases/plots/keep-tenancies';
import { planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { joinBeds, splitBed } from '@/lib/usecases/ground/keep-beds';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { readFeeding } from '@/lib/usecases/ground/read-feeding';
import { readWeek } from '@/lib/usecases/week/read-week';
import { readBed, readGround } from '@/lib/usecases/ground/read-ground';
import { changeHabits } from '@/lib/usecases/recipes/change-habits';
import { changeRecipe } from '@/lib/usecases/recipes/change-recipe';
import { NotFound, type Outcome } from '@/lib/usecases/refusal';
import { makeSheet } from '@/lib/usecases/sheets/make-sheet';
import { previewSheet } from '@/lib/usecases/sheets/preview-sheet';
import { listSheets, readSheet } from '@/lib/usecases/sheets/read-sheet';
import { retireSheet } from '@/lib/usecases/sheets/retire-sheet';
import { tickTrench, untickTrench } from '@/lib/usecases/sheets/tick-trench';
import {
  deliveryFacts,
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

// The clock that the use-cases read, moved by hand: digging goes over several mornings.
const clock = vi.hoisted(() => ({ at: new Date('2026-11-09T08:00:00Z') }));
vi.mock('@/lib/platform/clock', async (original) => {
  const real = await original<typeof import('@/lib/platform/clock')>();
  const now = () => clock.at;
  return { ...real, now, todayIn: (timeZone: string) => real.dayIn(timeZone, clock.at) };
});
const morning = (day: string) => void (clock.at = new Date(`${day}T08:00:00Z`));

let society: TestSociety;
let holder: TestMember;
let partner: TestMember;
let plot: Awaited<ReturnType<typeof makePlot>>;
let bed: { id: string; footprint: Footprint };
let number = 0;

beforeAll(async () => {
  society = await makeSociety();
  holder = await makeMember(society, { name: 'Ada' });
  partner = await makeMember(society, { name: 'Zeb' });
});

// A bed of its own for each test, 6 × 2 m: in two halves 20 trenches of 1 × 0.6 m.
beforeEach(async () => {
  morning('2026-11-09');
  number += 1;
  plot = await makePlot(society, `S${number}`, [holder.id, partner.id]);
  bed = await makeBed(society, plot);
});

const onions = { group: 'alliums' };
const wish = (change: object = {}) => once({ bedId: bed.id, ...onions, ...change });
const make = async (change: object = {}, who = holder) => (await done(makeSheet.run(who.caller, wish(change)))).sheetId;
const tick = (sheetId: string, trench: number, change: object = {}, who = holder) =>
  tickTrench.run(who.caller, once({ sheetId, trench: String(trench), ...change }));
const untick = (sheetId: string, trench: number, change: object = {}, who = holder) =>
  untickTrench.run(who.caller, once({ sheetId, trench: String(trench), ...change }));
const read = (sheetId: string, who = holder) => readSheet.run(who.caller, { sheetId });
const works = (sheetId: string) => db().groundWork.findMany({ where: { sheetId, retiredAt: null } });
const turn = async () => (await readBed.run(holder.caller, { bedId: bed.id })).turn?.turn;
const beside = (outcome: Outcome<unknown>) =>
  outcome.ok ? [] : outcome.refusals.map((refusal) => [refusal.field, refusal.code, wordsFor(refusal).slice(0, 20)]);

describe('making a sheet', () => {
  it('freezes the recipe and the habits of whoever makes it', async () => {
    await done(changeRecipe.run(holder.caller, once({ ...onions, meal: 'bone-meal', mealGPerM2: '100' })));
    await done(changeHabits.run(holder.caller, once({ trenchWidthCm: '50 cm', soil: 'clayey' })));
    const sheetId = await make();
    await done(changeRecipe.run(holder.caller, once(onions)));
    await done(changeHabits.run(holder.caller, once({ pace: 'brisk' })));
    const { sheet, total, figures } = await read(sheetId);
    expect(sheet).toMatchObject({
      group: 'alliums',
      season: 2027,
      footprint: bed.footprint,
      order: {
        method: 'double-digging',
        trenchWidthCm: 50,
        soil: 'clayey',
        across: 'length',
        layout: 'two-halves',
        meal: { key: 'bone-meal', gPerM2: 100 },
        manure: { materialKey: 'horse-manure', bottomGPerM2: 3750, topGPerM2: 1250 },
        until: '2026-12-01',
      },
    });
    expect(total).toBe(24);
    expect(figures.layers.total.wholeLoads).toBe(2);
  });

  it('takes what is typed for this sheet alone, in the member’s own units', async () => {
    const sheetId = await make({
      partFrom: '1 m',
      partLength: '1 m',
      materialKey: 'cattle-manure',
      ageMonths: '8',
      densityGPerL: '800',
      rateGPerM2: '8 lb/sq yd',
      manureBottomPercent: '100',
      trenchWidthCm: '40',
      layout: 'straight-through',
      across: 'width',
      meal: 'none',
      strawGPerM2: '0',
    });
    expect((await read(sheetId)).sheet).toMatchObject({
      footprint: { ...bed.footprint, yCm: bed.footprint.yCm + 100, lengthCm: 100 },
      order: {
        across: 'width',
        layout: 'straight-through',
        layoutBy: 'asked',
        trenchWidthCm: 40,
        meal: null,
        strawGPerM2: 0,
        manure: { materialKey: 'cattle-manure', ageMonths: 8, densityGPerL: 800, bottomGPerM2: 4340, topGPerM2: 0 },
      },
    });
  });

  it('is for the crop that is planned there, and asks where none is', async () => {
    expect(beside(await makeSheet.run(holder.caller, once({ bedId: bed.id })))).toEqual([
      ['group', 'group-wanted', 'Say what the ground '],
    ]);
    await done(recordPlanting.run(holder.caller, once({ bedId: bed.id, cropKey: 'kale', season: '2027' })));
    const { sheetId } = await done(makeSheet.run(holder.caller, once({ bedId: bed.id })));
    expect((await read(sheetId)).sheet.group).toBe('brassicas');
  });

  it('stands in place of another of which nothing is ticked, and of none that is begun', async () => {
    const first = await make();
    const second = await make({ trenchWidthCm: '40' });
    expect((await listSheets.run(holder.caller, { bedId: bed.id })).map(({ id }) => id)).toEqual([second]);
    expect((await read(first)).sheet.retiredAt).not.toBeNull();
    await done(tick(second, 1));
    expect(beside(await makeSheet.run(partner.caller, wish()))).toEqual([
      [undefined, 'sheet-begun', 'There is a sheet for'],
    ]);
    // Another season, or ground beside it, is another matter.
    await done(makeSheet.run(holder.caller, wish({ season: '2028' })));
    await done(retireSheet.run(holder.caller, once({ sheetId: second })));
    await make();
    expect(await works(second)).toHaveLength(4);
  });

  it('made twice by one sending is one sheet', async () => {
    const sent = wish();
    const [one, other] = await Promise.all([
      done(makeSheet.run(holder.caller, sent)),
      done(makeSheet.run(holder.caller, sent)),
    ]);
    expect(one).toEqual(other);
    expect(await db().groundSheet.count({ where: { bedId: bed.id } })).toBe(1);
  });

  it('made by two holders at once leaves one to follow', async () => {
    await Promise.all([make(), make({}, partner)]);
    expect(await listSheets.run(holder.caller, { bedId: bed.id })).toHaveLength(1);
    expect(await db().groundSheet.count({ where: { bedId: bed.id } })).toBe(2);
  });

  it.each([
    ['a bed narrower than a trench', { partLength: '50 cm', across: 'width' }, 'partLength', 'narrower-than-trench'],
    [
      'a trench wider than the bed',
      { trenchWidthCm: '90', across: 'width', partFrom: '1.2 m' },
      'trenchWidthCm',
      'narrower-than-trench',
    ],
    ['a strip past the end', { partFrom: '3 m' }, 'partFrom', 'part-outside-bed'],
    ['a strip of a hair', { partLength: '5 cm' }, 'partLength', 'bed-too-small'],
    ['a negative depth', { spitDepthCm: '-25' }, 'spitDepthCm', 'value-out-of-range'],
    ['no depth', { spitDepthCm: '0' }, 'spitDepthCm', 'value-out-of-range'],
    ['a rate that is none', { rateGPerM2: 'lots' }, 'rateGPerM2', 'value-out-of-range'],
    ['an absurd rate', { rateGPerM2: '999999 t/ha' }, 'rateGPerM2', 'value-out-of-range'],
    ['a meal of no rate', { mealGPerM2: '0' }, 'mealGPerM2', 'value-out-of-range'],
    ['a mulch of nothing', { method: 'mulch', rateGPerM2: '0', strawGPerM2: '0' }, 'strawGPerM2', 'nothing-to-lay'],
    ['a material without density', { materialKey: 'snow' }, 'materialKey', 'no-such-manure'],
    ['straw for manure', { materialKey: 'straw' }, 'materialKey', 'no-such-manure'],
    ['manure as light as air', { densityGPerL: '1' }, 'densityGPerL', 'density-out-of-range'],
    ['a season long past', { season: '2020' }, 'season', 'season-out-of-range'],
  ])('refuses %s beside its field, asked and made', async (_, change, field, code) => {
    const outcome = await makeSheet.run(holder.caller, wish(change));
    expect(beside(outcome)).toEqual([[field, code, expect.any(String)]]);
    const { answer } = await previewSheet.run(holder.caller, { bedId: bed.id, wish: { ...onions, ...change } });
    expect(beside(answer)).toEqual(beside(outcome));
    expect(await db().groundSheet.count({ where: { bedId: bed.id } })).toBe(0);
  });

  it('refuses ground that is more than anybody follows on one sheet', async () => {
    const huge = { xCm: 5000, yCm: 0, widthCm: 20_000, lengthCm: 90_000 };
    const place = { societyId: society.id, plotId: plot.plotId, frameId: plot.frameId };
    const field = await db().bed.create({
      data: { ...place, ...huge, name: 'field', fromOn: new Date('2020-01-01') },
    });
    const outcome = await makeSheet.run(holder.caller, wish({ bedId: field.id }));
    expect(beside(outcome)).toEqual([['partLength', 'more-than-a-sheet', 'That is more than on']]);
  });
});

describe('what a sheet would want', () => {
  const preview = async (change: object = {}) => {
    const read = await previewSheet.run(holder.caller, { bedId: bed.id, wish: { ...onions, ...change } });
    if (!read.answer.ok) throw new Error(JSON.stringify(read.answer.refusals));
    return read.answer.value;
  };

  it('is answered without writing anything', async () => {
    const { figures, nitrogen, portion, order } = await preview({ meal: 'none' });
    expect(order.layoutBy).toBe('less-carrying');
    expect(figures.layers.total).toMatchObject({ areaCm2: 120_000, wholeLoads: 2 });
    expect(figures.carrying).toMatchObject({ less: 'two-halves', twoHalves: { carriedMetreKg: expect.anything() } });
    expect(nitrogen).toMatchObject({ timesYear: 1, keepsYear: { rateGPerM2: 5000 } });
    expect(nitrogen.thumb?.timesBottom).toBeGreaterThan(4);
    expect(portion).toMatchObject({ daysLeft: 23, plan: { basis: { code: 'by-the-clock' } } });
    expect(await db().groundSheet.count({ where: { bedId: bed.id } })).toBe(0);
  });

  it('counts what the ground had within twelve months', async () => {
    const where = { societyId: society.id, frameId: plot.frameId, ...bed.footprint, kind: 'manured', season: 2027 };
    await db().groundWork.create({
      data: { ...where, materialKey: 'horse-manure', massG: 60_000, doneOn: new Date('2026-09-20') },
    });
    expect((await preview({ meal: 'none' })).nitrogen).toMatchObject({ timesYear: 2, keepsYear: { rateGPerM2: 0 } });
  });

  it('counts loads collected for the ground once: they are what the sheet digs in', async () => {
    const day = { arrivesOn: '2026-11-20', collectByOn: '2026-11-30', closesAt: '2026-11-18T18:00' };
    const { deliveryId } = await done(planDelivery.run(society.secretary.caller, once(deliveryFacts(day))));
    const where = { societyId: society.id, frameId: plot.frameId, ...bed.footprint, kind: 'manured', season: 2027 };
    await db().groundWork.create({ data: { ...where, materialKey: 'horse-manure', massG: 60_000, deliveryId } });
    expect((await preview({ meal: 'none' })).nitrogen.timesYear).toBe(1);
    expect((await preview({ meal: 'none', season: '2028' })).nitrogen.timesYear).toBe(2);
    const sheetId = await make({ meal: 'none' });
    await done(tick(sheetId, 10, { withBefore: 'yes' }));
    expect((await read(sheetId)).nitrogen.timesYear).toBe(1);
    const fed = await readFeeding.run(holder.caller, { bedId: bed.id });
    expect(fed.nitrogen.timesLimit).toBe(1);
  });

  it('says that lime is too near, and the first day that keeps its distance', async () => {
    const where = { societyId: society.id, frameId: plot.frameId, ...bed.footprint, season: 2027 };
    await db().groundWork.create({ data: { ...where, kind: 'limed', doneOn: new Date('2026-10-20') } });
    expect((await preview()).limedUntil).toMatchObject({ earliestOn: '2027-01-20' });
    expect((await preview({ rateGPerM2: '0' })).limedUntil).toBeNull();
  });
});

describe('following a sheet', () => {
  it('logs each morning’s trenches by their area, and resets the turn there and nowhere else', async () => {
    const sheetId = await make();
    expect(await turn()).toMatchObject({ unloggedCm2: 120_000, notDueCm2: 0 });
    for (const trench of [1, 2, 3]) await done(tick(sheetId, trench));
    morning('2026-11-11');
    for (const trench of [4, 5]) await done(tick(sheetId, trench, {}, partner));
    const { done: ticked, atHand, used, rest, ticks } = await read(sheetId);
    expect({ ticked, next: atHand?.trench.number }).toEqual({ ticked: 5, next: 6 });
    expect(ticks.map(({ by, doneOn }) => [by, doneOn])).toEqual([
      ...Array(3).fill(['you', '2026-11-09']),
      ...Array(2).fill([partner.name, '2026-11-11']),
    ]);
    expect(used.areaCm2 + rest.areaCm2).toBe(120_000);
    const logged = await works(sheetId);
    expect(
      logged
        .map(({ kind, doneOn, widthCm, lengthCm }) => [kind, doneOn?.toISOString().slice(0, 10), widthCm, lengthCm])
        .sort(),
    ).toEqual([
      ...['dug', 'fed', 'manured', 'strawed'].flatMap((kind) => [
        [kind, '2026-11-09', 180, 100],
        [kind, '2026-11-11', 120, 100],
      ]),
    ]);
    const manured = logged.filter(({ kind }) => kind === 'manured');
    expect(manured.reduce((sum, { massG }) => sum + (massG ?? 0), 0)).toBe(used.manureBottomG + used.manureTopG);
    expect(logged.find(({ kind }) => kind === 'dug')).toMatchObject({
      method: 'double-digging',
      depthCm: 50,
      season: 2027,
    });
    expect(await turn()).toMatchObject({ notDueCm2: 30_000, unloggedCm2: 90_000 });
  });

  it('takes a trench back, and what it had logged', async () => {
    const sheetId = await make();
    await done(tick(sheetId, 1));
    await done(tick(sheetId, 2));
    await done(untick(sheetId, 2));
    expect(await turn()).toMatchObject({ notDueCm2: 6000 });
    await done(untick(sheetId, 1));
    expect(await works(sheetId)).toEqual([]);
    expect(await turn()).toMatchObject({ notDueCm2: 0 });
    // Nothing is deleted, and the trench may be ticked anew.
    expect(await db().trenchTick.count({ where: { sheetId } })).toBe(2);
    await done(tick(sheetId, 1));
    expect((await read(sheetId)).done).toBe(1);
  });

  it('goes in order, unless those before are ticked with it', async () => {
    const sheetId = await make();
    expect(beside(await tick(sheetId, 3))).toEqual([['trench', 'trenches-before', 'Trench 1 comes befor']]);
    expect(await done(tick(sheetId, 3, { withBefore: 'yes' }))).toMatchObject({ done: 3, ticked: 3 });
    expect(beside(await untick(sheetId, 2))).toEqual([['trench', 'trenches-after', 'Trench 3 has been ti']]);
    expect(await done(untick(sheetId, 2, { withAfter: 'yes' }))).toMatchObject({ done: 1, unticked: 2 });
    expect(await refusedWith(tick(sheetId, 21))).toEqual(['no-such-trench']);
    expect(await done(tick(sheetId, 20, { withBefore: 'yes' }))).toMatchObject({ done: 20 });
    expect(await read(sheetId)).toMatchObject({ atHand: null, rest: { areaCm2: 0, loadsToFetch: 0 } });
    expect(await turn()).toMatchObject({ notDueCm2: 120_000 });
  });

  it('sent twice, or pressed on a page that is out of date, it counts once', async () => {
    const sheetId = await make();
    const sent = once({ sheetId, trench: '1' });
    expect(await done(tickTrench.run(holder.caller, sent))).toEqual(await done(tickTrench.run(holder.caller, sent)));
    expect(await done(tick(sheetId, 1, {}, partner))).toMatchObject({ done: 1, ticked: 0 });
    expect(await done(untick(sheetId, 2))).toMatchObject({ done: 1, unticked: 0 });
    expect(await db().trenchTick.count({ where: { sheetId } })).toBe(1);
    expect(await works(sheetId)).toHaveLength(4);
  });

  it('ticked by two holders at once, each trench is dug once', async () => {
    const sheetId = await make();
    const both = [holder, partner];
    for (const trench of [1, 2, 3])
      await Promise.all([...both, ...both].map((who) => done(tick(sheetId, trench, {}, who))));
    const outcomes = await Promise.all(both.map((who) => done(tick(sheetId, 9, { withBefore: 'yes' }, who))));
    expect(outcomes.map(({ ticked }) => ticked).sort()).toEqual([0, 6]);
    expect(await db().trenchTick.count({ where: { sheetId, undoneAt: null } })).toBe(9);
    const logged = await works(sheetId);
    expect(logged.filter(({ kind }) => kind === 'dug').reduce((sum, one) => sum + areaCm2(one), 0)).toBe(54_000);
  });

  it('has a trench ticked twice refused by the database itself', async () => {
    const sheetId = await make();
    await done(tick(sheetId, 1));
    const data = { societyId: society.id, sheetId, trench: 1, doneOn: new Date(), byMemberId: holder.id };
    await expect(db().trenchTick.create({ data })).rejects.toThrow();
  });

  it('is typed in afterwards from the printed paper, by the day it was dug', async () => {
    const sheetId = await make();
    expect(await refusedWith(tick(sheetId, 1, { doneOn: '2026-11-10' }))).toEqual(['done-in-the-future']);
    await done(tick(sheetId, 4, { withBefore: 'yes', doneOn: '2026-11-07' }));
    expect((await read(sheetId)).ticks.map(({ doneOn }) => doneOn)).toEqual(Array(4).fill('2026-11-07'));
  });

  it('says what is for today, and tomorrow goes on from there', async () => {
    await done(changeHabits.run(holder.caller, once({ ageBand: 'under-60', pace: 'steady', sessionMinutes: '90' })));
    const sheetId = await make();
    const portion = async () => (await read(sheetId)).portion;
    // 16 minutes a trench, 48 of digging in an hour and a half.
    expect((await portion())?.today.map(({ trench }) => trench)).toEqual([1, 2, 3]);
    await done(tick(sheetId, 3, { withBefore: 'yes' }));
    expect(await portion()).toMatchObject({ doneToday: 3, leftToday: 0 });
    morning('2026-11-10');
    expect((await portion())?.today.map(({ trench }) => trench)).toEqual([4, 5, 6]);
    // The other holder has said nothing of themselves, and digs by the clock; nothing of the first one's is theirs to see.
    const others = await read(sheetId, partner);
    expect(others.portion?.plan.basis).toEqual({ code: 'by-the-clock', why: 'age-not-said' });
    expect(JSON.stringify(others)).not.toContain('under-60');
    await done(changeHabits.run(holder.caller, once({})));
  });
});

describe('in the week and on the ground', () => {
  const due = async (who = holder) =>
    (await readWeek.run(who.caller, {})).due.flatMap((one) => (one.code === 'dig' ? [one] : []));
  const mine = async (sheetId: string, who = holder) => (await due(who)).find(({ sheet }) => sheet.id === sheetId);

  it('stands as long as trenches are left, with the days that are left', async () => {
    const sheetId = await make();
    expect(await mine(sheetId)).toMatchObject({ daysLeft: 22, bedName: '1', sheet: { done: 0, total: 20 } });
    await done(tick(sheetId, 5, { withBefore: 'yes' }));
    expect(await mine(sheetId, partner)).toMatchObject({ sheet: { done: 5 } });
    const { sheets } = await readGround.run(holder.caller, {});
    expect(sheets.find(({ id }) => id === sheetId)).toMatchObject({ bedId: bed.id, done: 5, total: 20 });
    // The other holder learns of it.
    const { lately } = await readWeek.run(partner.caller, {});
    expect(lately[0]).toMatchObject({ by: 'Ada', verb: 'ticked', what: 'trenches 1 to 5', bed: '1', season: 2027 });
    morning('2026-12-05');
    expect(await mine(sheetId)).toMatchObject({ daysLeft: -4 });
    await done(tick(sheetId, 20, { withBefore: 'yes' }));
    expect(await mine(sheetId)).toBeUndefined();
  });

  it('is announced a fortnight before its first day, and let rest when the next season begins', async () => {
    morning('2026-09-16');
    const sheetId = await make();
    expect(await mine(sheetId)).toBeUndefined();
    morning('2026-09-17');
    expect(await mine(sheetId)).toBeDefined();
    morning('2027-08-31');
    expect(await mine(sheetId)).toBeDefined();
    morning('2027-09-01');
    expect(await mine(sheetId)).toBeUndefined();
  });

  it('puts what is begun before what is not', async () => {
    const [first, second] = [await make({ partLength: '1 m' }), await make({ partFrom: '1 m' })];
    await done(tick(second, 1));
    const ids = (await due()).map(({ sheet }) => sheet.id);
    expect(ids.indexOf(second)).toBeLessThan(ids.indexOf(first));
  });
});

describe('a sheet taken back', () => {
  it('leaves what was dug on record, and is ticked no more', async () => {
    const sheetId = await make();
    await done(tick(sheetId, 2, { withBefore: 'yes' }));
    await done(retireSheet.run(partner.caller, once({ sheetId })));
    expect(await works(sheetId)).toHaveLength(4);
    expect(await refusedWith(tick(sheetId, 3))).toEqual(['sheet-taken-back']);
    expect(await listSheets.run(holder.caller, { bedId: bed.id })).toEqual([]);
    // What was ticked by mistake can still be taken back.
    await done(untick(sheetId, 2));
    expect(await turn()).toMatchObject({ notDueCm2: 6000 });
  });

  it('takes its trenches with it where none was dug', async () => {
    const sheetId = await make();
    await done(tick(sheetId, 2, { withBefore: 'yes' }));
    await done(retireSheet.run(holder.caller, once({ sheetId, undug: 'yes' })));
    expect(await works(sheetId)).toEqual([]);
    expect(await turn()).toMatchObject({ notDueCm2: 0 });
  });

  it('ticked and taken back at once ends in one of the two orders', async () => {
    const sheetId = await make();
    await done(tick(sheetId, 1));
    const [ticked] = await Promise.all([
      tick(sheetId, 2),
      done(retireSheet.run(partner.caller, once({ sheetId, undug: 'yes' }))),
    ]);
    const left = await db().trenchTick.count({ where: { sheetId, undoneAt: null } });
    expect(ticked.ok ? 'both' : beside(ticked)[0]?.[1]).toMatch(/both|sheet-taken-back/);
    expect(left).toBe(0);
    expect(await works(sheetId)).toEqual([]);
  });
});

describe('when the ground changes hands or shape', () => {
  it('stays with the ground when its bed is split, and joined again', async () => {
    const sheetId = await make();
    await done(tick(sheetId, 1));
    const from = '2026-11-09';
    const cut = { across: 'width', at: '3 m', firstName: 'a', secondName: 'b', from };
    const { bedIds } = await done(splitBed.run(holder.caller, once({ bedId: bed.id, ...cut })));
    expect((await read(sheetId)).bedsNow.map(({ name }) => name)).toEqual(['a', 'b']);
    await done(tick(sheetId, 2));
    for (const bedId of bedIds)
      expect((await listSheets.run(holder.caller, { bedId })).map(({ id }) => id)).toEqual([sheetId]);
    expect(await refusedWith(makeSheet.run(holder.caller, wish()))).toEqual(['bed-retired']);
    const half = await makeSheet.run(holder.caller, wish({ bedId: bedIds[0] }));
    expect(beside(half)[0]?.[1]).toBe('sheet-begun');
    morning('2026-11-12');
    const join = { bedId: bedIds[0], otherId: bedIds[1], name: 'whole', from: '2026-11-12' };
    await done(joinBeds.run(holder.caller, once(join)));
    expect((await read(sheetId)).done).toBe(2);
  });

  it('stays with the holding when its plot is halved', async () => {
    const sheetId = await make();
    const halve = { across: 'length', at: '10 m', firstNumber: `H${number}a`, secondNumber: `H${number}b` };
    const from = '2026-11-09';
    await done(halvePlot.run(society.secretary.caller, once({ plotId: plot.plotId, ...halve, from })));
    expect((await read(sheetId)).plot.number).toBe(`H${number}a`);
    await done(tick(sheetId, 1, {}, partner));
  });

  it('is the holding’s own: a new holder of it follows it, whoever takes the ground over does not', async () => {
    const sheetId = await make();
    await done(tick(sheetId, 2, { withBefore: 'yes' }));
    const third = await makeMember(society);
    const from = '2026-11-09';
    const change = { holdingId: plot.holdingId, memberIds: [partner.id, third.id], from };
    await done(changeHolders.run(society.secretary.caller, once(change)));
    const { ticks } = await read(sheetId, third);
    // Whoever dug it holds it no more, and is not named.
    expect(ticks.map(({ by }) => by)).toEqual([null, null]);
    await expect(read(sheetId, holder)).rejects.toThrow(NotFound);
    await done(
      endTenancy.run(society.secretary.caller, once({ plotId: plot.plotId, from: '2026-11-10', sure: 'yes' })),
    );
    morning('2026-11-10');
    const next = await makeMember(society);
    const let_ = { plotId: plot.plotId, memberIds: [next.id], from: '2026-11-10' };
    await done(letPlot.run(society.secretary.caller, once(let_)));
    await expect(read(sheetId, next)).rejects.toThrow(NotFound);
    expect(await listSheets.run(next.caller, { bedId: bed.id })).toEqual([]);
    // The work stays with the ground.
    const seen = await readBed.run(next.caller, { bedId: bed.id });
    expect(seen.turn?.turn.notDueCm2).toBe(12_000);
  });

  it('is kept by the secretary for those on paper, by their recipes and by nobody’s habits', async () => {
    await done(changeHabits.run(holder.caller, once({ trenchWidthCm: '40', bodyMassKg: '97' })));
    await done(changeRecipe.run(holder.caller, once({ ...onions, strawGPerM2: '700' })));
    const sheetId = await make({}, society.secretary);
    const { sheet, pace } = await read(sheetId, society.secretary);
    expect(sheet.order).toMatchObject({ trenchWidthCm: 60, strawGPerM2: 700 });
    expect(pace.digger).toMatchObject({ bodyMassKg: null, ageBand: 'not-said' });
    await done(tick(sheetId, 1, {}, society.secretary));
    await done(changeHabits.run(holder.caller, once({})));
    await done(changeRecipe.run(holder.caller, once(onions)));
  });

  it('is nobody’s of another society, nor a neighbour’s', async () => {
    const sheetId = await make();
    const elsewhere = await makeSociety();
    const neighbour = await makeMember(society);
    for (const who of [elsewhere.secretary, neighbour]) {
      await expect(read(sheetId, who)).rejects.toThrow(NotFound);
      await expect(tick(sheetId, 1, {}, who)).rejects.toThrow(NotFound);
      await expect(untick(sheetId, 1, {}, who)).rejects.toThrow(NotFound);
      await expect(retireSheet.run(who.caller, once({ sheetId }))).rejects.toThrow(NotFound);
      await expect(makeSheet.run(who.caller, wish())).rejects.toThrow(NotFound);
    }
    const theirs = {
      societyId: elsewhere.id,
      id: randomUUID(),
      sheetId,
      trench: 1,
      byMemberId: elsewhere.secretary.id,
    };
    await expect(db().trenchTick.create({ data: { ...theirs, doneOn: new Date() } })).rejects.toThrow();
  });
});

describe('methods without trenches', () => {
  it.each([
    ['forking', true],
    ['mulch', false],
  ])('%s goes by strips, and is logged as it is done', async (method, incorporated) => {
    const sheetId = await make({ method });
    const { total, atHand, sheet } = await read(sheetId);
    expect(total).toBe(10);
    expect(sheet.order.layoutBy).toBe('no-trench');
    expect(atHand?.steps.map(({ code }) => code)).toEqual(
      method === 'mulch' ? ['lay-mulch'] : ['spread-strip', 'fork-strip'],
    );
    await done(tick(sheetId, 10, { withBefore: 'yes' }));
    const logged = await works(sheetId);
    expect(logged.filter(({ kind }) => kind === 'manured')).toMatchObject([{ incorporated }]);
    expect(logged.filter(({ kind }) => kind === 'dug')).toHaveLength(method === 'mulch' ? 0 : 1);
  });
});
