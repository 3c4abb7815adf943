import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import { changeDelivery, closeDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import { measureHeap } from '@/lib/usecases/deliveries/share-out';
import { tipAt } from '@/lib/usecases/deliveries/tip-at';
import { NotFound } from '@/lib/usecases/refusal';
import { addDropPoint, changeDropPoint, retireDropPoint } from '@/lib/usecases/site/keep-drop-points';
import { addPath, changePath, retirePath } from '@/lib/usecases/site/keep-paths';
import { listDropPoints, readPaths } from '@/lib/usecases/site/read-paths';
import { readSite } from '@/lib/usecases/site/read-site';
import { openLoad } from '../fixtures/open-load';
import {
  deliveryFacts,
  done,
  makeMember,
  makePlot,
  makeSociety,
  once,
  refusedWith,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

const sure = 'yes';

describe('paths', () => {
  let society: TestSociety;
  let secretary: TestMember['caller'];
  const path = (change: object = {}) =>
    once({ siteId: society.siteId, points: '0, 22\n30, 22', lorry: 'none', ...change });
  beforeAll(async () => {
    society = await makeSociety();
    secretary = society.secretary.caller;
  });

  it('are drawn, changed and retired, and each change stands in the book', async () => {
    const { pathId } = await done(
      addPath.run(secretary, path({ name: 'Track', lorry: 'part', lorryFrom: '', lorryTo: '12.5' })),
    );
    const drawn = { id: pathId, name: 'Track', lorry: { fromCm: 0, toCm: 1250 } };
    expect((await readPaths.run(secretary, {})).paths).toMatchObject([
      {
        ...drawn,
        points: [
          { xCm: 0, yCm: 2200 },
          { xCm: 3000, yCm: 2200 },
        ],
      },
    ]);
    await done(changePath.run(secretary, once({ pathId, points: '0, 22\n-3, 22', lorry: 'whole' })));
    const { site } = await readSite.run(secretary, {});
    expect(site?.paths).toMatchObject([{ name: null, lorry: 'whole', points: [{ xCm: 0 }, { xCm: -300 }] }]);
    await done(retirePath.run(secretary, once({ pathId, sure })));
    expect((await readPaths.run(secretary, {})).paths).toEqual([]);
    expect(await db().sitePath.count({ where: { id: pathId } })).toBe(1);
    const book = await db().auditRow.findMany({ where: { thing: 'path', thingId: pathId }, orderBy: { at: 'asc' } });
    expect(book.map(({ verb }) => verb)).toEqual(['drawn', 'changed', 'retired']);
    expect(book[1]).toMatchObject({ before: { lengthCm: 3000, lorry: 'part', toCm: 1250 }, after: { lengthCm: 300 } });
    await expect(retirePath.run(secretary, once({ pathId, sure }))).rejects.toThrow(NotFound);
    await expect(changePath.run(secretary, once({ pathId, points: '0,0\n1,1', lorry: 'none' }))).rejects.toThrow(
      NotFound,
    );
  });

  it.each([
    [{ points: '0, 22' }, 'path-without-length', 'points'],
    [{ points: '5, 5\n5, 5' }, 'path-without-length', 'points'],
    [{ points: '0, 22\nthere, 22' }, 'path-point-wrong', 'points'],
    [{ points: '0, 22\n10000.01, 22' }, 'path-too-far', 'points'],
    [{ lorry: 'part', lorryTo: '30.01' }, 'lorry-part-beyond', 'lorryTo'],
    [{ lorry: 'part', lorryFrom: '-1' }, 'lorry-part-wrong', 'lorryFrom'],
    [{ lorry: 'part', lorryFrom: '9', lorryTo: '9' }, 'lorry-part-backwards', 'lorryTo'],
    [{ lorry: 'part', lorryFrom: '30' }, 'lorry-part-backwards', 'lorryFrom'],
  ])('%j is refused beside its field', async (change, code, field) => {
    const outcome = await addPath.run(secretary, path(change));
    expect(outcome).toMatchObject({ ok: false, refusals: [{ code, field }] });
  });

  it('sent twice is drawn once', async () => {
    const input = path();
    const first = await done(addPath.run(secretary, input));
    expect(await done(addPath.run(secretary, input))).toEqual(first);
    expect(await db().sitePath.count({ where: { siteId: society.siteId, retiredAt: null } })).toBe(1);
  });

  it('are typed in feet by those who measure so', async () => {
    const member = await makeMember(society, { roles: ['secretary'] });
    await db().member.update({ where: { id: member.id }, data: { units: 'imperial' } });
    const { pathId } = await done(addPath.run(member.caller, path({ points: '10, 20\n10, 32' })));
    expect(await db().sitePath.findUnique({ where: { id: pathId } })).toMatchObject({
      points: [
        [305, 610],
        [305, 975],
      ],
    });
  });
});

describe('drop points', () => {
  let society: TestSociety;
  let secretary: TestMember['caller'];
  const make = (name: string, change: object = {}) =>
    addDropPoint.run(secretary, once({ siteId: society.siteId, name, east: '3', south: '22', ...change }));
  beforeAll(async () => {
    society = await makeSociety();
    secretary = society.secretary.caller;
  });

  it('have names of their own, among those in use', async () => {
    const { dropPointId } = await done(make('The gate'));
    expect(await refusedWith(make('the GATE'))).toEqual(['drop-point-name-taken']);
    const { dropPointId: other } = await done(make('The yard'));
    const renamed = once({ dropPointId: other, name: 'The gate', east: '0', south: '0' });
    expect(await refusedWith(changeDropPoint.run(secretary, renamed))).toEqual(['drop-point-name-taken']);
    await done(changeDropPoint.run(secretary, once({ dropPointId, name: 'THE GATE', east: '-1', south: '0' })));
    await done(retireDropPoint.run(secretary, once({ dropPointId, sure })));
    await done(make('The gate'));
  });

  it('of two who make the same at once, one is told that it is there', async () => {
    const outcomes = await Promise.all([make('At once'), make('At once')]);
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
    const refused = outcomes.find((one) => !one.ok);
    expect(refused).toMatchObject({ refusals: [{ code: 'drop-point-name-taken', field: 'name' }] });
  });

  it('take a delivery that is planned or sent there, and are not retired under it', async () => {
    const { dropPointId } = await done(make('Bay'));
    const { dropPointId: next } = await done(make('Next bay'));
    const deliveryId = await openLoad(society, { dropPointId });
    expect((await readDelivery.run(secretary, { deliveryId })).tippedAt).toBe('Bay');
    const retire = () => retireDropPoint.run(secretary, once({ dropPointId, sure }));
    expect(await refusedWith(retire())).toEqual(['drop-point-awaited']);
    const holder = await makeMember(society);
    const { holdingId } = await makePlot(society, 'B1', [holder.id]);
    await done(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked: '2', beds: [] })));
    await done(tipAt.run(secretary, once({ deliveryId, dropPointId: next })));
    expect((await readDelivery.run(holder.caller, { deliveryId })).tippedAt).toBe('Next bay');
    const mail = await db().mailMessage.findMany({ where: { societyId: society.id }, orderBy: { id: 'asc' } });
    expect(JSON.stringify(mail.at(-1))).toContain('is to be tipped at: Next bay');
    await done(retire());
    expect(await refusedWith(tipAt.run(secretary, once({ deliveryId, dropPointId })))).toEqual(['drop-point-gone']);
    const facts = once({ ...deliveryFacts(), deliveryId, dropPointId });
    expect(await refusedWith(changeDelivery.run(secretary, facts))).toEqual(['drop-point-gone']);
    await done(closeDelivery.run(secretary, once({ deliveryId })));
    await done(measureHeap.run(secretary, once({ deliveryId, loads: '9' })));
    expect(await refusedWith(tipAt.run(secretary, once({ deliveryId, dropPointId: next })))).toEqual(['step-not-now']);
  });

  it('of another site of the society take the load with them, and none that goes elsewhere', async () => {
    const site = await db().site.create({ data: { societyId: society.id, name: 'Zoo site' } });
    const { dropPointId } = await done(make('Far bay', { siteId: site.id }));
    const planned = await done(planDelivery.run(secretary, once(deliveryFacts({ dropPointId }))));
    expect(await db().delivery.findUnique({ where: { id: planned.deliveryId } })).toMatchObject({ siteId: site.id });
    expect((await listDropPoints.run(secretary, {})).map(({ name }) => name)).toContain(`${site.name}: Far bay`);
    const deliveryId = await openLoad(society, { materialKey: 'cattle-manure', densityGPerL: '750' });
    expect(await refusedWith(make('Another', { siteId: site.id, deliveryId }))).toEqual(['drop-point-elsewhere']);
    expect(await db().dropPoint.count({ where: { name: 'Another' } })).toBe(0);
  });

  it('a retirement and a plan that cross: never a load for a place that is gone', async () => {
    const { dropPointId } = await done(make('Contended'));
    const [retired, planned] = await Promise.all([
      retireDropPoint.run(secretary, once({ dropPointId, sure })),
      planDelivery.run(secretary, once(deliveryFacts({ dropPointId, name: 'Crossing' }))),
    ]);
    expect([retired.ok, planned.ok].filter(Boolean)).toHaveLength(1);
  });
});
