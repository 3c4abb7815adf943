import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import { closeDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { confirmShareOut, measureHeap, previewShareOut } from '@/lib/usecases/deliveries/share-out';
import { NotFound } from '@/lib/usecases/refusal';
import { addDropPoint } from '@/lib/usecases/site/keep-drop-points';
import { addPath } from '@/lib/usecases/site/keep-paths';
import { readHeapPlacing } from '@/lib/usecases/site/read-heap-placing';
import { openLoad } from '../fixtures/open-load';
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

/** A site with plots of 8 × 20 m, so far east of its corner each. */
async function makeSite(eastCm: readonly number[], holders: readonly TestMember[], society: TestSociety, first = 1) {
  const plots = [];
  for (const [at, originXCm] of eastCm.entries()) {
    const holder = holders[at];
    const plot = await makePlot(society, `P${first + at}`, holder ? [holder.id] : []);
    await db().frame.update({ where: { id: plot.frameId }, data: { originXCm, originYCm: 0 } });
    plots.push(plot);
  }
  return plots;
}

describe('where the heap walks least', () => {
  let society: TestSociety;
  let secretary: TestMember['caller'];
  let [west, east]: TestMember[] = [];
  let plots: Awaited<ReturnType<typeof makeSite>>;
  let deliveryId: string;
  const ask = (caller: TestMember['caller'], input: object = {}) =>
    readHeapPlacing.run(caller, { siteId: society.siteId, loads: deliveryId, ...input });
  const placed = async (...given: Parameters<typeof ask>) => {
    const read = await ask(...given);
    if (!read.site) throw new Error('the site is there');
    return read;
  };

  beforeAll(async () => {
    society = await makeSociety();
    secretary = society.secretary.caller;
    [west, east] = [await makeMember(society), await makeMember(society)];
    plots = await makeSite(
      [0, 4000, 9200],
      [west, east].filter((one) => one !== undefined),
      society,
    );
    deliveryId = await openLoad(society);
    const book = (member: TestMember | undefined, nth: number, asked: string) =>
      bookLoads.run(
        member?.caller ?? secretary,
        once({ deliveryId, holdingId: plots[nth]?.holdingId, asked, beds: [] }),
      );
    await done(book(west, 0, '2'));
    await done(book(east, 1, '5'));
  });

  it('by straight lines between drop points alone, while no paths are drawn', async () => {
    const none = await placed(secretary);
    expect(none.placing).toMatchObject({ basis: 'straight-lines', best: null, proof: { code: 'no-place', places: 0 } });
    for (const [name, eastM] of [
      ['Gate', '4'],
      ['Yard', '44'],
    ] as const)
      await done(addDropPoint.run(secretary, once({ siteId: society.siteId, name, east: eastM, south: '21' })));
    const { placing, lines } = await placed(secretary);
    expect(placing).toMatchObject({ basis: 'straight-lines', proof: { code: 'all-compared', places: 2 } });
    expect(lines.map(({ code }) => code)).toEqual(['straight', 'straight', 'straight']);
  });

  it('along the paths: the best place, the drop points beside it, each plot’s way', async () => {
    const track = { points: '0, 21\n100, 21', lorry: 'part', lorryTo: '20' };
    await done(addPath.run(secretary, once({ siteId: society.siteId, ...track })));
    const { placing, lines, allowed } = await placed(secretary);
    expect(allowed).toBe('lorry');
    // Of where a lorry can drive, its end is nearest to the five loads: 16 m back to the one plot, 24 m on to the other.
    expect(placing.best).toMatchObject({ at: { xCm: 2000, yCm: 2100 }, loadedCm: 2 * 1700 + 5 * 2500 });
    expect(lines.map(({ number, loads, wayCm }) => [number, loads, wayCm])).toEqual([
      ['P1', 2, 1700],
      ['P2', 5, 2500],
      ['P3', 0, 7700],
    ]);
    const anywhere = await placed(secretary, { allowed: 'anywhere' });
    const yard = anywhere.dropPoints.find(({ name }) => name === 'Yard');
    expect(anywhere.placing.best).toMatchObject({ at: { xCm: 4400, yCm: 2100 }, dropPointId: yard?.id });
    expect(anywhere.placing.dropPoints.map(({ overBestCm }) => overBestCm)).toEqual([0, 5 * 4000 - 2 * 4000]);
    const gate = anywhere.dropPoints.find(({ name }) => name === 'Gate');
    expect((await placed(secretary, { from: gate?.id })).lines[1]).toMatchObject({ number: 'P2', wayCm: 4100 });
  });

  it('tells members their own loads, and other people’s only once the lot is out', async () => {
    const seenBy = async (member: TestMember | undefined) =>
      (await placed(member?.caller ?? secretary)).lines.map(({ loads, loadedCm, wayCm }) => [loads, loadedCm, wayCm]);
    expect(await seenBy(west)).toEqual([
      [2, 3400, 1700],
      [null, null, 2500],
      [null, null, 7700],
    ]);
    const chair = await makeMember(society, { roles: ['chair'] });
    expect((await seenBy(chair)).map(([loads]) => loads)).toEqual([null, null, null]);
    await done(closeDelivery.run(secretary, once({ deliveryId })));
    await done(measureHeap.run(secretary, once({ deliveryId, loads: '6' })));
    await done(previewShareOut.run(secretary, once({ deliveryId })));
    expect((await seenBy(west)).map(([loads]) => loads)).toEqual([2, 5, 0]);
    await done(confirmShareOut.run(secretary, once({ deliveryId })));
    const after = await placed(west?.caller ?? secretary);
    expect(after.basis).toMatchObject({ kind: 'shares', delivery: { id: deliveryId, mayMove: false } });
    expect(after.lines.reduce((sum, { loads }) => sum + (loads ?? 0), 0)).toBe(6);
  });

  it('by what the ground needs: for the committee plot by plot, for a member their own', async () => {
    const read = await placed(secretary, { loads: 'need' });
    expect(read.basis).toMatchObject({ kind: 'need', delivery: null });
    const own = (await placed(west?.caller ?? secretary, { loads: 'need' })).lines;
    expect(own.map(({ loads }) => loads === null)).toEqual([false, true, true]);
    expect(own[0]?.loads).toBe(read.lines[0]?.loads);
    expect(read.lines[0]?.loads).toBeGreaterThan(0);
  });

  it('says what is left out, and where paths are not joined', async () => {
    const holder = await makeMember(society);
    const unmeasured = await makePlot(society, 'U1', [holder.id], false);
    const next = await openLoad(society, { materialKey: 'cattle-manure', densityGPerL: '750' });
    const booking = { deliveryId: next, holdingId: unmeasured.holdingId, asked: '3', beds: [] };
    await done(bookLoads.run(holder.caller, once(booking)));
    await done(addPath.run(secretary, once({ siteId: society.siteId, points: '0, 60\n90, 60', lorry: 'none' })));
    const { leftOut, notMeasured, parts, placing } = await placed(secretary, { loads: next });
    expect({ leftOut, notMeasured, parts }).toEqual({
      leftOut: [{ number: 'U1', loads: 3 }],
      notMeasured: ['U1'],
      parts: 2,
    });
    expect(placing).toMatchObject({ best: null, proof: { code: 'no-loads' } });
    expect((await placed(west?.caller ?? secretary, { loads: next })).leftOut).toEqual([{ number: 'U1', loads: null }]);
  });

  it('splits the loads of several plots by the beds that were named, else by size', async () => {
    const holder = await makeMember(society);
    const [one, two] = await makeSite([20_000, 22_000], [holder], society, 4);
    if (!one || !two) throw new Error('two plots were made');
    const common = { societyId: society.id, holdingId: one.holdingId, fromOn: new Date('2019-10-01') };
    await db().tenancy.create({ data: { ...common, plotId: two.plotId } });
    await db().plot.update({ where: { id: two.plotId }, data: { areaCm2: 4_800_000 } });
    const bed = await makeBed(society, one);
    const next = await openLoad(society, { materialKey: 'mixed-manure', densityGPerL: '600' });
    const split = async (beds: readonly string[]) => {
      const booking = { deliveryId: next, holdingId: one.holdingId, asked: '8', beds };
      await done(bookLoads.run(holder.caller, once(booking)));
      const own = (await placed(holder.caller, { loads: next })).lines.filter(({ mine }) => mine);
      return own.map(({ loads }) => loads);
    };
    expect(await split([])).toEqual([2, 6]);
    expect(await split([bed.id])).toEqual([8, 0]);
  });

  it('makes the place that was found a drop point and sends the delivery there, in one', async () => {
    const next = await openLoad(society, { materialKey: 'green-compost', densityGPerL: '500' });
    const place = { siteId: society.siteId, name: 'Found', east: '2000 cm', south: '2100 cm', deliveryId: next };
    const { dropPointId } = await done(addDropPoint.run(secretary, once(place)));
    expect(await db().delivery.findUnique({ where: { id: next } })).toMatchObject({ dropPointId });
    const verbs = await db().auditRow.findMany({
      where: { thingId: { in: [next, dropPointId] } },
      orderBy: { at: 'asc' },
    });
    expect(verbs.map(({ verb }) => verb)).toEqual(expect.arrayContaining(['added', 'to be tipped at']));
  });

  it('is not found for a delivery of another site, or of none', async () => {
    const site = await db().site.create({ data: { societyId: society.id, name: 'Zebra field' } });
    await expect(ask(secretary, { siteId: site.id })).rejects.toThrow(NotFound);
  });
});
