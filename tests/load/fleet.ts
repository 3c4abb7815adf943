import { setTimeout as wait } from 'node:timers/promises';
import type { multipart } from './form';
import { ask, type Answer } from './http';
import { type Service, serve } from './service';

/** Several processes of the service on one database, asked in turn. */
export type Fleet = {
  readonly open: (path: string, cookie: string) => Promise<string>;
  /** Send until it is acknowledged, as often as that takes; how long it took [ms]. */
  readonly post: (path: string, cookie: string, form: ReturnType<typeof multipart>, wanted: Wanted) => Promise<number>;
  /** Kill one where it stands. */
  readonly killOne: () => void;
  /** Start in place of those that were killed. */
  readonly whole: () => Promise<void>;
  readonly stop: () => Promise<void>;
};
/** Whether it must be done, or whatever it is that the page says then. */
type Wanted = 'done' | 'either';

/** The longest that one sending may take, and that it is tried over again [ms]. */
const [patienceMs, longestMs] = [60_000, 180_000];

export async function makeFleet(databaseUrl: string, count: number): Promise<Fleet> {
  const members: Service[] = [];
  for (let nth = 0; nth < count; nth++) members.push(await serve(databaseUrl));
  let turn = 0;
  const next = () => members[turn++ % members.length] as Service;

  /** Another each time: whom nobody answers for, the next may. */
  async function until<T>(once: (address: string) => Promise<T | null>): Promise<T> {
    const late = performance.now() + longestMs;
    for (;;) {
      const found = await once(next().address).catch((error) => (isCutOff(error) ? null : Promise.reject(error)));
      if (found !== null) return found;
      if (performance.now() > late) throw new Error('nobody answers any more');
      await wait(100);
    }
  }

  return {
    open: (path, cookie) =>
      until(async (address) => {
        const { status, body } = await patiently(ask(`${address}${path}`, { cookie }));
        return status === 200 ? body.toString() : null;
      }),
    post: async (path, cookie, { headers, body }, wanted) => {
      const begun = performance.now();
      await until(async (address) => {
        const given = { cookie, headers: { ...headers, origin: address }, body };
        const answer = verdictOf(await patiently(ask(`${address}${path}`, given)));
        if (answer === 'refused' && wanted === 'done') throw new Error(`${path} was refused`);
        return answer;
      });
      return performance.now() - begun;
    },
    killOne: () => process.kill(-(members[0]?.pid ?? 0), 'SIGKILL'),
    whole: async () => {
      for (const [nth, { address }] of members.entries())
        if (
          !(await ask(`${address}/api/health`).then(
            ({ status }) => status === 200,
            () => false,
          ))
        )
          members[nth] = await serve(databaseUrl);
    },
    stop: async () => {
      await Promise.all(members.map((one) => one.stop()));
    },
  };
}

// Done, refused for good, or null where it must be sent again: the page broke, or the form says that nothing was changed.
function verdictOf({ status, body }: Answer): 'done' | 'refused' | null {
  if (status !== 200) return null;
  const text = body.toString();
  if (text.includes('went wrong on our side')) return null;
  return text.includes('role="alert"') ? 'refused' : 'done';
}

function isCutOff(error: unknown): boolean {
  const { code } = (error ?? {}) as { code?: string };
  return ['ECONNRESET', 'ECONNREFUSED', 'EPIPE', 'ETIMEDOUT'].includes(code ?? '');
}

async function patiently(answer: Promise<Answer>): Promise<Answer> {
  const none = wait(patienceMs, null, { ref: false }).then(() =>
    Promise.reject(Object.assign(new Error('no answer'), { code: 'ETIMEDOUT' })),
  );
  return Promise.race([answer, none]);
}
