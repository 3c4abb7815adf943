import 'server-only';
import type { Db } from '@/lib/data/db';
import { type HoldingOnDay, holdingById } from '@/lib/data/holding';
import type { Scope } from '@/lib/data/scope';
import { lockPacket, type SeedPacketRecord } from '@/lib/data/seed-packet';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { canSeePrivateRecords } from '@/lib/domain/policy/holding';
import type { WriteContext } from '../operation';
import { NotFound } from '../refusal';

type At = { readonly db: Db; readonly scope: Scope; readonly today: CalendarDate };

/** A holding of the viewer's own, with its tin: to anybody else, the secretary too, it does not exist. */
export async function openTin({ db, scope, today }: At, holdingId: string): Promise<HoldingOnDay> {
  const holding = await holdingById(db, scope, holdingId, today);
  if (!holding || !canSeePrivateRecords(scope, holding)) throw new NotFound();
  return holding;
}

/** A packet of the viewer's own tin, locked until the transaction ends. */
export async function openPacket(context: WriteContext, packetId: string): Promise<SeedPacketRecord> {
  const { tx, scope, today } = context;
  const packet = await lockPacket(tx, scope, packetId);
  if (!packet) throw new NotFound();
  await openTin({ db: tx, scope, today }, packet.holdingId);
  return packet;
}
