import { beforeEach, describe, expect, it, vi } from 'vitest';
import { wordsFor } from '@/app/_server/words';
import { storeDated } from '@/app/_server/words/dated-store';
import { db } from '@/lib/data/db';
import { holdingsOfMember } from '@/lib/data/holding';
import { openScopeOfMember } from '@/lib/data/scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { readWeek } from '@/lib/usecases/week/read-week';
import { changeHolders } from '@/lib/usecases/plots/keep-tenancies';
import { NotFound } from '@/lib/usecases/refusal';
import { datesOfStore } from '@/lib/usecases/store/dates-store';
import { finishLot, goOverLot, undoGoingOver } from '@/lib/usecases/store/go-over-lot';
import { correctLot, cureLot, moveLot, takeBackLot } from '@/lib/usecases/store/keep-lots';
import { addPlace, changePlace, retirePlace } from '@/lib/usecases/store/keep-places';
import { putIn } from '@/lib/usecases/store/put-in';
import { readKind } from '@/lib/usecases/store/read-kind';
import { readLasts } from '@/lib/usecases/store/read-lasts';
import { readLot } from '@/lib/usecases/store/read-lot';
import { readLotForm } from '@/lib/usecases/store/read-lot-form';
import { readRound } from '@/lib/usecases/store/read-round';
import { readStore } from '@/lib/usecases/store/read-store';
import { sayUse } from '@/lib/usecases/store/say-use';
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

// The clock that the use-cases read, moved by hand: a store is gone over all winter.
const clock = vi.hoisted(() => ({ at: new Date('2026-09-01T08:00:00Z') }));
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
let shed: string;
let room: string;

beforeEach(async () => {
  morning('2026-09-01');
  society = await makeSociety();
  holder = await makeMember(society, { name: 'Ada' });
  partner = await makeMember(society, { name: 'Zeb' });
  plot = await makePlot(society, 'A1', [holder.id, partner.id]);
  shed = await place('Shed', '2');
  room = await place('Spare room', '12');
});

const place = async (name: string, cold: string) => {
  const facts = { holdingId: plot.holdingId, name, kind: 'shed', cold };
  return (await done(addPlace.run(holder.caller, once(facts)))).placeId;
};
const onions = { keepingKey: 'onion', measure: 'pieces', amount: '60', putInOn: '2026-09-01', condition: 'sound' };
const put = async (also: object = {}) =>
  (await done(putIn.run(holder.caller, once({ placeId: shed, ...onions, ...also })))).lotId;
const round = (lotId: string, found: object = {}, who = holder) => goOverLot.run(who.caller, once({ lotId, ...found }));
const look = (lotId: string) => readLot.run(holder.caller, { lotId });
const left = async (lotId: string) => (await look(lotId)).now;

