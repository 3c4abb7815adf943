import 'server-only';
import { Logger, run, type Runner } from 'graphile-worker';
import { env } from './env';
import { logFailure } from './log';

type Task = (payload: { id: string }) => Promise<void>;

/** Work the queue in this process; any number of processes may, and each job is done by one of them. */
export function workQueue(tasks: Readonly<Record<string, Task>>): Promise<Runner> {
  const logger = new Logger(() => (level, message) => {
    if (level === 'error') logFailure('job', new Error(message));
  });
  return run({
    connectionString: env().databaseUrl,
    concurrency: 2,
    noHandleSignals: true,
    logger,
    taskList: Object.fromEntries(
      Object.entries(tasks).map(([name, task]) => [name, (payload) => task(payload as { id: string })]),
    ),
  });
}
