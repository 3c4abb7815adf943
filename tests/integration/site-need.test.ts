import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { openScopeOfMember } from '@/lib/data/scope';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { todayIn } from '@/lib/platform/clock';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import { openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { needsByHolding, seasonServed } from '@/lib/usecases/ground/holding-need';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { logWork } from '@/lib/usecases/ground/keep-works';
import { readSiteNeed } from '@/lib/usecases/ground/read-site-need';
import { changeSocietyRecipe } from '@/lib/usecases/recipes/change-recipe';
import {
  deliveryFacts,
  done,
  makeBed,
  makeMember,
  makePlot,
  makeSociety,
  once,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

const today = todayIn('Europe/London');
const season = seasonServed(today);

let society: TestSociety;
let secretary: TestMember;
let holders: readonly TestMember[];
let beds: readonly string[];
let holdingId: string;

// Three plots: one with two beds of 12 m², one known by its rods alone, and one that is to let.
beforeAll(async () => {
  society = await makeSociety();
  secretary = society.secretary;
  holders = [await makeMember(society), await makeMember(society)];
  const [drawn, rods] = [
    await makePlot(society, 'N2', [holders[0]?.id ?? '']),
    await makePlot(society, 'N10', [holders[1]?.id ?? ''], false),
  ];
  await makePlot(society, 'N3', []);
  holdingId = drawn.holdingId;
  beds = [(await makeBed(society, drawn, 0)).id, (await makeBed(society, drawn, 1)).id];
  await manured(0, season - 3);
  await manured(1, season - 1);
  expect(rods.holdingId).not.toBe('');
});

async function manured(bed: number, forSeason: number) {
  const data = { footprint: { xCm: 60, yCm: 60 + bed * 260, widthCm: 600, lengthCm: 200 } };
  const { frameId } = await db().bed.findUniqueOrThrow({ where: { id: beds[bed] ?? '' } });
  await db().groundWork.create({
    data: { ...data.footprint, societyId: society.id, frameId, season: forSeason, kind: 'manured' },
  });
}

const plan = (bed: number, cropKey: string, forSeason: number) =>
  done(recordPlanting.run(secretary.caller, once({ bedId: beds[bed] ?? '', cropKey, season: String(forSeason) })));

async function read(asked: object = {}) {
  const answer = await readSiteNeed.run(secretary.caller, asked);
  if (!('holdings' in answer)) throw new Error('there is no site');
  return answer;
}
const due = async () => (await read()).years.map(({ dueCm2 }) => dueCm2);

// Three quarters of five rods are cultivable: 75 % of 1,264,643 cm².
const rodsCm2 = 948_482;

describe('what the ground of a site asks for', () => {
  it('is told by holding with the reasons, as each would book it, in the order of the plots', async () => {
    const { holdings, years, toLet, barrowLoadG } = await read();
    expect(toLet).toBe(1);
    expect(barrowLoadG).toBe(34_000);
    expect(holdings).toMatchObject([
      { plots: ['N2'], loads: 2, massG: 60_000, assumedG: 0, dueCm2: 120_000, notYetCm2: 120_000, unloggedCm2: 0 },
      { plots: ['N10'], loads: 5, unloggedCm2: rodsCm2, dueCm2: 0, assumedG: 158_080 },
    ]);
    expect(years[0]).toMatchObject({ season, loads: 7, massG: 60_000 + 158_080, plannedCm2: 0, strewn: [] });
    expect(JSON.stringify(holdings)).not.toContain('Member');
  });

  it('agrees with what holders are told when they book', async () => {
    const { holdings, dressing } = await read();
    const held = await db().tenancy.findMany({ where: { societyId: society.id } });
    const scope = await openScopeOfMember(db(), secretary.id);
    const booked = await needsByHolding(
      db(),
      scope,
      held.map(({ holdingId: id, plotId }) => ({ id, plotIds: [plotId] })),
      { season, day: today, dressing },
    );
    expect(holdings.map(({ id, loads }) => [id, loads])).toEqual(holdings.map(({ id }) => [id, booked.get(id)?.loads]));
  });

  it('comes round again in the years to come, as if each year’s due ground were manured', async () => {
    expect(await due()).toEqual([120_000, 0, 120_000, 120_000]);
  });

  it('waits where a crop is planned that takes none, and then stays due', async () => {
    await plan(0, 'carrot', season);
    const { holdings, years } = await read();
    expect(holdings[0]).toMatchObject({ dueCm2: 0, skippedCm2: 120_000 });
    expect(years.map(({ dueCm2 }) => dueCm2)).toEqual([0, 120_000, 120_000, 0]);
    expect(years[0]).toMatchObject({ plannedCm2: 120_000, skippedCm2: 120_000 });
    expect(years[1]?.plannedCm2).toBe(0);
  });

  it('is lighter in loads of heavier manure, and takes no material that feeds no turns', async () => {
    const { years, dressing } = await read({ materialKey: 'cattle-manure' });
    expect(dressing).toMatchObject({ materialKey: 'cattle-manure', densityGPerL: 750 });
    expect(years[0]?.massG).toBe(158_080);
    expect(years[0]?.loads).toBe(3);
    for (const materialKey of ['straw', 'gravel', '__proto__'])
      expect((await read({ materialKey })).dressing.materialKey).toBe('horse-manure');
  });

  it('holds straw and meals by the society’s recipes, less what the ground has had', async () => {
    await plan(1, 'onion', season);
    const strewn = async () => (await read()).years[0]?.strewn;
    expect(await strewn()).toEqual([
      { key: 'straw', massG: 6000 },
      { key: 'hoof-and-horn', massG: 840 },
    ]);
    const had = { bedId: beds[1] ?? '', season: String(season), kind: 'strawed', partLength: '0.5 m' };
    await done(logWork.run(secretary.caller, once({ ...had, amount: '2', amountBy: 'weight' })));
    expect(await strewn()).toMatchObject([{ key: 'straw', massG: 4500 }, { key: 'hoof-and-horn' }]);
    const own = once({ group: 'alliums', from: today, strawGPerM2: '0', meal: 'bone-meal' });
    await done(changeSocietyRecipe.run(secretary.caller, own));
    expect(await strewn()).toEqual([{ key: 'bone-meal', massG: 840 }]);
  });

  it('is shown by holding for any of the four seasons, and for no other', async () => {
    expect((await read({ season: season + 2 })).holdings[0]).toMatchObject({ dueCm2: 120_000 });
    expect((await read({ season: season + 4 })).season).toBe(season);
    expect((await read({ season: 'soon' })).season).toBe(season);
  });

  it('stands beside what is on order, booked and collected for the season', async () => {
    expect((await read()).deliveries).toEqual([]);
    const deliveryId = (await done(planDelivery.run(secretary.caller, once(deliveryFacts())))).deliveryId;
    await db().delivery.update({ where: { id: deliveryId }, data: { arrivesOn: new Date(today) } });
    const chair = await makeMember(society, { roles: ['chair'] });
    const seenByChair = async () => {
      const answer = await readSiteNeed.run(chair.caller, {});
      return 'deliveries' in answer ? answer.deliveries.length : null;
    };
    // Only planned, it is the secretary's own affair.
    expect([(await read()).deliveries.length, await seenByChair()]).toEqual([1, 0]);
    await done(openDelivery.run(secretary.caller, once({ deliveryId })));
    const booking = { deliveryId, holdingId, asked: '3', beds: [] };
    await done(bookLoads.run(holders[0]?.caller ?? secretary.caller, once(booking)));
    expect((await read()).deliveries).toMatchObject([
      { id: deliveryId, state: 'open', loads: 120, askedLoads: 3, collectedLoads: 0, loadG: 34_000, feedsTurns: true },
    ]);
    expect(await seenByChair()).toBe(1);
    await db().delivery.update({
      where: { id: deliveryId },
      data: { arrivesOn: new Date(addDays(today, 400)), collectByOn: new Date(addDays(today, 401)) },
    });
    expect((await read()).deliveries).toEqual([]);
  });
});
