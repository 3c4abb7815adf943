import 'server-only';
import { Logger, run, type Runner } from 'graphile-worker';
import { env } from './env';
import { logFailure } from './log';

// What a job was queued with is what its task takes: both stand in lib.
type Task = (payload: never) => Promise<void>;

/** Work that comes round by itself: the name of a task, and when, as cron has it, in UTC. */
type Round = { readonly task: string; readonly cron: string };

/**
 * Work the queue in this process; any number of processes may, and each job is done by one of them. What comes round is queued once,
 * however many processes there are, and once more when this one begins, for what nobody was there to do.
 */
export async function workQueue(tasks: Readonly<Record<string, Task>>, rounds: readonly Round[]): Promise<Runner> {
  const logger = new Logger(() => (level, message) => {
    if (level === 'error') logFailure('job', new Error(message));
  });
  const runner = await run({
    connectionString: env().databaseUrl,
    concurrency: 2,
    noHandleSignals: true,
    logger,
    crontab: rounds.map(({ task, cron }) => `${cron} ${task}`).join('\n'),
    taskList: Object.fromEntries(
      Object.entries(tasks).map(([name, task]) => [name, (payload) => task(payload as never)]),
    ),
  });
  for (const { task } of rounds) await runner.addJob(task, {}, { jobKey: `${task} at start` });
  return runner;
}
