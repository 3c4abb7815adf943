import 'server-only';
import { env } from '@/lib/platform/env';
import { workQueue } from '@/lib/platform/jobs';
import { solveCourse } from './course/solve-course';
import { sendQueuedMail } from './mail/send-queued-mail';

/**
 * Begin to work what is queued, in this process. Mail goes out where a mail server is configured; without one it waits in
 * the queue, and the demo shows it.
 */
export function startWork(): Promise<{ stop: () => Promise<void> }> {
  return workQueue({ 'solve-course': solveCourse, ...(env().smtpUrl ? { 'send-mail': sendQueuedMail } : {}) });
}
