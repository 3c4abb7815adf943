import 'server-only';
import { db } from '@/lib/data/db';
import { mailToSend, markSent } from '@/lib/data/mail';
import { now } from '@/lib/platform/clock';
import { env } from '@/lib/platform/env';
import { workQueue } from '@/lib/platform/jobs';
import { sendMail } from '@/lib/platform/mail';

/** Send a queued mail, unless it was sent already. */
async function sendQueuedMail({ id }: { id: string }): Promise<void> {
  const mail = await mailToSend(db(), id);
  if (!mail) return;
  await sendMail({ to: mail.toAddress, subject: mail.subject, text: mail.body });
  await markSent(db(), id, now());
}

/** Begin sending, where a mail server is configured. Without one, mail waits in the queue and the demo shows it. */
export async function startSendingMail(): Promise<{ stop: () => Promise<void> } | null> {
  return env().smtpUrl ? workQueue({ 'send-mail': sendQueuedMail }) : null;
}
