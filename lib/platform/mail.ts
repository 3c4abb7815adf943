import 'server-only';
import { createTransport } from 'nodemailer';
import { env } from './env';

/** Send one mail through the configured server. */
export async function sendMail(mail: { to: string; subject: string; text: string }): Promise<void> {
  const { smtpUrl, mailFrom } = env();
  if (!smtpUrl) throw new Error('no mail server is configured');
  await createTransport(smtpUrl).sendMail({ ...mail, from: mailFrom });
}
