import 'server-only';
import { db } from '@/lib/data/db';
import { newestMail } from '@/lib/data/mail';
import { env } from '@/lib/platform/env';
import { NotFound } from '../refusal';

/** The demo's mail, instead of sending it. It exists in the demo only. */
export async function readDemoMailbox() {
  if (!env().demo || env().smtpUrl) throw new NotFound();
  return newestMail(db());
}
