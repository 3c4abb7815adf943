import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { judgePlanting } from '@/lib/usecases/ground/judge-planting';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { recordTrouble, retireTrouble } from '@/lib/usecases/ground/keep-troubles';
import { readBed, readGround } from '@/lib/usecases/ground/read-ground';
import { changeSetting } from '@/lib/usecases/settings/settings';
import { readSite } from '@/lib/usecases/site/read-site';
import { readTroubles } from '@/lib/usecases/site/read-troubles';
import { todayIn } from '@/lib/platform/clock';
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

let society: TestSociety;
let holder: TestMember;
let neighbour: TestMember;
let far: TestMember;
let bed: Awaited<ReturnType<typeof makeBed>>;

beforeAll(async () => {
  society = await makeSociety();
  [holder, neighbour, far] = [await makeMember(society), await makeMember(society), await makeMember(society)];
  const plot = await makePlot(society, '1', [holder.id]);
  const beside = await makePlot(society, '2', [neighbour.id]);
  const beyond = await makePlot(society, '3', [far.id]);
  await db().frame.update({ where: { id: beside.frameId }, data: { originXCm: 900 } });
  await db().frame.update({ where: { id: beyond.frameId }, data: { originXCm: 9000 } });
  bed = await makeBed(society, plot);
  for (const season of ['2023', '2024', '2025', '2026'])
    await done(recordPlanting.run(holder.caller, once({ bedId: bed.id, cropKey: 'bare', season })));
});

const found = (change: object = {}) =>
  once({ bedId: bed.id, troubleKey: 'clubroot', certainty: 'likely', foundOn: '2024-09-01', ...change });

describe('a trouble found in a corner', () => {
  it('gives that corner its longer break, and the rest of the bed none', async () => {
    const ask = { bedId: bed.id, cropKey: 'kale', season: '2027' };
    expect(await judgePlanting.run(holder.caller, ask)).toMatchObject({ verdict: 'kept' });
    await done(recordTrouble.run(holder.caller, found({ partFrom: '0 m', partLength: '0.5 m', notes: 'by the tap' })));
    const judged = await judgePlanting.run(holder.caller, ask);
    expect(judged).toMatchObject({ verdict: 'short', areas: { shortCm2: 600 * 50 }, moveToCm: null });
    const onions = await judgePlanting.run(holder.caller, { ...ask, cropKey: 'onion' });
    expect(onions).toMatchObject({ verdict: 'kept' });
    const beyond = await judgePlanting.run(holder.caller, { ...ask, partFrom: '0.5 m', partLength: '1.5 m' });
    expect(beyond).toMatchObject({ verdict: 'kept' });
    const [one] = (await readBed.run(holder.caller, { bedId: bed.id })).troubles;
    expect(one).toMatchObject({ troubleKey: 'clubroot', lastFed: 2024, freeFrom: 2032, notes: 'by the tap' });
    expect(one?.left.range?.mostPermille).toBeGreaterThan(500);
  });

  it('is the society’s to judge: its own years count from the day it sets them', async () => {
    const from = todayIn('Europe/London');
    const set = (value: string) =>
      done(changeSetting.run(society.secretary.caller, once({ key: 'trouble.clubroot', value, from })));
    await set('99');
    expect((await readBed.run(holder.caller, { bedId: bed.id })).troubles[0]).toMatchObject({ freeFrom: null });
    await set('5');
    expect((await readBed.run(holder.caller, { bedId: bed.id })).troubles[0]).toMatchObject({ freeFrom: 2030 });
  });

  it('is seen by the secretary where it lies, by a neighbour as one nearby, by others not at all', async () => {
    const { troubles } = await readTroubles.run(society.secretary.caller, {});
    expect(troubles).toMatchObject([{ troubleKey: 'clubroot', plots: ['1'], areaCm2: 600 * 50 }]);
    expect(JSON.stringify(troubles)).not.toContain('by the tap');
    const nearby = async ({ caller }: TestMember) => (await readGround.run(caller, {})).nearby;
    expect([await nearby(holder), await nearby(neighbour), await nearby(far)]).toEqual([false, true, false]);
    expect(JSON.stringify(await readGround.run(neighbour.caller, {}))).not.toContain('clubroot');
    const from = todayIn('Europe/London');
    await done(changeSetting.run(society.secretary.caller, once({ key: 'troublesNearby', value: 'nothing', from })));
    expect(await nearby(neighbour)).toBe(false);
  });

  it('makes the site fall short where a host is planted on it', async () => {
    await done(recordPlanting.run(holder.caller, once({ bedId: bed.id, cropKey: 'kale', season: '2027' })));
    const site = await readSite.run(society.secretary.caller, { season: '2027' });
    expect(site.site && site.compliance.byTrouble).toEqual([{ troubleKey: 'clubroot', shortCm2: 600 * 50 }]);
  });

  it('can be taken back as a mistake, and is refused for a day to come', async () => {
    const row = await db().trouble.findFirstOrThrow({ where: { societyId: society.id } });
    await done(retireTrouble.run(holder.caller, once({ troubleId: row.id, sure: 'yes' })));
    expect((await readBed.run(holder.caller, { bedId: bed.id })).troubles).toEqual([]);
    expect(await refusedWith(recordTrouble.run(holder.caller, found({ foundOn: '2099-01-01' })))).toEqual([
      'found-in-the-future',
    ]);
    expect(await refusedWith(recordTrouble.run(holder.caller, found({ troubleKey: 'greenfly' })))).toEqual([
      'trouble-unknown',
    ]);
  });
});
