import 'server-only';
import { createTransport } from 'nodemailer';
import { env } from './env';

export type OutgoingMail = {
  /** The same whenever it is sent, so that one sent again after a crash is known for the same. */
  readonly id: string;
  readonly to: string;
  readonly subject: string;
  readonly text: string;
  readonly endsUrl: string | null;
};

/** Send one mail through the configured server. */
export async function sendMail({ id, endsUrl, ...mail }: OutgoingMail): Promise<void> {
  const { smtpUrl, mailFrom, nextAuthUrl } = env();
  if (!smtpUrl) throw new Error('no mail server is configured');
  const messageId = `<${id}@${new URL(nextAuthUrl).hostname}>`;
  // RFC 8058: one press in the reader's own program ends it.
  const headers = endsUrl
    ? { 'List-Unsubscribe': `<${endsUrl}>`, 'List-Unsubscribe-Post': 'List-Unsubscribe=One-Click' }
    : {};
  await createTransport(smtpUrl).sendMail({ ...mail, from: mailFrom, messageId, headers });
}
