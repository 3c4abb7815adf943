import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { makeBusyDay, workOf } from '../fixtures/busy-day';
import { type MortalPostgres, startMortalPostgres } from '../fixtures/mortal-postgres';
import { acknowledged, expectKept, expectSound, expectWhole, inTheMiddle } from '../fixtures/never-wrong';
import { answered, startWorker, waitedInVain } from '../fixtures/process';

let server: MortalPostgres | undefined;

beforeAll(async () => {
  server = await startMortalPostgres();
  process.env.DATABASE_URL = server.url;
});
afterAll(async () => {
  await db().$disconnect();
  await server?.stop();
});

describe('a PostgreSQL that is killed', () => {
  it('had the care for its data that it has in earnest', async () => {
    const cares = ['fsync', 'full_page_writes', 'synchronous_commit'];
    const set = await db()
      .$queryRaw`SELECT name FROM pg_settings WHERE name = ANY (${cares}) AND setting = 'on' ORDER BY name`;
    expect(set).toEqual(cares.map((name) => ({ name })));
  });

  it('has all that was acknowledged when it is started again, and the app processes go on by themselves', {
    timeout: 300_000,
  }, async () => {
    const day = await makeBusyDay(100);
    const [mine, others] = workOf(day);
    const workers = [startWorker(), startWorker()] as const;
    const give = () => [workers[0].give(mine), workers[1].give(others)] as const;
    // At the very first word, when the share-out may be half confirmed; and in the thick of it.
    const moments = [
      ([one, other]: ReturnType<typeof give>) => acknowledged([...one.answers, ...other.answers]).length > 0,
      ([one, other]: ReturnType<typeof give>) => inTheMiddle(one.answers, other.answers),
    ];
    const heard: ReturnType<typeof give>[number]['answers'][] = [];
    for (const moment of moments) {
      const works = give();
      await works[0].reaches(() => moment(works));
      await server?.kill();
      await Promise.all(works.map(({ over }) => over));
      // It was in the middle: each process had work of its own cut off.
      for (const { answers } of works)
        expect([...answers.values()].filter((answer) => answer.failure && !waitedInVain(answer))).not.toEqual([]);
      heard.push(...works.map(({ answers }) => answers));
      await server?.startAgain();
      await expectSound(day);
      for (const answers of heard) await expectKept(day, answers);
    }
    const again = await Promise.all([answered(workers[0], mine), answered(workers[1], others)]);
    expect(workers.map((worker) => worker.isRunning())).toEqual([true, true]);
    await expectWhole(day, new Map(again.flatMap((answers) => [...answers])));
  });
});
