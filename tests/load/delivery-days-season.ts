import { encode } from 'next-auth/jwt';
import { db } from '@/lib/data/db';
import { closeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { settleDelivery } from '@/lib/usecases/deliveries/settle-delivery';
import { confirmShareOut, measureHeap } from '@/lib/usecases/deliveries/share-out';
import { typeInBookings } from '@/lib/usecases/deliveries/book-loads';
import type { Caller } from '@/lib/usecases/operation';
import { deliveryFacts, done, makeMember, makePlot, makeSociety, once } from '../fixtures/society';
import { sessionSecret } from './service';

type Member = { readonly holdingId: string; readonly cookie: string };

/** A society whose members book and collect, and its secretary's part in that. */
export type Season = Awaited<ReturnType<typeof makeSeason>>;

/** Make it on a database. */
export async function makeSeason(databaseUrl: string, count: number) {
  // The secretary works from here, by the same use-cases.
  Object.assign(process.env, {
    DATABASE_URL: databaseUrl,
    NEXTAUTH_SECRET: sessionSecret,
    NEXTAUTH_URL: 'http://127.0.0.1',
  });
  const society = await makeSociety();
  const { caller } = society.secretary;
  const members: Member[] = [];
  for (let nth = 0; nth < count; nth++) {
    const member = await makeMember(society, { name: `Member ${nth}`, email: null });
    const { holdingId } = await makePlot(society, `P${nth}`, [member.id], false);
    members.push({ holdingId, cookie: await cookieOf(member.caller) });
  }
  const steady = { capLoads: '', price: '150.00' };
  const open = async (nth: number, materialKey = 'horse-manure', densityGPerL = '400') => {
    const facts = deliveryFacts({ name: `Load ${nth + 1}`, materialKey, densityGPerL, ...steady });
    const { deliveryId } = await done(planDelivery.run(caller, once(facts)));
    await done(openDelivery.run(caller, once({ deliveryId })));
    return deliveryId;
  };
  const share = async (deliveryId: string, loads: number) => {
    await done(closeDelivery.run(caller, once({ deliveryId })));
    await done(measureHeap.run(caller, once({ deliveryId, loads: String(loads) })));
    await done(confirmShareOut.run(caller, once({ deliveryId })));
  };
  return {
    ...{ id: society.id, slug: society.slug, members, open, share, sharesOf },
    settle: (deliveryId: string) => done(settleDelivery.run(caller, once({ deliveryId }))),
    /** One that the first members collect many loads of: for what one tick costs, again and again. */
    openAndShare: async (each: number, count: number) => {
      const deliveryId = await open(-1, 'cattle-manure', '750');
      const rows = members.slice(0, count).map(({ holdingId }) => ({ holdingId, asked: String(each) }));
      for (let at = 0; at < rows.length; at += 20)
        await done(typeInBookings.run(caller, once({ deliveryId, rows: rows.slice(at, at + 20) })));
      await share(deliveryId, each * rows.length);
      return deliveryId;
    },
  };
}

async function cookieOf({ accountId }: Caller): Promise<string> {
  return `barrowmoot=${await encode({ token: { sub: accountId, version: 1 }, secret: sessionSecret })}`;
}

async function sharesOf(deliveryId: string): Promise<ReadonlyMap<string, number>> {
  const rows = await db().booking.findMany({ where: { deliveryId }, select: { holdingId: true, share: true } });
  return new Map(rows.map(({ holdingId, share }) => [holdingId, share ?? 0]));
}
