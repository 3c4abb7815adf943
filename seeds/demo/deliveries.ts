import { randomUUID } from 'node:crypto';
import type { Prisma } from '@/generated/prisma/client';
import { type Change, writeAudit } from '@/lib/data/audit';
import type { Tx } from '@/lib/data/db';
import type { Scope } from '@/lib/data/scope';
import { creditsOf } from '@/lib/data/credit';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { commitmentOf, lotSeed } from '@/lib/domain/sharing/lot';
import { settle } from '@/lib/domain/sharing/settle';
import { shareOut } from '@/lib/domain/sharing/share-out';
import { drawLotBytes } from '@/lib/platform/secret';
import { postPrice } from '@/lib/usecases/money/post-price';
import type { Chance } from '../chance';

type Past = {
  name: string;
  arrivesOn: CalendarDate;
  heapLoads: number;
  expectedLoads: number;
  supplier: string;
  priceMinor: number;
  supplierId: string;
};
type Claimant = { holdingId: string; memberId: string };

const day = (text: string) => new Date(`${text}T00:00:00Z`);

/** A delivery that came, was shared out by the queue, collected and settled: every number in it is worked out, none made up. */
export async function loadPastDelivery(
  tx: Tx,
  scope: Scope,
  siteId: string,
  past: Past,
  claimants: readonly Claimant[],
  chance: Chance,
): Promise<string> {
  const { societyId } = scope;
  const deliveryId = randomUUID();
  const bytesHex = drawLotBytes();
  const bookings = claimants.map(({ holdingId, memberId }) => {
    const needLoads = chance.whole(0, 9);
    return {
      id: randomUUID(),
      societyId,
      deliveryId,
      holdingId,
      bookedByMemberId: memberId,
      needLoads,
      asked: Math.max(1, needLoads + chance.whole(-1, 4)),
      needReason: { season: 0, lines: [] },
    };
  });
  await tx.delivery.create({
    data: {
      ...facts(scope, siteId, past),
      id: deliveryId,
      state: 'collecting',
      heapLoads: past.heapLoads,
      lotBytesHex: bytesHex,
      lotCommitment: commitmentOf(bytesHex),
      lotRevealedAt: day(past.arrivesOn),
    },
  });
  await tx.booking.createMany({ data: bookings });
  const credits = await creditsOf(tx, scope, 'horse-manure');
  const frozen = bookings.map(({ id, asked, needLoads, holdingId }) => ({
    id,
    asked,
    need: needLoads,
    creditMillionths: credits.get(holdingId) ?? 0,
  }));
  const seed = lotSeed({ bytesHex, deliveryId, bookings: frozen });
  const result = shareOut({ loads: past.heapLoads, claims: frozen, lotSeed: seed });
  for (const { id, share, dueMillionths, reason } of result.shares) {
    const creditBeforeMillionths = frozen.find((claim) => claim.id === id)?.creditMillionths ?? 0;
    await tx.booking.update({
      where: { id },
      data: { share, dueMillionths, creditBeforeMillionths, reason: reason as Prisma.InputJsonValue },
    });
    if (share > 0)
      await tx.collection.create({
        data: {
          societyId,
          deliveryId,
          bookingId: id,
          loads: share,
          byMemberId: scope.memberId,
          at: day(past.arrivesOn),
        },
      });
  }
  const settled = settle({
    loads: past.heapLoads,
    claims: frozen.map((claim) => ({
      ...claim,
      collected: result.shares.find(({ id }) => id === claim.id)?.share ?? 0,
    })),
    lotSeed: seed,
  });
  const holdingOf = new Map<string, string>(bookings.map(({ id, holdingId }) => [id, holdingId]));
  await tx.creditEntry.createMany({
    data: settled.changes
      .filter(({ changeMillionths }) => changeMillionths !== 0)
      .map(({ id, changeMillionths }) => ({
        societyId,
        deliveryId,
        materialKey: 'horse-manure',
        holdingId: holdingOf.get(id) ?? null,
        changeMillionths,
        code: 'settled',
      })),
  });
  const shareOutRecord = {
    loads: past.heapLoads,
    frozen,
    lotSeed: seed,
    ended: { ...result.ended },
    method: { ...result.method },
  };
  await tx.delivery.update({
    where: { id: deliveryId },
    data: { state: 'settled', settledAt: day(past.arrivesOn), confirmedAt: day(past.arrivesOn), shareOutRecord },
  });
  const changes: Change[] = [];
  const settledOn = addDays(past.arrivesOn, 14);
  const context = { tx, scope, today: settledOn, now: day(settledOn), note: (one: Change) => void changes.push(one) };
  await postPrice(context, { id: deliveryId, name: past.name }, past.priceMinor);
  await writeAudit(tx, scope, randomUUID(), day(settledOn), changes);
  const steps: [number, string, object][] = [
    [-12, 'opened', { commitment: commitmentOf(bytesHex) }],
    [-2, 'closed', {}],
    [0, 'measured', { heapLoads: past.heapLoads }],
    [0, 'shared out', { loads: past.heapLoads, claims: bookings.length }],
    [14, 'settled', {}],
  ];
  await tx.auditRow.createMany({
    data: steps.map(([days, verb, after], at) => ({
      societyId,
      at: new Date(day(past.arrivesOn).getTime() + days * 86_400_000 + (10 + at) * 3_600_000),
      actorMemberId: scope.memberId,
      actorRoles: [...scope.roles],
      verb,
      thing: 'delivery',
      thingId: deliveryId,
      after,
    })),
  });
  return deliveryId;
}

function facts({ societyId }: Scope, siteId: string, past: Past) {
  const { name, arrivesOn, expectedLoads, supplier, supplierId, priceMinor } = past;
  return {
    societyId,
    siteId,
    name,
    supplier,
    supplierId,
    expectedLoads,
    priceMinor,
    materialKey: 'horse-manure',
    ageMonths: 14,
    amountThousandths: expectedLoads * 1000,
    amountUnit: 'loads',
    densityGPerL: 400,
    barrowLitres: 85,
    rateGPerM2: 5000,
    dropPoint: 'by the cart track, at the water tank',
    arrivesOn: day(arrivesOn),
    collectByOn: day(arrivesOn),
    closesAt: day(arrivesOn),
  };
}
