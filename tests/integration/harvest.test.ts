import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { openScopeOfMember } from '@/lib/data/scope';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { todayIn } from '@/lib/platform/clock';
import { splitBed } from '@/lib/usecases/ground/keep-beds';
import { fillGrid, recordPlanting, retirePlanting } from '@/lib/usecases/ground/keep-plantings';
import { readBed } from '@/lib/usecases/ground/read-ground';
import { readWeek } from '@/lib/usecases/week/read-week';
import { logHarvest, retireHarvest } from '@/lib/usecases/harvest/keep-harvests';
import { readHarvestForm, readHarvests } from '@/lib/usecases/harvest/read-harvests';
import { readHarvestsCsv, readYields } from '@/lib/usecases/harvest/read-yields';
import { yieldsOf } from '@/lib/usecases/harvest/yields-of';
import { changeOwnDetails } from '@/lib/usecases/members/keep-members';
import type { Caller } from '@/lib/usecases/operation';
import { halvePlot } from '@/lib/usecases/plots/halve-and-join';
import { endTenancy, letPlot } from '@/lib/usecases/plots/keep-tenancies';
import { NotFound } from '@/lib/usecases/refusal';
import {
  done,
  makeBed,
  makeMember,
  makePlot,
  makeSociety,
  once,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

let society: TestSociety;
let holder: TestMember;
let other: TestMember;
let neighbour: TestMember;
let secretary: Caller;
const today = todayIn('Europe/London');
const year = Number(today.slice(0, 4));
/** A season that is over: every day of it can have been. */
const past = year - 1;
const ago = (days: number) => addDays(today, -days);
let made = 0;

beforeAll(async () => {
  society = await makeSociety();
  secretary = society.secretary.caller;
  holder = await makeMember(society, { name: 'The holder' });
  other = await makeMember(society, { name: 'The other holder' });
  neighbour = await makeMember(society, { name: 'The neighbour' });
});

/** A plot of the two holders with one bed of 12 m². */
async function ground(holders = [holder, other]) {
  made += 1;
  const plot = await makePlot(
    society,
    `H${made}`,
    holders.map(({ id }) => id),
  );
  const bed = await makeBed(society, plot);
  return { ...plot, bedId: bed.id };
}

async function planted(bedId: string, cropKey: string, given: Record<string, string> = {}, caller = holder.caller) {
  const typed = { bedId, cropKey, season: String(year), ...given };
  return (await done(recordPlanting.run(caller, once(typed)))).plantingId;
}

type Typed = Partial<Record<'measure' | 'amount' | 'onDay' | 'quality' | 'notes' | 'replaces' | 'cleared', string>>;
const typed = (plantingId: string, given: Typed = {}) =>
  once({ plantingId, measure: 'grams', amount: '2 kg', onDay: today, quality: 'good', ...given });
const log = async (plantingId: string, given: Typed = {}, caller = holder.caller) =>
  (await done(logHarvest.run(caller, typed(plantingId, given)))).harvestId;
const listed = async (caller = holder.caller) => {
  const { seasons } = await readHarvests.run(caller, {});
  const each = await Promise.all(seasons.map((season) => readHarvests.run(caller, { season: String(season) })));
  return each.flatMap(({ harvests }) => harvests);
};
const yieldsFor = async (cropKey: string, caller = holder.caller) =>
  (await readYields.run(caller, {})).crops.find((crop) => crop.cropKey === cropKey)?.yields ?? [];

describe('a harvest', () => {
  it('is weighed or counted, several of one planting, and listed for its holders, the newest first', async () => {
    const { bedId } = await ground();
    const leeks = await planted(bedId, 'leek', { variety: 'Long white', sownOn: ago(60) });
    const first = await log(leeks, { amount: '1.25', onDay: ago(1), notes: 'the row by the path' });
    const second = await log(leeks, { measure: 'pieces', amount: '12', quality: 'poor' }, other.caller);
    const found = (await listed()).filter(({ plantingId }) => plantingId === leeks);
    expect(found).toMatchObject([
      { id: second, measure: 'pieces', amount: 12, quality: 'poor', by: 'The other holder', variety: 'Long white' },
      { id: first, measure: 'grams', amount: 1_250, by: null, notes: 'the row by the path', on: ago(1) },
    ]);
    expect((await readHarvestForm.run(holder.caller, { planting: leeks })).measure).toBe('pieces');
    const standing = (await readHarvests.run(holder.caller, {})).standing;
    expect(standing[0]).toMatchObject({ id: leeks, lastOn: today, variety: 'Long white' });
  });

  it('is sent twice and stands once', async () => {
    const { bedId } = await ground();
    const kale = await planted(bedId, 'kale');
    const input = typed(kale);
    const [one, two] = [
      await done(logHarvest.run(holder.caller, input)),
      await done(logHarvest.run(holder.caller, input)),
    ];
    expect(two).toEqual(one);
    expect(await db().harvest.count({ where: { plantingId: kale } })).toBe(1);
  });

  it('is kept to the gram by whoever weighs in pounds', async () => {
    const imperial = await makeMember(society, { name: 'In pounds' });
    const details = { name: 'In pounds', email: '', phone: '', postal: '', units: 'imperial' };
    await done(changeOwnDetails.run(imperial.caller, once(details)));
    const { bedId } = await ground([imperial]);
    const kale = await planted(bedId, 'kale', {}, imperial.caller);
    for (const amount of ['9 lb 4 oz', '3', '12 oz', '0.5 kg']) await log(kale, { amount }, imperial.caller);
    expect((await listed(imperial.caller)).map(({ amount }) => amount)).toEqual([500, 340, 1_361, 4_196]);
  });

  it('is corrected: the first stays in the table, and what is in store comes from the second', async () => {
    const { bedId, holdingId } = await ground();
    const onions = await planted(bedId, 'onion');
    const wrong = await log(onions, { amount: '42 kg' });
    const place = await db().storePlace.create({
      data: { societyId: society.id, holdingId, name: 'Shed', kind: 'shed' },
    });
    const lot = await db().storeLot.create({
      data: {
        ...{ societyId: society.id, holdingId, placeId: place.id, harvestId: wrong, keepingKey: 'onion' },
        ...{ measure: 'grams', putIn: 42_000, putInOn: new Date(today), condition: 'sound', byMemberId: holder.id },
      },
    });
    expect((await readHarvestForm.run(other.caller, { planting: onions, replaces: wrong })).corrects).toMatchObject({
      id: wrong,
      amount: 42_000,
    });
    const right = await log(onions, { amount: '4.2 kg', replaces: wrong }, other.caller);
    const rows = await db().harvest.findMany({ where: { plantingId: onions }, orderBy: { createdAt: 'asc' } });
    expect(rows.map(({ id, amount, retiredAt }) => [id, amount, retiredAt === null])).toEqual([
      [wrong, 42_000, false],
      [right, 4_200, true],
    ]);
    expect((await db().storeLot.findUniqueOrThrow({ where: { id: lot.id } })).harvestId).toBe(right);
    await expect(logHarvest.run(holder.caller, typed(onions, { replaces: wrong }))).rejects.toThrow(NotFound);
  });

  it('is corrected once when two do so at the same moment', async () => {
    const { bedId } = await ground();
    const onions = await planted(bedId, 'onion');
    const wrong = await log(onions);
    const both = await Promise.allSettled(
      [holder, other].map(({ caller }) => logHarvest.run(caller, typed(onions, { amount: '3 kg', replaces: wrong }))),
    );
    expect(both.map(({ status }) => status).toSorted()).toEqual(['fulfilled', 'rejected']);
    expect(await db().harvest.count({ where: { plantingId: onions, retiredAt: null } })).toBe(1);
  });

  it('is taken back: gone from sight and yields, and not from the table', async () => {
    const { bedId } = await ground();
    const swede = await planted(bedId, 'swede');
    const harvestId = await log(swede);
    expect(await yieldsFor('swede')).toHaveLength(1);
    await done(retireHarvest.run(other.caller, once({ harvestId })));
    expect(await yieldsFor('swede')).toEqual([]);
    await expect(retireHarvest.run(holder.caller, once({ harvestId }))).rejects.toThrow(NotFound);
    expect(await db().harvest.count({ where: { id: harvestId, retiredAt: { not: null } } })).toBe(1);
  });

  it('is refused beside its field where it cannot be', async () => {
    const { bedId } = await ground();
    const sown = await planted(bedId, 'carrot', { season: '', sownOn: ago(90) });
    const earlier = await planted(bedId, 'kale', { season: String(year - 3) });
    const refused = async (plantingId: string, given: Typed) => {
      const outcome = await logHarvest.run(holder.caller, typed(plantingId, given));
      return outcome.ok ? [] : outcome.refusals.map(({ code, field }) => [code, field]);
    };
    expect(await refused(sown, { onDay: addDays(today, 1) })).toEqual([['harvest-in-the-future', 'onDay']]);
    expect(await refused(sown, { onDay: ago(91) })).toEqual([['harvest-before-sown', 'onDay']]);
    expect(await refused(earlier, { onDay: `${year - 4}-10-01` })).toEqual([['harvest-out-of-season', 'onDay']]);
    expect(await refused(earlier, { onDay: `${year - 1}-01-02` })).toEqual([['harvest-out-of-season', 'onDay']]);
    expect(await refused(earlier, { onDay: `${year - 2}-03-02` })).toEqual([]);
    expect(await refused(sown, { amount: 'a bucket' })).toEqual([['harvest-weight-wrong', 'amount']]);
    expect(await refused(sown, { measure: 'pieces', amount: '2 kg' })).toEqual([['harvest-count-wrong', 'amount']]);
    expect(await refused(sown, { measure: 'pieces', amount: '100001' })).toEqual([['harvest-count-wrong', 'amount']]);
    const planned = await planted(bedId, 'leek', { season: String(year + 1) });
    await expect(logHarvest.run(holder.caller, typed(planned))).rejects.toThrow(NotFound);
    const bare = await planted(bedId, 'bare');
    await expect(logHarvest.run(holder.caller, typed(bare))).rejects.toThrow(NotFound);
  });
});

describe('what was the last of it', () => {
  it('clears the planting, tells the other holder, and keeps what was before in the book', async () => {
    const { bedId } = await ground();
    const beans = await planted(bedId, 'broad-bean', { season: '', sownOn: ago(120) });
    const { firstSeason } = await db().planting.findUniqueOrThrow({ where: { id: beans } });
    await log(beans, { onDay: ago(2), cleared: 'yes' });
    const bed = await readBed.run(holder.caller, { bedId });
    expect(bed.plantings[0]).toMatchObject({ clearedOn: ago(2) });
    const { lately } = await readWeek.run(other.caller, {});
    expect(lately).toContainEqual(expect.objectContaining({ by: 'The holder', verb: 'cleared', what: 'Broad bean' }));
    const book = await db().auditRow.findMany({ where: { societyId: society.id, thingId: beans, verb: 'cleared' } });
    expect(book).toMatchObject([
      { before: { clearedOn: null, lastSeason: firstSeason }, after: { clearedOn: ago(2) } },
    ]);
    expect((await readHarvests.run(holder.caller, {})).standing.map(({ id }) => id)).not.toContain(beans);
    // Onions lifted in August are weighed when they are dry: a cleared planting takes more.
    await log(beans, { onDay: today, cleared: 'yes' });
    expect((await readBed.run(holder.caller, { bedId })).plantings[0]?.clearedOn).toBe(ago(2));
  });

  it('ends what stood for years in the year it was cleared', async () => {
    const { bedId } = await ground();
    const rhubarb = await planted(bedId, 'rhubarb', { season: String(year - 3) });
    const before = await db().planting.findUniqueOrThrow({ where: { id: rhubarb } });
    expect(before.lastSeason).toBe(2200);
    await log(rhubarb, { onDay: `${past - 1}-05-10`, amount: '3 kg' });
    await log(rhubarb, { onDay: `${past}-06-10`, amount: '4.8 kg', cleared: 'yes' });
    const after = await db().planting.findUniqueOrThrow({ where: { id: rhubarb } });
    expect([after.firstSeason, after.lastSeason]).toEqual([year - 3, past]);
    expect((await yieldsFor('rhubarb')).map(({ season, perM2 }) => [season, perM2])).toEqual([
      [past, 400],
      [past - 1, 250],
    ]);
  });
});

describe('when the record of a planting changes', () => {
  it('its harvests follow the correction', async () => {
    const { plotId, bedId } = await ground();
    const wrong = await planted(bedId, 'parsnip');
    await log(wrong, { amount: '6 kg' });
    const right = await planted(bedId, 'parsnip', { replaces: wrong, variety: 'Long' });
    expect(await yieldsFor('parsnip')).toMatchObject([{ amount: 6_000, areaCm2: 120_000, perM2: 500 }]);
    const cells = [{ bedId, season: year, cropKey: 'beetroot' }];
    await done(fillGrid.run(holder.caller, once({ plotId, cells })));
    expect(await yieldsFor('parsnip')).toEqual([]);
    expect(await yieldsFor('beetroot')).toMatchObject([{ amount: 6_000 }]);
    expect(await db().harvest.count({ where: { plantingId: right } })).toBe(0);
  });

  it('or its bed is split, or its plot halved, what stands there is logged as before', async () => {
    const { plotId, bedId } = await ground();
    const leeks = await planted(bedId, 'leek');
    const cut = { bedId, across: 'length', at: '1 m', firstName: 'a', secondName: 'b', from: today };
    await done(splitBed.run(holder.caller, once(cut)));
    const standing = async () =>
      (await readHarvests.run(holder.caller, {})).standing.filter(({ id }) => id === leeks).map((one) => one.bedName);
    expect(await standing()).toEqual(['a']);
    await log(leeks, { amount: '1 kg' });
    const halves = {
      plotId,
      across: 'length',
      at: '10 m',
      firstNumber: `H${made}a`,
      secondNumber: `H${made}b`,
      from: today,
    };
    await done(halvePlot.run(secretary, once(halves)));
    expect(await standing()).toEqual(['a']);
    await log(leeks, { amount: '1 kg' });
    expect(await yieldsFor('leek')).toContainEqual(expect.objectContaining({ amount: 2_000, bedName: '1' }));
  });

  it('and is taken back, its harvests stay on the list and yield nothing', async () => {
    const { bedId } = await ground();
    const turnips = await planted(bedId, 'turnip');
    const harvestId = await log(turnips);
    await done(retirePlanting.run(secretary, once({ plantingId: turnips })));
    expect((await listed()).find(({ id }) => id === harvestId)).toMatchObject({ isTakenBack: true });
    expect(await yieldsFor('turnip')).toEqual([]);
  });
});

describe('yields', () => {
  const readContext = async () => ({ db: db(), scope: await openScopeOfMember(db(), holder.id), today });

  it('stand by bed, crop and season, a failure among them; and what was not weighed makes none', async () => {
    const { bedId, holdingId } = await ground();
    const [first = '', second = ''] = await Promise.all(
      [year - 1, year - 2].map((season) => planted(bedId, 'celeriac', { season: String(season) })),
    );
    await planted(bedId, 'celeriac', { season: String(year - 3) });
    await log(first, { onDay: `${year - 1}-10-01`, amount: '18 kg' });
    await log(first, { onDay: `${year}-01-10`, measure: 'pieces', amount: '12' });
    await log(second, { onDay: `${year - 2}-10-01`, amount: '0' });
    expect(
      (await yieldsFor('celeriac')).map(({ season, measure, amount, isSoFar }) => [season, measure, amount, isSoFar]),
    ).toEqual([
      [year - 1, 'pieces', 12, false],
      [year - 1, 'grams', 18_000, false],
      [year - 2, 'grams', 0, false],
    ]);
    // Twelve of half a kilogram and eighteen kilograms, off 12 m²; a failure tells nothing of how much ground to take.
    expect(await yieldsOf(await readContext(), { holdingId, cropKey: 'celeriac' })).toEqual([2_000]);
    expect(await yieldsOf(await readContext(), { holdingId, cropKey: 'chard' })).toEqual([]);
  });

  it('come as a table, in which no note begins a formula', async () => {
    const { bedId } = await ground();
    const chard = await planted(bedId, 'chard');
    await log(chard, { amount: '750 g', notes: '=1+1' });
    const { name, text } = await readHarvestsCsv.run(holder.caller, {});
    expect(name).toBe(`harvests-to-${today}.csv`);
    expect(text).toContain(`${today},H${made},1,Chard and leaf beet,,${year},750,,good,12,'=1+1`);
  });
});

describe('what somebody lifted', () => {
  it('is nobody’s but the holders’: not the neighbour’s, and not the secretary’s', async () => {
    const { bedId } = await ground();
    const peas = await planted(bedId, 'pea');
    const harvestId = await log(peas, { notes: 'not for others' });
    for (const caller of [secretary, neighbour.caller]) {
      await expect(readHarvestForm.run(caller, { planting: peas })).rejects.toThrow(NotFound);
      await expect(logHarvest.run(caller, typed(peas))).rejects.toThrow(NotFound);
      await expect(retireHarvest.run(caller, once({ harvestId }))).rejects.toThrow(NotFound);
      expect((await readHarvests.run(caller, {})).harvests).toEqual([]);
      expect((await readYields.run(caller, {})).crops).toEqual([]);
      expect((await readHarvestsCsv.run(caller, {})).text).not.toContain('Pea');
    }
    const [planting] = (await readBed.run(secretary, { bedId })).plantings;
    expect(planting).toMatchObject({ id: peas, mayBePicked: false });
    const rows = JSON.stringify(await db().auditRow.findMany({ where: { societyId: society.id, thing: 'harvest' } }));
    expect(rows).toContain('"logged"');
    expect(rows).not.toMatch(/not for others|2000/);
  });

  it('does not pass on with the ground; what stands there does', async () => {
    const last = await makeMember(society, { name: 'The last' });
    const next = await makeMember(society, { name: 'The next' });
    const { plotId, bedId } = await ground([last]);
    const kale = await planted(bedId, 'kale', { variety: 'Curly' }, last.caller);
    const onions = await planted(bedId, 'onion', { season: String(past) }, last.caller);
    await log(kale, { notes: 'his' }, last.caller);
    await log(onions, { onDay: `${past}-08-10`, cleared: 'yes' }, last.caller);
    await done(endTenancy.run(secretary, once({ plotId, from: today, sure: 'yes' })));
    await done(letPlot.run(secretary, once({ plotId, memberIds: [next.id], from: today })));
    const read = await readHarvests.run(next.caller, {});
    expect(read.harvests).toEqual([]);
    expect(read.standing).toMatchObject([{ id: kale, variety: null, lastOn: null }]);
    await log(kale, { amount: '1 kg' }, next.caller);
    await expect(logHarvest.run(next.caller, typed(onions))).rejects.toThrow(NotFound);
    expect(await yieldsFor('kale', next.caller)).toMatchObject([{ amount: 1_000, harvests: 1 }]);
    expect(await db().harvest.count({ where: { plantingId: kale, retiredAt: null } })).toBe(2);
    await expect(logHarvest.run(last.caller, typed(kale))).rejects.toThrow(NotFound);
  });
});
