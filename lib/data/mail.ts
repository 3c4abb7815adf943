import 'server-only';
import type { Db, Tx } from './db';

export type Mail = {
  readonly to: string;
  readonly subject: string;
  readonly body: string;
  readonly societyId: string | null;
  /** Where it is ended with one press, where it comes of itself. */
  readonly endsUrl?: string;
};

/** Queue mail in the transaction that causes it: both happen or neither. Answers the mails' ids, in order. */
export async function queueMail(tx: Tx, mails: readonly Mail[]): Promise<string[]> {
  const ids: string[] = [];
  for (const { to: toAddress, ...mail } of mails) {
    const { id } = await tx.mailMessage.create({ data: { toAddress, ...mail }, select: { id: true } });
    await tx.$executeRaw`SELECT graphile_worker.add_job('send-mail', json_build_object('id', ${id}::text))`;
    ids.push(id);
  }
  return ids;
}

/** A mail that waits to be sent, or null when another process has sent it. */
export function mailToSend(db: Db, id: string) {
  return db.mailMessage.findFirst({ where: { id, sentAt: null } });
}

/** Mark a mail as sent. Its words may hold a link that opens a door, so they are not kept. */
export async function markSent(db: Db, id: string, at: Date): Promise<void> {
  await db.mailMessage.updateMany({ where: { id }, data: { sentAt: at, body: '', endsUrl: null } });
}

/** The newest mails, for the demo's mailbox page. */
export function newestMail(db: Db) {
  return db.mailMessage.findMany({ orderBy: { createdAt: 'desc' }, take: 100 });
}
