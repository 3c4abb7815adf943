import 'server-only';
import { env } from '@/lib/platform/env';
import { workQueue } from '@/lib/platform/jobs';
import { closeBallot } from './ballots/close-ballot';
import { solveCourse } from './course/solve-course';
import { sendQueuedMail } from './mail/send-queued-mail';
import { type LetterWords, makeLetters, queueWeeklyLetters } from './reminders/weekly-letter';
import { drawTrials } from './trials/draw-trial';

const hourly = '5 * * * *';
const drawing = { task: 'draw-trials', cron: '10 * * * *' };

/**
 * Begin to work what is queued, in this process. Mail goes out where a mail server is configured; without one it waits in
 * the queue, and the demo shows it. Weekly letters are made only where they can be sent, or seen.
 */
export function startWork({ letter }: { letter: LetterWords }): Promise<{ stop: () => Promise<void> }> {
  const { smtpUrl, demo } = env();
  const mail = smtpUrl ? { 'send-mail': sendQueuedMail } : {};
  const always = { 'solve-course': solveCourse, 'close-ballot': closeBallot, 'draw-trials': drawTrials };
  if (!smtpUrl && !demo) return workQueue(always, [drawing]);
  return workQueue(
    {
      ...always,
      'queue-weekly-letters': queueWeeklyLetters,
      'weekly-letters': makeLetters(letter),
      ...mail,
    },
    [{ task: 'queue-weekly-letters', cron: hourly }, drawing],
  );
}