describe('going over a lot', () => {
  it('is sound in one press, and balances with what is said', async () => {
    const lotId = await put();
    morning('2026-09-15');
    expect(await done(round(lotId))).toMatchObject({ sound: 60 });
    morning('2026-09-29');
    await done(round(lotId, { used: '5', bad: '2', badWhy: 'mould' }));
    expect(await left(lotId)).toEqual({ sound: 53, used: 5, bad: 2, dried: 0 });
    expect((await look(lotId)).goings.map(({ on, sound, badWhy, by }) => [on, sound, badWhy, by])).toEqual([
      ['2026-09-15', 60, null, 'Ada'],
      ['2026-09-29', 53, 'mould', 'Ada'],
    ]);
  });

  it('refuses beyond what is there, in words with the numbers', async () => {
    const lotId = await put();
    const refusals = async (found: object) => {
      const outcome = await round(lotId, found);
      return outcome.ok ? [] : outcome.refusals.map((one) => [one.field, wordsFor(one)]);
    };
    expect(await refusals({ used: '61' })).toEqual([['used', 'Only 60 were there. Give that or less.']]);
    expect(await refusals({ used: '50', bad: '11' })).toEqual([
      ['bad', 'Besides what was used, only 10 were there. Give that or less.'],
    ]);
    expect(await refusals({ used: '1', sound: '58' })).toEqual([
      ['sound', 'What was used and what was bad leave 59. Give that, or leave it empty.'],
    ]);
    expect(await refusals({ on: '2026-08-31' })).toMatchObject([['on', expect.stringContaining('2026-09-01')]]);
    expect((await look(lotId)).goings).toEqual([]);
  });

  it('of two phones at once takes no more than there was', async () => {
    const lotId = await put({ amount: '50' });
    const outcomes = await Promise.all([round(lotId, { used: '30' }), round(lotId, { used: '30' }, partner)]);
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
    const [refused] = outcomes.flatMap((one) => (one.ok ? [] : one.refusals));
    expect(refused).toMatchObject({ code: 'more-used-than-there', numbers: { there: '20' } });
    expect(await left(lotId)).toEqual({ sound: 20, used: 30, bad: 0, dried: 0 });
  });

  it('of twelve at once leaves a chain that balances', async () => {
    const lotId = await put({ amount: '50' });
    const each = Array.from({ length: 12 }, (_, at) =>
      round(lotId, { used: '5', bad: '1' }, at % 2 ? partner : holder),
    );
    const outcomes = await Promise.all(each);
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(8);
    expect(await left(lotId)).toEqual({ sound: 2, used: 40, bad: 8, dried: 0 });
  });

  it('by a page that is out of date is told so, and counts nothing twice', async () => {
    const lotId = await put();
    await done(round(lotId, { used: '5', there: '60' }));
    const late = await round(lotId, { used: '5', there: '60' }, partner);
    expect(late.ok ? [] : late.refusals.map(wordsFor)).toEqual([expect.stringContaining('55 left now')]);
    expect(await left(lotId)).toMatchObject({ sound: 55, used: 5 });
  });

  it('sent twice is done once', async () => {
    const lotId = await put();
    const input = once({ lotId, used: '5' });
    const replies = await Promise.all([goOverLot.run(holder.caller, input), goOverLot.run(holder.caller, input)]);
    expect(replies[0]).toEqual(replies[1]);
    expect(await left(lotId)).toMatchObject({ sound: 55, used: 5 });
  });

  it('is undone, the last by itself and an older one with those that rest on it', async () => {
    const lotId = await put();
    const ids: string[] = [];
    for (const day of ['2026-09-15', '2026-09-29', '2026-10-13']) {
      morning(day);
      ids.push((await done(round(lotId, { used: '10' }))).goingOverId);
    }
    const [first = '', , last = ''] = ids;
    const undo = (goingOverId: string, also: object = {}) =>
      undoGoingOver.run(holder.caller, once({ goingOverId, ...also }));
    expect(await refusedWith(undo(first))).toEqual(['gone-over-since']);
    await done(undo(last));
    expect(await left(lotId)).toMatchObject({ sound: 40 });
    await expect(undo(last)).rejects.toThrow(NotFound);
    expect(await done(undo(first, { withAfter: 'yes' }))).toMatchObject({ undone: 2 });
    expect(await left(lotId)).toEqual({ sound: 60, used: 0, bad: 0, dried: 0 });
    // The rows stay.
    expect(await db().goingOver.count({ where: { lotId } })).toBe(3);
  });

  it('by weight allows for what dried away, as the scales have it', async () => {
    const lotId = await put({ keepingKey: 'potato', measure: 'grams', amount: '28 lb' });
    expect((await look(lotId)).putIn).toBe(12_701);
    morning('2026-10-01');
    await done(round(lotId, { used: '2 kg', bad: '0.3', sound: '10,2 kg' }));
    expect(await left(lotId)).toEqual({ sound: 10_200, used: 2000, bad: 300, dried: 201 });
    expect(await refusedWith(round(lotId, { sound: '10.3 kg' }))).toEqual(['more-sound-than-left']);
    // All of it, as the page tells it: to the gram.
    const odd = await put({ keepingKey: 'carrot', measure: 'grams', amount: '28 lb' });
    await done(round(odd, { used: '12.7 kg' }));
    expect(await left(odd)).toEqual({ sound: 0, used: 12_701, bad: 0, dried: 0 });
  });

  it('comes to an end, and is begun again by an undo', async () => {
    const lotId = await put();
    morning('2026-09-10');
    const { goingOverId } = await done(finishLot.run(holder.caller, once({ lotId, how: 'bad', badWhy: 'rot' })));
    expect(await left(lotId)).toEqual({ sound: 0, used: 0, bad: 60, dried: 0 });
    expect(await refusedWith(round(lotId))).toEqual(['lot-used-up']);
    const { held, usedUp } = await readStore.run(holder.caller, {});
    expect([held.length, usedUp.map(({ id }) => id)]).toEqual([0, [lotId]]);
    await done(undoGoingOver.run(holder.caller, once({ goingOverId })));
    expect((await readStore.run(holder.caller, {})).held).toHaveLength(1);
  });
});

