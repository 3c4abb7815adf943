import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { changeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import { readWeek } from '@/lib/usecases/week/read-week';
import { changeSetting, readSettings } from '@/lib/usecases/settings/settings';
import {
  deliveryFacts,
  done,
  makeMember,
  makePlot,
  makeSociety,
  once,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

let society: TestSociety;
let holder: TestMember;
const today = new Date().toISOString().slice(0, 10);
const rowOf = (id: string) => db().delivery.findUniqueOrThrow({ where: { id } });
const set = (key: string, value: string) =>
  done(changeSetting.run(society.secretary.caller, once({ key, value, from: today }) as never));
const plan = async () => (await done(planDelivery.run(society.secretary.caller, once(deliveryFacts())))).deliveryId;

beforeAll(async () => {
  society = await makeSociety();
  holder = await makeMember(society, { name: 'Ivy' });
  await makePlot(society, '1', [holder.id]);
});

describe('a rule that is changed', () => {
  it('leaves the need of an open delivery as it was, and counts from the next one', async () => {
    const { caller } = society.secretary;
    const open = await plan();
    await done(openDelivery.run(caller, once({ deliveryId: open })));
    const needOf = async (deliveryId: string) =>
      (await readDelivery.run(holder.caller, { deliveryId })).claims[0]?.need?.loads;
    const before = await needOf(open);
    await set('manuringIntervalYears', '6');
    await set('cultivableSharePercent', '40');
    await set('manureRateGPerM2', '3000');
    expect(await needOf(open)).toBe(before);
    await done(changeDelivery.run(caller, once({ deliveryId: open, ...deliveryFacts() })));
    expect(await rowOf(open)).toMatchObject({ intervalYears: 3, cultivableSharePercent: 75, rateGPerM2: 5000 });
    const next = await plan();
    expect(await rowOf(next)).toMatchObject({ intervalYears: 6, cultivableSharePercent: 40, rateGPerM2: 3000 });
    await done(openDelivery.run(caller, once({ deliveryId: next })));
    expect(await needOf(next)).toBeLessThan(before ?? 0);
    expect((await readSettings.run(holder.caller, {})).keeping).toHaveLength(2);
  });

  it('is told to every member, with the value before, and once', async () => {
    await set('barrowLitres', '100');
    await set('barrowLitres', '100');
    const mails = await db().mailMessage.findMany({
      where: { societyId: society.id, body: { contains: 'A barrow-load' } },
    });
    expect(mails).toHaveLength(2);
    expect(mails[0]?.body).toContain(`“A barrow-load” is 100 L from ${today}; it was 85 L.`);
    expect(mails[0]?.body).toContain('keep the rules they were planned with');
    const { rules } = await readWeek.run(holder.caller, {});
    expect(rules).toContainEqual({ key: 'barrowLitres', before: 85, after: 100, from: today });
  });
});
