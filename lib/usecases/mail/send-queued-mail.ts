import 'server-only';
import { db } from '@/lib/data/db';
import { mailToSend, markSent } from '@/lib/data/mail';
import { now } from '@/lib/platform/clock';
import { sendMail } from '@/lib/platform/mail';

/** Send a queued mail, unless it was sent already. */
export async function sendQueuedMail({ id }: { id: string }): Promise<void> {
  const mail = await mailToSend(db(), id);
  if (!mail) return;
  const { toAddress: to, subject, body: text, endsUrl } = mail;
  await sendMail({ id, to, subject, text, endsUrl });
  await markSent(db(), id, now());
}
