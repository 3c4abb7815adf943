import 'server-only';
import { db } from '@/lib/data/db';
import { mailToSend, markSent } from '@/lib/data/mail';
import { now } from '@/lib/platform/clock';
import { sendMail } from '@/lib/platform/mail';

/** Send a queued mail, unless it was sent already. */
export async function sendQueuedMail({ id }: { id: string }): Promise<void> {
  const mail = await mailToSend(db(), id);
  if (!mail) return;
  await sendMail({ to: mail.toAddress, subject: mail.subject, text: mail.body });
  await markSent(db(), id, now());
}