describe('the round', () => {
  it('says what is due by place, how late, and what was missed; nothing that is not', async () => {
    const onion = await put();
    const squash = await put({ placeId: room, keepingKey: 'squash', amount: '9' });
    await put({ keepingKey: 'potato', measure: 'grams', amount: '20 kg' });
    morning('2026-09-15');
    await done(round(squash));
    morning('2026-09-29');
    const { places } = await readRound.run(holder.caller, {});
    expect(
      places.map(({ name, rows }) => [
        name,
        rows.map(({ name: what, round: one }) => [what, one?.isDue, one?.daysLate, one?.missedRounds]),
      ]),
    ).toEqual([
      [
        'Shed',
        [
          ['Onions', true, 14, 1],
          ['Potatoes', false, 0, 0],
        ],
      ],
      ['Spare room', [['Winter squash', true, 0, 0]]],
    ]);
    await done(round(onion, { used: '4' }));
    const after = await readRound.run(partner.caller, {});
    const [row] = after.places[0]?.rows ?? [];
    expect(row).toMatchObject({ id: onion, round: { isDue: false }, last: { isToday: true, used: 4, sound: 56 } });
  });

  it('stands on the page of the week, and is gone from it once it is done', async () => {
    const lotId = await put();
    morning('2026-09-16');
    const due = async () => (await readWeek.run(holder.caller, {})).due.filter(({ code }) => code.startsWith('store-'));
    expect(await due()).toEqual([
      { code: 'store-round', placeId: shed, place: 'Shed', lots: 1, daysLate: 1, missedRounds: 0 },
    ]);
    await done(round(lotId));
    expect(await due()).toEqual([]);
  });

  it('has its day in the calendar, under a key that stays while the day moves', async () => {
    const lotId = await put();
    await put({ keepingKey: 'shallot', curingFrom: '2026-09-01' });
    const dates = async (today: string) => {
      const scope = await openScopeOfMember(db(), holder.id);
      const at = { db: db(), scope, today: today as CalendarDate };
      return datesOfStore(at, await holdingsOfMember(db(), scope, holder.id, at.today));
    };
    const [first, curing] = await dates('2026-09-01');
    expect(first).toEqual({
      ...{ key: `round ${shed} 14`, code: 'store-round', from: '2026-09-15', to: '2026-09-15' },
      facts: { place: 'Shed', lots: 2 },
    });
    expect(curing).toMatchObject({ code: 'store-cured', from: '2026-09-15', to: '2026-09-21' });
    for (const { code, facts } of [first, curing].flatMap((one) => one ?? [])) {
      const words = storeDated[code]?.(facts);
      expect(words?.title).toMatch(/^[A-Z].* (Shed|shallots)$/);
      expect(words?.path).toMatch(/^\/store\//);
    }
    morning('2026-09-20');
    await done(round(lotId));
    // The shallots are late, and so is the round of the place until they are done.
    expect((await dates('2026-09-20'))[0]).toMatchObject({ key: first?.key, from: '2026-09-15', facts: { lots: 1 } });
  });
});

describe('where a lot stands', () => {
  it('is warned of, never refused', async () => {
    const apples = await put({ keepingKey: 'apple' });
    const carrots = await put({ keepingKey: 'carrot' });
    const squash = await put({ keepingKey: 'butternut' });
    expect((await look(carrots)).warnings.apart.map(({ code, beside }) => [code, beside?.id])).toEqual(
      expect.arrayContaining([
        ['ethylene', apples],
        ['taint', apples],
      ]),
    );
    expect((await look(squash)).warnings.warmth.map(({ code }) => code)).toEqual(['chills']);
    await done(moveLot.run(holder.caller, once({ lotId: squash, placeId: room })));
    expect((await look(squash)).warnings).toEqual({ apart: [], warmth: [] });
  });

  it('is kept as it was when it is moved or corrected, and the place when it is changed', async () => {
    const lotId = await put({ variety: 'Globe' });
    const before = () => db().storeLot.findMany({ where: { societyId: society.id, retiredAt: { not: null } } });
    await done(correctLot.run(holder.caller, once({ lotId, ...onions, amount: '66', variety: 'Flat' })));
    expect(await before()).toMatchObject([{ putIn: 60, variety: 'Globe', placeId: shed }]);
    await done(moveLot.run(holder.caller, once({ lotId, placeId: room })));
    expect((await before()).map(({ placeId, variety }) => [placeId, variety])).toContainEqual([shed, 'Flat']);
    await done(changePlace.run(holder.caller, once({ placeId: room, name: 'Attic', kind: 'room', cold: '' })));
    const old = await db().storePlace.findMany({ where: { societyId: society.id, retiredAt: { not: null } } });
    expect(old).toMatchObject([{ name: 'Spare room', tenthC: 120 }]);
    expect(await look(lotId)).toMatchObject({ place: { name: 'Attic' }, placeTenthC: null, variety: 'Flat' });
    const { held } = await readStore.run(holder.caller, {});
    expect(held.map(({ id }) => id)).toEqual([lotId]);
  });

  it('keeps what goings over rest on, until they are undone', async () => {
    const lotId = await put();
    await done(round(lotId));
    const correct = (also: object) => correctLot.run(holder.caller, once({ lotId, ...onions, ...also }));
    for (const also of [{ amount: '61' }, { measure: 'grams' }, { keepingKey: 'shallot' }, { putInOn: '2026-08-30' }])
      expect(await refusedWith(correct(also))).toEqual(['gone-over-already']);
    await done(correct({ condition: 'damaged', goingOverDays: '7' }));
    expect(await look(lotId)).toMatchObject({ condition: 'damaged', round: { everyDays: 7 } });
  });

  it('is not given up while something stands there', async () => {
    const lotId = await put();
    const retire = () => retirePlace.run(holder.caller, once({ placeId: shed }));
    expect(await refusedWith(retire())).toEqual(['place-in-use']);
    await done(takeBackLot.run(holder.caller, once({ lotId, sure: 'yes' })));
    await done(retire());
    await expect(look(lotId)).rejects.toThrow(NotFound);
  });
});

describe('curing', () => {
  it('has its own clock, from the day it was laid out until it is done', async () => {
    const lotId = await put({ curingFrom: '2026-09-01' });
    const state = async () => (await look(lotId)).clock?.state;
    expect(await state()).toBe('curing');
    morning('2026-09-15');
    expect(await state()).toBe('ready');
    morning('2026-09-22');
    expect(await state()).toBe('over-long');
    expect((await readWeek.run(holder.caller, {})).due).toContainEqual(
      expect.objectContaining({ code: 'store-cured', lotId, state: 'over-long' }),
    );
    const cure = (curedOn: string) => cureLot.run(holder.caller, once({ lotId, curedOn }));
    expect(await refusedWith(cure('2026-08-31'))).toEqual(['cured-before-laid-out']);
    expect(await refusedWith(cure('2026-09-23'))).toEqual(['cured-in-future']);
    await done(cure('2026-09-18'));
    expect(await refusedWith(cure('2026-09-18'))).toEqual(['already-cured']);
    expect(await look(lotId)).toMatchObject({ curedOn: '2026-09-18', clock: { day: 17 } });
    expect((await readStore.run(holder.caller, {})).curing).toEqual([]);
  });
});

describe('will it last?', () => {
  const say = (also: object = {}) =>
    done(
      sayUse.run(
        holder.caller,
        once({ holdingId: plot.holdingId, keepingKey: 'onion', perWeek: '5', newCropFrom: '20 July', ...also }),
      ),
    );
  const kinds = async () => (await readLasts.run(holder.caller, {})).kinds;

  it('can’t be told while nothing is known of the use, and says so', async () => {
    await put();
    expect(await kinds()).toMatchObject([{ keepingKey: 'onion', runsOut: null, enough: null }]);
    await say({ perWeek: '' });
    expect(await kinds()).toMatchObject([{ enough: { answer: 'cannot-tell', reason: 'use-unknown' } }]);
  });

  it('is a range and never a bare day, and no where it is far too little', async () => {
    await put();
    await say();
    const [kind] = await kinds();
    const { least, median, most } = kind?.runsOut ?? {};
    expect([least, median, most]).toEqual([least, median, most].toSorted());
    expect(least).not.toBe(most);
    expect(kind).toMatchObject({ newCropOn: '2027-07-20', enough: { answer: 'no', reason: 'likely-too-little' } });
  });

  it('learns from rounds: what is used up counts towards the use, and a lot that rots shortens it', async () => {
    const first = await put({ amount: '20' });
    const second = await put({ amount: '60' });
    await say();
    morning('2026-09-29');
    await done(round(first, { used: '20' }));
    await done(round(second));
    const read = () => readKind.run(holder.caller, { holdingId: plot.holdingId, keepingKey: 'onion' });
    const { forecast } = await read();
    expect(forecast?.lots.map(({ id }) => id)).toEqual([second]);
    expect(forecast?.piecesPerWeek).toBeCloseTo(5, 0);
    const keeps = forecast?.runsOut?.median ?? '';
    await done(round(second, { bad: '15', badWhy: 'rot' }));
    const rotten = (await read()).forecast;
    expect((rotten?.runsOut?.median ?? '') < keeps).toBe(true);
    expect(rotten?.lots[0]?.reasons.map(({ code }) => code)).toContain('losing-fast');
  });

  it('goes to the planner as the ground that it wants, by what the ground has yielded', async () => {
    const bed = await makeBed(society, plot);
    const planting = { bedId: bed.id, cropKey: 'onion', season: '2026' };
    const { plantingId } = await done(recordPlanting.run(holder.caller, once(planting)));
    // What still stands may bear more: only cleared ground says what it yields.
    await db().planting.update({ where: { id: plantingId }, data: { clearedOn: new Date('2026-08-25') } });
    const harvest = { societyId: society.id, holdingId: plot.holdingId, plantingId, byMemberId: holder.id };
    const { id: harvestId } = await db().harvest.create({
      data: { ...harvest, onDay: new Date('2026-08-20'), measure: 'grams', amount: 24_000, quality: 'good' },
    });
    const form = await readLotForm.run(holder.caller, { harvestId });
    expect(form.harvest).toMatchObject({ amount: 24_000, cropKey: 'onion', keepings: ['onion', 'onion-mild'] });
    await put({ harvestId });
    await say();
    const { wanted } = await readKind.run(holder.caller, { holdingId: plot.holdingId, keepingKey: 'onion' });
    expect(wanted).toMatchObject({ code: 'wanted', cropKey: 'onion', days: 322, yields: 1 });
    if (wanted?.code !== 'wanted' || !wanted.areaCm2) throw new Error('no area is wanted');
    // 24 kg off 12 m² is 2 kg/m²: the middle of the area is near the middle of the weight over that.
    expect(wanted.areaCm2.median / (wanted.massG.median / 2000) / 10_000).toBeCloseTo(1, 0);
    expect(wanted.areaCm2.least).toBeLessThan(wanted.areaCm2.median);
  });

  it('keeps what was said before', async () => {
    await put();
    await say();
    await say({ perWeek: '0.5 kg', newCropFrom: '' });
    expect(await kinds()).toMatchObject([{ said: { tenthsPerWeek: 42, newCropFrom: null } }]);
    expect(await db().householdUse.count({ where: { societyId: society.id } })).toBe(2);
  });
});

describe('whose it is', () => {
  it('is its holders’ of today: a partner sees it, who has left does not, nor does a neighbour’s harvest slip in', async () => {
    const lotId = await put();
    expect(await readLot.run(partner.caller, { lotId })).toMatchObject({ id: lotId });
    await expect(readLot.run(society.secretary.caller, { lotId })).rejects.toThrow(NotFound);
    await expect(round(lotId, {}, society.secretary)).rejects.toThrow(NotFound);
    const change = { holdingId: plot.holdingId, memberIds: [holder.id], from: '2026-09-01' };
    await done(changeHolders.run(society.secretary.caller, once(change)));
    await expect(readLot.run(partner.caller, { lotId })).rejects.toThrow(NotFound);
    expect((await readStore.run(partner.caller, {})).held).toEqual([]);
    expect((await look(lotId)).id).toBe(lotId);
  });

  it('takes no lot to a place, nor from a harvest, of another holding', async () => {
    const neighbour = await makeMember(society);
    const other = await makePlot(society, 'A2', [neighbour.id]);
    const facts = { holdingId: other.holdingId, name: 'Loft', kind: 'room', cold: '' };
    const { placeId } = await done(addPlace.run(neighbour.caller, once(facts)));
    const lotId = await put();
    await expect(moveLot.run(holder.caller, once({ lotId, placeId }))).rejects.toThrow(NotFound);
    const bed = await makeBed(society, other);
    const planting = once({ bedId: bed.id, cropKey: 'onion', season: '2026' });
    const { plantingId } = await done(recordPlanting.run(neighbour.caller, planting));
    const row = { societyId: society.id, holdingId: other.holdingId, plantingId, byMemberId: neighbour.id };
    const { id: harvestId } = await db().harvest.create({
      data: { ...row, onDay: new Date('2026-08-20'), measure: 'pieces', amount: 9, quality: 'good' },
    });
    await expect(put({ harvestId })).rejects.toThrow(NotFound);
    await expect(readLotForm.run(holder.caller, { harvestId })).rejects.toThrow(NotFound);
  });
});
