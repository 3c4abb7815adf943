import 'server-only';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** A packet in a holding's tin. It is the holding's alone. */
export type SeedPacketRecord = {
  readonly id: string;
  readonly holdingId: string;
  readonly cropKey: string;
  readonly variety: string | null;
  readonly seeds: number;
  readonly packedYear: number | null;
  readonly germinationPercent: number | null;
  readonly wantId: string | null;
  readonly usedUpAt: Date | null;
};

const shown = {
  id: true,
  holdingId: true,
  cropKey: true,
  variety: true,
  seeds: true,
  packedYear: true,
  germinationPercent: true,
  wantId: true,
  usedUpAt: true,
} as const;

/** The packets of holdings, by crop; those used up too where they are asked for. */
export function packetsOf(
  db: Db,
  { societyId }: Scope,
  holdingIds: readonly string[],
  also: { readonly usedUp?: boolean } = {},
): Promise<SeedPacketRecord[]> {
  return db.seedPacket.findMany({
    where: {
      ...{ societyId, holdingId: { in: [...holdingIds] }, retiredAt: null },
      ...(also.usedUp ? {} : { usedUpAt: null }),
    },
    select: shown,
    orderBy: [{ cropKey: 'asc' }, { createdAt: 'asc' }, { id: 'asc' }],
  });
}

/** One packet, locked until the transaction ends, so that seed taken from it by two at once is taken twice; or null. */
export async function lockPacket(tx: Tx, { societyId }: Scope, id: string): Promise<SeedPacketRecord | null> {
  await tx.$queryRaw`SELECT 1 FROM "SeedPacket" WHERE "id" = ${id}::uuid AND "societyId" = ${societyId}::uuid FOR UPDATE`;
  return tx.seedPacket.findFirst({ where: { id, societyId, retiredAt: null }, select: shown });
}

export type PacketFacts = Omit<SeedPacketRecord, 'id' | 'holdingId' | 'usedUpAt'>;

/** Put packets into the tin. */
export async function createPackets(
  tx: Tx,
  { societyId, memberId: byMemberId }: Scope,
  holdingId: string,
  packets: readonly PacketFacts[],
): Promise<string[]> {
  const rows = await tx.seedPacket.createManyAndReturn({
    data: packets.map((packet) => ({ ...packet, societyId, holdingId, byMemberId })),
    select: { id: true },
  });
  return rows.map(({ id }) => id);
}

type PacketChange = Partial<Omit<PacketFacts, 'wantId'>> & { usedUpAt?: Date | null; retiredAt?: Date };

export async function updatePacket(tx: Tx, { societyId }: Scope, id: string, data: PacketChange): Promise<void> {
  await tx.seedPacket.updateMany({ where: { id, societyId }, data });
}

/** Which of some wants came into the tin. */
export async function wantsInTin(
  db: Db,
  { societyId }: Scope,
  wantIds: readonly string[],
): Promise<ReadonlySet<string>> {
  const rows = await db.seedPacket.findMany({
    where: { societyId, wantId: { in: [...wantIds] }, retiredAt: null },
    select: { wantId: true },
  });
  return new Set(rows.flatMap(({ wantId }) => wantId ?? []));
}
